-- +goose Up
-- A row is a thing on the episode's shopping list that is in the basket.
CREATE TABLE tick (
    episode_id INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    item       TEXT    NOT NULL, -- the shopping item's key
    ticked_at  TEXT    NOT NULL,
    PRIMARY KEY (episode_id, item)
) STRICT, WITHOUT ROWID;

-- +goose Down
DROP TABLE tick;
