-- +goose Up
CREATE TABLE recipe (
    recipe_id  INTEGER PRIMARY KEY AUTOINCREMENT,
    name       TEXT    NOT NULL,
    revision   INTEGER NOT NULL DEFAULT 1,
    deleted_at TEXT
) STRICT;

CREATE INDEX recipe_deleted ON recipe (deleted_at) WHERE deleted_at IS NOT NULL;

-- A version is the text as typed and one reading of it. The reading's parts
-- stand in component, line, step and unread_line.
CREATE TABLE version (
    version_id INTEGER PRIMARY KEY AUTOINCREMENT,
    recipe_id  INTEGER NOT NULL REFERENCES recipe (recipe_id) ON DELETE CASCADE,
    number     INTEGER NOT NULL CHECK (number > 0), -- from 1 within the recipe
    text       TEXT    NOT NULL, -- as typed
    system     TEXT    NOT NULL, -- measures it is read in; '' takes the show's
    note       TEXT    NOT NULL, -- what changed, in the creator's words
    created_at TEXT    NOT NULL,
    revision   INTEGER NOT NULL DEFAULT 1,

    title         TEXT NOT NULL,
    yield_text    TEXT NOT NULL,
    yield_from    TEXT NOT NULL CHECK (yield_from NOT GLOB '*[^0-9/-]*' AND yield_from <> ''),
    yield_to      TEXT NOT NULL CHECK (yield_to NOT GLOB '*[^0-9/-]*' AND yield_to <> ''),
    yield_unit    TEXT NOT NULL,
    yield_of      TEXT NOT NULL,
    stated_system TEXT NOT NULL, -- measures the text itself states
    intro         TEXT NOT NULL, -- a list, an item a line
    equipment     TEXT NOT NULL, -- a list
    notes         TEXT NOT NULL, -- a list
    credits       TEXT NOT NULL, -- a list
    placed        TEXT NOT NULL, -- where each line of the text went, one a line: number, text, part, component, number of the line it continues, parted by tabs
    UNIQUE (recipe_id, number)
) STRICT;

CREATE TABLE component (
    version_id INTEGER NOT NULL REFERENCES version (version_id) ON DELETE CASCADE,
    position   INTEGER NOT NULL CHECK (position > 0),
    name       TEXT    NOT NULL,
    number     INTEGER NOT NULL, -- its heading's line number in the text; 0 without one
    PRIMARY KEY (version_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE line (
    version_id      INTEGER NOT NULL,
    component       INTEGER NOT NULL, -- its component's position
    position        INTEGER NOT NULL CHECK (position > 0),
    number          INTEGER NOT NULL, -- the line's number in the text
    text            TEXT    NOT NULL,
    is_read         INTEGER NOT NULL,
    reason          TEXT    NOT NULL,
    amount_from     TEXT    NOT NULL CHECK (amount_from NOT GLOB '*[^0-9/-]*' AND amount_from <> ''),
    amount_to       TEXT    NOT NULL CHECK (amount_to NOT GLOB '*[^0-9/-]*' AND amount_to <> ''),
    amount_unit     TEXT    NOT NULL,
    has_amount      INTEGER NOT NULL,
    is_about        INTEGER NOT NULL,
    plus            TEXT    NOT NULL, -- amounts, one a line: from, to, unit, parted by tabs
    equals          TEXT    NOT NULL, -- the same
    pack_count_from TEXT    NOT NULL CHECK (pack_count_from NOT GLOB '*[^0-9/-]*' AND pack_count_from <> ''),
    pack_count_to   TEXT    NOT NULL CHECK (pack_count_to NOT GLOB '*[^0-9/-]*' AND pack_count_to <> ''),
    pack_size_from  TEXT    NOT NULL CHECK (pack_size_from NOT GLOB '*[^0-9/-]*' AND pack_size_from <> ''),
    pack_size_to    TEXT    NOT NULL CHECK (pack_size_to NOT GLOB '*[^0-9/-]*' AND pack_size_to <> ''),
    pack_size_unit  TEXT    NOT NULL,
    pack_unit       TEXT    NOT NULL,
    size            TEXT    NOT NULL,
    food            TEXT    NOT NULL,
    food_id         TEXT    NOT NULL, -- the larder's food; '' if it knows none
    choices         TEXT    NOT NULL, -- a list of larder foods
    form            TEXT    NOT NULL,
    preparation     TEXT    NOT NULL,
    note            TEXT    NOT NULL,
    is_optional     INTEGER NOT NULL,
    is_to_taste     INTEGER NOT NULL,
    is_divided      INTEGER NOT NULL,
    system          TEXT    NOT NULL, -- the line's own measures
    is_corrected    INTEGER NOT NULL,
    PRIMARY KEY (version_id, component, position),
    FOREIGN KEY (version_id, component) REFERENCES component (version_id, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE INDEX line_unread ON line (version_id) WHERE is_read = 0;
CREATE INDEX line_questioned ON line (version_id) WHERE is_read = 1 AND (reason <> '' OR choices <> '');

CREATE TABLE step (
    version_id   INTEGER NOT NULL,
    component    INTEGER NOT NULL,
    position     INTEGER NOT NULL CHECK (position > 0),
    number       INTEGER NOT NULL,
    text         TEXT    NOT NULL,
    minutes_from TEXT    NOT NULL CHECK (minutes_from NOT GLOB '*[^0-9/-]*' AND minutes_from <> ''),
    minutes_to   TEXT    NOT NULL CHECK (minutes_to NOT GLOB '*[^0-9/-]*' AND minutes_to <> ''),
    has_minutes  INTEGER NOT NULL,
    is_hands_on  INTEGER NOT NULL,
    station      TEXT    NOT NULL,
    temperatures TEXT    NOT NULL, -- one a line: from, to, scale, oven, text, its offset, parted by tabs
    cue          TEXT    NOT NULL,
    reason       TEXT    NOT NULL, -- what to look at
    uses         TEXT    NOT NULL, -- one a line: component, line, from, to, unit, has amount, words, parted by tabs
    finishes     TEXT    NOT NULL,
    PRIMARY KEY (version_id, component, position),
    FOREIGN KEY (version_id, component) REFERENCES component (version_id, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE INDEX step_questioned ON step (version_id) WHERE reason <> '';

CREATE TABLE unread_line (
    version_id INTEGER NOT NULL REFERENCES version (version_id) ON DELETE CASCADE,
    position   INTEGER NOT NULL CHECK (position > 0),
    number     INTEGER NOT NULL,
    text       TEXT    NOT NULL,
    reason     TEXT    NOT NULL,
    PRIMARY KEY (version_id, position)
) STRICT, WITHOUT ROWID;

-- +goose Down
DROP TABLE unread_line;
DROP TABLE step;
DROP TABLE line;
DROP TABLE component;
DROP TABLE version;
DROP TABLE recipe;
