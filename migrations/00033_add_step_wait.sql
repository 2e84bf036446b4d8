-- +goose Up
-- How long a step of a batch may wait after the steps before it, in minutes.
ALTER TABLE day_step ADD COLUMN wait_least INTEGER NOT NULL DEFAULT 0 CHECK (wait_least BETWEEN 0 AND 1440);
ALTER TABLE day_step ADD COLUMN wait_most  INTEGER CHECK (wait_most BETWEEN 0 AND 1440); -- NULL: as the step's words say

-- +goose Down
ALTER TABLE day_step DROP COLUMN wait_most;
ALTER TABLE day_step DROP COLUMN wait_least;
