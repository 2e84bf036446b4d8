-- +goose Up
CREATE TABLE episode (
    episode_id     INTEGER PRIMARY KEY AUTOINCREMENT,
    number         INTEGER NOT NULL CHECK (number >= 0), -- 0: not numbered yet
    title          TEXT    NOT NULL,
    stage          TEXT    NOT NULL CHECK (stage IN ('pitched', 'in development', 'ready to shoot', 'in the edit', 'released')),
    release_on     TEXT    CHECK (date(release_on) IS release_on),
    dish           TEXT    NOT NULL,
    inspired_by    TEXT    NOT NULL,
    inspired_url   TEXT    NOT NULL,
    look           TEXT    NOT NULL,
    hook           TEXT    NOT NULL,
    target_minutes INTEGER NOT NULL CHECK (target_minutes >= 0), -- 0: not set
    notes          TEXT    NOT NULL, -- Markdown
    version_id     INTEGER REFERENCES version (version_id), -- the version in use
    scale          TEXT    NOT NULL DEFAULT '1' CHECK (scale GLOB '[1-9]*' AND scale NOT GLOB '*[^0-9/]*'), -- above 0
    revision       INTEGER NOT NULL DEFAULT 1,
    deleted_at     TEXT
) STRICT;

CREATE INDEX episode_by_release ON episode (release_on, number);
CREATE INDEX episode_by_version ON episode (version_id, stage);
CREATE INDEX episode_deleted ON episode (deleted_at) WHERE deleted_at IS NOT NULL;

-- +goose Down
DROP TABLE episode;
