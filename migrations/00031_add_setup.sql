-- +goose Up
-- A camera setup described once for the shots that name it. One that nothing is
-- said of has no row.
CREATE TABLE setup (
    episode_id INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    name       TEXT    NOT NULL CHECK (name <> ''), -- as shot.setup says
    camera     TEXT    NOT NULL, -- where it stands and how it looks
    lens       TEXT    NOT NULL,
    light      TEXT    NOT NULL,
    revision   INTEGER NOT NULL DEFAULT 1,
    PRIMARY KEY (episode_id, name)
) STRICT, WITHOUT ROWID;

-- +goose Down
DROP TABLE setup;
