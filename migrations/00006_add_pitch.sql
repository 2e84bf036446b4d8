-- +goose Up
CREATE TABLE pitch (
    pitch_id   INTEGER PRIMARY KEY AUTOINCREMENT,
    dish       TEXT    NOT NULL,
    who        TEXT    NOT NULL,
    place      TEXT    NOT NULL,
    times      INTEGER NOT NULL CHECK (times > 0), -- how often it was asked for
    note       TEXT    NOT NULL,
    episode_id INTEGER REFERENCES episode (episode_id) ON DELETE SET NULL, -- what it became
    revision   INTEGER NOT NULL DEFAULT 1,
    deleted_at TEXT
) STRICT;

CREATE INDEX pitch_by_episode ON pitch (episode_id);
CREATE INDEX pitch_deleted ON pitch (deleted_at) WHERE deleted_at IS NOT NULL;

-- +goose Down
DROP TABLE pitch;
