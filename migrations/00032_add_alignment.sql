-- +goose Up
-- What was reckoned from the captions of a cut, so that they need not be read
-- again. It holds as long as print is that of the cut, of its episode's running
-- order and of the recipe's steps. Times are milliseconds of the cut.
CREATE TABLE alignment (
    cut_id    INTEGER PRIMARY KEY REFERENCES cut (cut_id) ON DELETE CASCADE,
    print     TEXT    NOT NULL,
    ends_at   INTEGER NOT NULL CHECK (ends_at >= 0), -- when the last caption is gone; 0 without captions
    starts    TEXT    NOT NULL, -- a list, one a segment: found, caption from 0, time, confidence in hundredths
    stretches TEXT    NOT NULL  -- a list of words, time in which they were said
) STRICT;

-- +goose Down
DROP TABLE alignment;
