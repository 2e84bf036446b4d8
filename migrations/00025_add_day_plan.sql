-- +goose Up
-- A shoot day's plan as it was last made. It is drawn as long as print is that
-- of the day; a new one says what it moved.
CREATE TABLE day_plan (
    episode_id INTEGER PRIMARY KEY REFERENCES episode (episode_id) ON DELETE CASCADE,
    print      TEXT    NOT NULL,
    starts     TEXT    NOT NULL, -- a list of minutes of the plan
    bound      INTEGER NOT NULL,
    optimal    INTEGER NOT NULL CHECK (optimal IN (0, 1)),
    overdue    TEXT    NOT NULL, -- a list of sentences
    moved      TEXT    NOT NULL  -- a list of step, was, is; minutes from midnight
) STRICT;

-- +goose Down
DROP TABLE day_plan;
