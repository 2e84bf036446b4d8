-- +goose Up
-- Figures that were not measured are 0.
CREATE TABLE trial (
    trial_id             INTEGER PRIMARY KEY AUTOINCREMENT,
    episode_id           INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    version_id           INTEGER NOT NULL REFERENCES version (version_id),
    made_on              TEXT    CHECK (date(made_on) IS made_on),
    scale                TEXT    NOT NULL CHECK (scale GLOB '[1-9]*' AND scale NOT GLOB '*[^0-9/]*'), -- above 0
    dough_grams          TEXT    NOT NULL CHECK (dough_grams NOT GLOB '*[^0-9/]*' AND dough_grams <> ''),
    baked_grams          TEXT    NOT NULL CHECK (baked_grams NOT GLOB '*[^0-9/]*' AND baked_grams <> ''),
    pieces               TEXT    NOT NULL CHECK (pieces NOT GLOB '*[^0-9/]*' AND pieces <> ''),
    minutes              TEXT    NOT NULL CHECK (minutes NOT GLOB '*[^0-9/]*' AND minutes <> ''),
    setting              TEXT    NOT NULL, -- the oven's or hob's, as said
    verdict              TEXT    NOT NULL CHECK (verdict IN ('proved', 'nearly', 'not yet')),
    note                 TEXT    NOT NULL,
    revision             INTEGER NOT NULL DEFAULT 1,
    deleted_at           TEXT,
    deleted_with_episode INTEGER NOT NULL DEFAULT 0
) STRICT;

-- All that the season counts, so that it needs no row.
CREATE INDEX trial_by_episode ON trial (episode_id, deleted_at, version_id, verdict, scale);
CREATE INDEX trial_by_version ON trial (version_id);
CREATE INDEX trial_deleted ON trial (deleted_at) WHERE deleted_at IS NOT NULL;

-- +goose Down
DROP TABLE trial;
