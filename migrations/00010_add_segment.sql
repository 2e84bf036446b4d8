-- +goose Up
CREATE TABLE segment (
    segment_id           INTEGER PRIMARY KEY AUTOINCREMENT,
    episode_id           INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    position             INTEGER NOT NULL CHECK (position <> 0), -- from 1; below 0 only while reordering
    title                TEXT    NOT NULL,
    narration            TEXT    NOT NULL,
    words                INTEGER NOT NULL, -- of the narration, counted at each save
    planned_seconds      INTEGER NOT NULL CHECK (planned_seconds >= 0), -- 0: the narration's length
    revision             INTEGER NOT NULL DEFAULT 1,
    deleted_at           TEXT,
    deleted_with_episode INTEGER NOT NULL DEFAULT 0
) STRICT;

-- All that the season counts, so that it needs no row.
CREATE INDEX segment_by_episode ON segment (episode_id, deleted_at, planned_seconds, words);
CREATE UNIQUE INDEX segment_order ON segment (episode_id, position) WHERE deleted_at IS NULL;
CREATE INDEX segment_deleted ON segment (deleted_at) WHERE deleted_at IS NOT NULL;

-- +goose Down
DROP TABLE segment;
