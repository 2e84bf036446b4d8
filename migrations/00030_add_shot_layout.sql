-- +goose Up
-- Whether a shot shows the ingredients laid out. For those there already it is
-- taken from the title, as for a new one.
ALTER TABLE shot ADD COLUMN layout INTEGER NOT NULL DEFAULT 0 CHECK (layout IN (0, 1));
UPDATE shot
SET layout = 1
WHERE title LIKE '%mise en place%'
   OR title LIKE '%layout%'
   OR title LIKE '%ingredient%laid%'
   OR title LIKE '%laid%ingredient%'
   OR title LIKE '%all%ingredients%';

-- +goose Down
ALTER TABLE shot DROP COLUMN layout;
