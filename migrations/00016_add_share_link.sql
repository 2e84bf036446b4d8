-- +goose Up
CREATE TABLE share_link (
    share_link_id INTEGER PRIMARY KEY AUTOINCREMENT,
    episode_id    INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    token_hash    TEXT    NOT NULL UNIQUE CHECK (length(token_hash) = 64), -- SHA-256 of the token, in hex
    created_at    TEXT    NOT NULL,
    revoked_at    TEXT -- for good
) STRICT;

CREATE INDEX share_link_by_episode ON share_link (episode_id, revoked_at);

-- +goose Down
DROP TABLE share_link;
