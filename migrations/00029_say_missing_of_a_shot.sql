-- +goose Up
-- A shot not got yet is "missing", as it is called on the day. A check cannot be
-- altered, so the table is made anew; no id is given twice.
ALTER TABLE shot RENAME TO shot_before;

CREATE TABLE shot (
    shot_id              INTEGER PRIMARY KEY AUTOINCREMENT,
    episode_id           INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    position             INTEGER NOT NULL CHECK (position <> 0), -- from 1; below 0 only while reordering
    title                TEXT    NOT NULL,
    kind                 TEXT    NOT NULL,
    setup                TEXT    NOT NULL, -- the name of the setup; '' if not chosen yet
    component            TEXT    NOT NULL, -- by name: versions come and go
    step                 INTEGER NOT NULL CHECK (step >= 0), -- from 1 in the component; 0 for none
    status               TEXT    NOT NULL CHECK (status IN ('got', 'missing', 'retake')),
    note                 TEXT    NOT NULL,
    revision             INTEGER NOT NULL DEFAULT 1,
    deleted_at           TEXT,
    deleted_with_episode INTEGER NOT NULL DEFAULT 0
) STRICT;

INSERT INTO shot (shot_id, episode_id, position, title, kind, setup, component, step, status, note, revision, deleted_at, deleted_with_episode)
SELECT shot_id, episode_id, position, title, kind, setup, component, step,
       CASE status WHEN 'to shoot' THEN 'missing' ELSE status END,
       note, revision, deleted_at, deleted_with_episode
FROM shot_before;

DELETE FROM sqlite_sequence WHERE name = 'shot';
UPDATE sqlite_sequence SET name = 'shot' WHERE name = 'shot_before';
DROP TABLE shot_before;

-- All that the season counts, so that it needs no row.
CREATE INDEX shot_by_episode ON shot (episode_id, deleted_at, status);
CREATE UNIQUE INDEX shot_order ON shot (episode_id, position) WHERE deleted_at IS NULL;
CREATE INDEX shot_deleted ON shot (deleted_at) WHERE deleted_at IS NOT NULL;

-- +goose Down
ALTER TABLE shot RENAME TO shot_after;

CREATE TABLE shot (
    shot_id              INTEGER PRIMARY KEY AUTOINCREMENT,
    episode_id           INTEGER NOT NULL REFERENCES episode (episode_id) ON DELETE CASCADE,
    position             INTEGER NOT NULL CHECK (position <> 0), -- from 1; below 0 only while reordering
    title                TEXT    NOT NULL,
    kind                 TEXT    NOT NULL,
    setup                TEXT    NOT NULL, -- camera position and light
    component            TEXT    NOT NULL, -- by name: versions come and go
    step                 INTEGER NOT NULL CHECK (step >= 0), -- from 1 in the component; 0 for none
    status               TEXT    NOT NULL CHECK (status IN ('to shoot', 'got', 'retake')),
    note                 TEXT    NOT NULL,
    revision             INTEGER NOT NULL DEFAULT 1,
    deleted_at           TEXT,
    deleted_with_episode INTEGER NOT NULL DEFAULT 0
) STRICT;

INSERT INTO shot (shot_id, episode_id, position, title, kind, setup, component, step, status, note, revision, deleted_at, deleted_with_episode)
SELECT shot_id, episode_id, position, title, kind, setup, component, step,
       CASE status WHEN 'missing' THEN 'to shoot' ELSE status END,
       note, revision, deleted_at, deleted_with_episode
FROM shot_after;

DELETE FROM sqlite_sequence WHERE name = 'shot';
UPDATE sqlite_sequence SET name = 'shot' WHERE name = 'shot_after';
DROP TABLE shot_after;

-- All that the season counts, so that it needs no row.
CREATE INDEX shot_by_episode ON shot (episode_id, deleted_at, status);
CREATE UNIQUE INDEX shot_order ON shot (episode_id, position) WHERE deleted_at IS NULL;
CREATE INDEX shot_deleted ON shot (deleted_at) WHERE deleted_at IS NOT NULL;
