-- +goose Up
CREATE TABLE user (
    user_id       INTEGER PRIMARY KEY AUTOINCREMENT,
    name          TEXT    NOT NULL COLLATE NOCASE CHECK (name <> ''),
    password_hash TEXT    NOT NULL, -- argon2id with its parameters
    created_at    TEXT    NOT NULL,
    UNIQUE (name)
) STRICT;

-- +goose Down
DROP TABLE user;
