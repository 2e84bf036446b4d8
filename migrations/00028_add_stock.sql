-- +goose Up
-- What is in the larder. Foods are the larder's, by id.
CREATE TABLE stock (
    stock_id   INTEGER PRIMARY KEY AUTOINCREMENT,
    food_id    TEXT    NOT NULL,
    amount     TEXT    NOT NULL, -- what is there, exact, such as 3/2
    unit       TEXT    NOT NULL, -- g, ml, … or what is counted; empty for pieces
    use_by     TEXT    CHECK (date(use_by) IS use_by), -- the last day it may be used; NULL if none is known
    revision   INTEGER NOT NULL DEFAULT 1,
    deleted_at TEXT
) STRICT;

CREATE INDEX stock_deleted ON stock (deleted_at) WHERE deleted_at IS NOT NULL;

-- +goose Down
DROP TABLE stock;
