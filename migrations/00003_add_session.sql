-- +goose Up
CREATE TABLE session (
    token_hash TEXT NOT NULL PRIMARY KEY, -- SHA-256 of the token, in hex
    data       BLOB NOT NULL,
    expires_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX session_expiry ON session (expires_at);

-- +goose Down
DROP TABLE session;
