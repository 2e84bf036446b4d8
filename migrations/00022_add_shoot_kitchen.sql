-- +goose Up
-- What the kitchen of a shoot day holds, who and what is there, and how far the
-- day has come. Times are minutes from midnight.
ALTER TABLE shoot_day ADD COLUMN now_at      INTEGER NOT NULL DEFAULT 0 CHECK (now_at BETWEEN 0 AND 2880); -- 0 before it begins
ALTER TABLE shoot_day ADD COLUMN people      TEXT    NOT NULL DEFAULT ''; -- one a line
ALTER TABLE shoot_day ADD COLUMN gear        TEXT    NOT NULL DEFAULT ''; -- one a line
ALTER TABLE shoot_day ADD COLUMN props       TEXT    NOT NULL DEFAULT ''; -- one a line
ALTER TABLE shoot_day ADD COLUMN mixers      INTEGER NOT NULL DEFAULT 1 CHECK (mixers BETWEEN 0 AND 20);
ALTER TABLE shoot_day ADD COLUMN rings       INTEGER NOT NULL DEFAULT 2 CHECK (rings BETWEEN 0 AND 20);
ALTER TABLE shoot_day ADD COLUMN ovens       INTEGER NOT NULL DEFAULT 1 CHECK (ovens BETWEEN 0 AND 20);
ALTER TABLE shoot_day ADD COLUMN oven_holds  INTEGER NOT NULL DEFAULT 1 CHECK (oven_holds BETWEEN 1 AND 20); -- makes in one oven
ALTER TABLE shoot_day ADD COLUMN clean_bench INTEGER NOT NULL DEFAULT 0 CHECK (clean_bench BETWEEN 0 AND 240); -- minutes
ALTER TABLE shoot_day ADD COLUMN clean_mixer INTEGER NOT NULL DEFAULT 0 CHECK (clean_mixer BETWEEN 0 AND 240); -- minutes
ALTER TABLE shoot_day ADD COLUMN clean_hob   INTEGER NOT NULL DEFAULT 0 CHECK (clean_hob BETWEEN 0 AND 240); -- minutes

-- +goose Down
ALTER TABLE shoot_day DROP COLUMN clean_hob;
ALTER TABLE shoot_day DROP COLUMN clean_mixer;
ALTER TABLE shoot_day DROP COLUMN clean_bench;
ALTER TABLE shoot_day DROP COLUMN oven_holds;
ALTER TABLE shoot_day DROP COLUMN ovens;
ALTER TABLE shoot_day DROP COLUMN rings;
ALTER TABLE shoot_day DROP COLUMN mixers;
ALTER TABLE shoot_day DROP COLUMN props;
ALTER TABLE shoot_day DROP COLUMN gear;
ALTER TABLE shoot_day DROP COLUMN people;
ALTER TABLE shoot_day DROP COLUMN now_at;
