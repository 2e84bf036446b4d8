-- What hangs on an episode and was deleted together with it says so in
-- deleted_with_episode, so that undoing brings back that and no more.

-- +goose Up
CREATE TABLE batch (
    batch_id             INTEGER PRIMARY KEY AUTOINCREMENT,
    episode_id           INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    kind                 TEXT    NOT NULL CHECK (kind IN ('trial', 'shoot', 'swap-out', 'spare')),
    makes                TEXT    NOT NULL CHECK (makes GLOB '[1-9]*' AND makes NOT GLOB '*[^0-9/]*'), -- above 0
    note                 TEXT    NOT NULL,
    revision             INTEGER NOT NULL DEFAULT 1,
    deleted_at           TEXT,
    deleted_with_episode INTEGER NOT NULL DEFAULT 0
) STRICT;

-- All that the season counts, so that it needs no row.
CREATE INDEX batch_by_episode ON batch (episode_id, deleted_at, kind);
CREATE INDEX batch_deleted ON batch (deleted_at) WHERE deleted_at IS NOT NULL;

-- +goose Down
DROP TABLE batch;
