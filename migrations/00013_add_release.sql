-- +goose Up
-- One for each episode, made with it.
CREATE TABLE release (
    episode_id INTEGER PRIMARY KEY REFERENCES episode (episode_id) ON DELETE CASCADE,
    title      TEXT    NOT NULL DEFAULT '',
    opening    TEXT    NOT NULL DEFAULT '',
    equipment  TEXT    NOT NULL DEFAULT '', -- one a line
    credits    TEXT    NOT NULL DEFAULT '', -- one a line
    disclosure TEXT    NOT NULL DEFAULT '',
    video_url  TEXT    NOT NULL DEFAULT '',
    page_url   TEXT    NOT NULL DEFAULT '', -- the viewers' page, as the description names it
    revision   INTEGER NOT NULL DEFAULT 1
) STRICT;

INSERT INTO release (episode_id)
SELECT episode_id
FROM episode;

-- +goose Down
DROP TABLE release;
