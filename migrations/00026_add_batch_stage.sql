-- +goose Up
-- A swap-out is made up to the end of a step; 0 is the whole recipe.
ALTER TABLE batch ADD COLUMN component TEXT    NOT NULL DEFAULT '';
ALTER TABLE batch ADD COLUMN step      INTEGER NOT NULL DEFAULT 0 CHECK (step >= 0); -- from 1
ALTER TABLE batch ADD COLUMN overnight INTEGER NOT NULL DEFAULT 0 CHECK (overnight IN (0, 1)); -- made the day before

-- +goose Down
ALTER TABLE batch DROP COLUMN overnight;
ALTER TABLE batch DROP COLUMN step;
ALTER TABLE batch DROP COLUMN component;
