-- +goose Up
-- A row is a disagreement between the current cut and the recipe in use. Only
-- its key is kept: what it says is found again when the sheet is drawn.
CREATE TABLE finding (
    episode_id INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    key        TEXT    NOT NULL, -- the same for the same slip in another cut
    PRIMARY KEY (episode_id, key)
) STRICT, WITHOUT ROWID;

-- A row is what was decided about a finding. It stays when another cut or
-- version no longer has the finding, so that it is settled if it comes back.
CREATE TABLE settlement (
    episode_id INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    key        TEXT    NOT NULL,
    how        TEXT    NOT NULL CHECK (how IN ('re-record', 'on-screen note', 'correction', 'meant that way')),
    settled_at TEXT    NOT NULL,
    PRIMARY KEY (episode_id, key)
) STRICT, WITHOUT ROWID;

-- +goose Down
DROP TABLE settlement;
DROP TABLE finding;
