-- +goose Up
-- When a shot was given its status, so that an older tick which comes late does
-- not replace a newer one: an instant; NULL if it has its first one, or since
-- before there were times.
ALTER TABLE shot ADD COLUMN status_at TEXT;
-- The phone that gave it, by the name its browser goes by, and how many ticks
-- that phone had given by then; '' and 0 if no phone did.
ALTER TABLE shot ADD COLUMN status_by TEXT NOT NULL DEFAULT '';
ALTER TABLE shot ADD COLUMN status_nth INTEGER NOT NULL DEFAULT 0;

-- +goose Down
ALTER TABLE shot DROP COLUMN status_nth;
ALTER TABLE shot DROP COLUMN status_by;
ALTER TABLE shot DROP COLUMN status_at;
