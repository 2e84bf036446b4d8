-- +goose Up
CREATE TABLE correction (
    correction_id        INTEGER PRIMARY KEY AUTOINCREMENT,
    episode_id           INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    at_seconds           INTEGER NOT NULL CHECK (at_seconds >= 0), -- into the cut
    said                 TEXT    NOT NULL,
    put_right            TEXT    NOT NULL, -- what is right
    revision             INTEGER NOT NULL DEFAULT 1,
    deleted_at           TEXT,
    deleted_with_episode INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE INDEX correction_by_episode ON correction (episode_id, at_seconds);
CREATE INDEX correction_deleted ON correction (deleted_at) WHERE deleted_at IS NOT NULL;

-- +goose Down
DROP TABLE correction;
