-- +goose Up
-- What an episode's shoot day is planned with. An episode without a row has the
-- usual day. Times are minutes from midnight; 0 is none, but for begin.
CREATE TABLE shoot_day (
    episode_id    INTEGER PRIMARY KEY REFERENCES episode (episode_id) ON DELETE CASCADE,
    shoot_on      TEXT    CHECK (date(shoot_on) IS shoot_on), -- NULL if not set
    begin_at      INTEGER NOT NULL CHECK (begin_at BETWEEN 0 AND 1440),
    done_by       INTEGER NOT NULL CHECK (done_by BETWEEN 0 AND 1440),
    hands         INTEGER NOT NULL CHECK (hands BETWEEN 1 AND 20),
    helper_until  INTEGER NOT NULL CHECK (helper_until BETWEEN 0 AND 1440),
    light_until   INTEGER NOT NULL CHECK (light_until BETWEEN 0 AND 1440),
    setup_minutes INTEGER NOT NULL CHECK (setup_minutes BETWEEN 0 AND 1440), -- to put up a camera setup
    revision      INTEGER NOT NULL DEFAULT 1
) STRICT;

-- +goose Down
DROP TABLE shoot_day;
