-- +goose Up
-- What a person fixed about a step of a batch on the shoot day, and how far it
-- has come. Times are minutes from midnight; 0 is none.
CREATE TABLE day_step (
    episode_id INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    batch      TEXT    NOT NULL, -- as the plan names it
    component  TEXT    NOT NULL,
    step       INTEGER NOT NULL CHECK (step >= 1),
    pin_at     INTEGER NOT NULL CHECK (pin_at BETWEEN 0 AND 2880),
    barred     TEXT    NOT NULL, -- a list of from and to
    by_helper  INTEGER NOT NULL CHECK (by_helper IN (0, 1)),
    began_at   INTEGER NOT NULL CHECK (began_at BETWEEN 0 AND 2880),
    ended_at   INTEGER NOT NULL CHECK (ended_at = 0 OR began_at > 0 AND ended_at BETWEEN began_at AND 2880),
    PRIMARY KEY (episode_id, batch, component, step)
) STRICT, WITHOUT ROWID;

-- +goose Down
DROP TABLE day_step;
