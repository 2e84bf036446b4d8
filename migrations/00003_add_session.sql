-- +goose Up
CREATE TABLE session (
    token_hash TEXT    NOT NULL PRIMARY KEY, -- SHA-256 of the token, in hex
    data       BLOB    NOT NULL,
    expires_at TEXT    NOT NULL,
    is_ended   INTEGER NOT NULL DEFAULT 0 -- signed out: a late answer must not open it again
) STRICT, WITHOUT ROWID;

CREATE INDEX session_expiry ON session (expires_at);

-- +goose Down
DROP TABLE session;
