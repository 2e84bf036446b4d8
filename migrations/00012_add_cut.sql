-- +goose Up
CREATE TABLE cut (
    cut_id               INTEGER PRIMARY KEY AUTOINCREMENT,
    episode_id           INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    turn                 INTEGER NOT NULL, -- the episode's cut with the highest turn is its current one
    name                 TEXT    NOT NULL,
    seconds              INTEGER NOT NULL CHECK (seconds >= 0), -- 0: not known
    captions             TEXT    NOT NULL, -- WebVTT or SRT as given
    revision             INTEGER NOT NULL DEFAULT 1,
    deleted_at           TEXT,
    deleted_with_episode INTEGER NOT NULL DEFAULT 0,
    UNIQUE (episode_id, turn)
) STRICT;

CREATE INDEX cut_deleted ON cut (deleted_at) WHERE deleted_at IS NOT NULL;

-- +goose Down
DROP TABLE cut;
