-- +goose Up
-- Something at a fixed time of a shoot day. Times are minutes from midnight.
CREATE TABLE moment (
    moment_id  INTEGER PRIMARY KEY,
    episode_id INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    name       TEXT    NOT NULL,
    at         INTEGER NOT NULL CHECK (at BETWEEN 0 AND 1440),
    until      INTEGER NOT NULL CHECK (until = 0 OR until BETWEEN at AND 1440), -- 0: over at once
    takes      TEXT    NOT NULL, -- the station of which it takes one; empty for none
    holds      TEXT    NOT NULL CHECK (holds IN ('', 'done by then', 'not before it')),
    component  TEXT    NOT NULL, -- the component of the step that it holds
    step       INTEGER NOT NULL CHECK (step >= 0), -- from 1; 0 for all that is made for the shoot
    revision   INTEGER NOT NULL DEFAULT 1,
    deleted_at TEXT,
    deleted_with_episode INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE INDEX moment_by_episode ON moment (episode_id);

-- +goose Down
DROP TABLE moment;
