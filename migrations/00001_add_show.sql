-- Everywhere: instants are RFC 3339 in UTC with milliseconds, so that they
-- sort as text; dates are YYYY-MM-DD; exact numbers are "3" or "3/2"; flags
-- are 0 or 1; a revision counts the saves of a row from 1.

-- +goose Up
-- "BnPf": tells a Benchproof database from any other.
PRAGMA application_id = 1114525798;

CREATE TABLE show (
    show_id           INTEGER PRIMARY KEY CHECK (show_id = 1),
    name              TEXT    NOT NULL,
    host              TEXT    NOT NULL DEFAULT '',
    system            TEXT    NOT NULL, -- the house measures
    oven              TEXT    NOT NULL, -- "fan" or "conventional"
    time_zone         TEXT    NOT NULL, -- IANA name
    currency          TEXT    NOT NULL, -- ISO 4217
    words_per_minute  INTEGER NOT NULL CHECK (words_per_minute > 0),
    description_limit INTEGER NOT NULL CHECK (description_limit > 0), -- characters
    disclosure        TEXT    NOT NULL DEFAULT '',
    links             TEXT    NOT NULL DEFAULT '',
    revision          INTEGER NOT NULL DEFAULT 1
) STRICT;

INSERT INTO show (show_id, name, system, oven, time_zone, currency, words_per_minute, description_limit)
VALUES (1, 'My show', 'metric', 'conventional', 'UTC', 'EUR', 150, 5000);

-- +goose Down
DROP TABLE show;
PRAGMA application_id = 0;
