-- +goose Up
-- What the kitchen takes at once; 0 is not said.
ALTER TABLE show ADD COLUMN mixer_grams INTEGER NOT NULL DEFAULT 0 CHECK (mixer_grams >= 0); -- dough in one mix
ALTER TABLE show ADD COLUMN tray_pieces INTEGER NOT NULL DEFAULT 0 CHECK (tray_pieces >= 0); -- pieces on one tray
ALTER TABLE show ADD COLUMN oven_trays INTEGER NOT NULL DEFAULT 0 CHECK (oven_trays >= 0); -- trays in the oven at once

-- +goose Down
ALTER TABLE show DROP COLUMN oven_trays;
ALTER TABLE show DROP COLUMN tray_pieces;
ALTER TABLE show DROP COLUMN mixer_grams;
