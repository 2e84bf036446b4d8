-- +goose Up
-- A row is where a person said that a segment begins in the current cut; the
-- others are found by what is said.
CREATE TABLE chapter_start (
    segment_id INTEGER PRIMARY KEY REFERENCES segment (segment_id) ON DELETE CASCADE,
    at_seconds INTEGER NOT NULL CHECK (at_seconds >= 0) -- into the cut
) STRICT;

-- +goose Down
DROP TABLE chapter_start;
