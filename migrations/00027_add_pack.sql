-- +goose Up
-- The sizes in which the show buys a food. Foods are the larder's, by id.
CREATE TABLE pack (
    pack_id    INTEGER PRIMARY KEY AUTOINCREMENT,
    food_id    TEXT    NOT NULL,
    amount     TEXT    NOT NULL, -- what it holds, exact, such as 3/2
    unit       TEXT    NOT NULL, -- g, ml, … or what is counted; empty for pieces
    price      INTEGER NOT NULL CHECK (price >= 0), -- minor units of the show's currency; 0 if not known
    revision   INTEGER NOT NULL DEFAULT 1,
    deleted_at TEXT
) STRICT;

CREATE INDEX pack_deleted ON pack (deleted_at) WHERE deleted_at IS NOT NULL;

-- +goose Down
DROP TABLE pack;
