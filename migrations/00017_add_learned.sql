-- +goose Up
-- What a person said an ingredient line of a recipe means, for every reading
-- of that line from then on.
CREATE TABLE line_correction (
    recipe_id    INTEGER NOT NULL REFERENCES recipe (recipe_id) ON DELETE CASCADE,
    text         TEXT    NOT NULL, -- the line as written, outer blanks trimmed
    amount_from  TEXT    NOT NULL CHECK (amount_from NOT GLOB '*[^0-9/-]*' AND amount_from <> ''),
    amount_to    TEXT    NOT NULL CHECK (amount_to NOT GLOB '*[^0-9/-]*' AND amount_to <> ''),
    amount_unit  TEXT    NOT NULL,
    has_amount   INTEGER NOT NULL,
    food         TEXT    NOT NULL,
    food_id      TEXT    NOT NULL,
    preparation  TEXT    NOT NULL,
    note         TEXT    NOT NULL,
    is_to_taste  INTEGER NOT NULL,
    size         TEXT    NOT NULL,
    corrected_at TEXT    NOT NULL,
    PRIMARY KEY (recipe_id, text)
) STRICT, WITHOUT ROWID;

-- What a written name means anywhere in the show.
CREATE TABLE learned_food (
    name       TEXT NOT NULL PRIMARY KEY, -- as written
    food_id    TEXT NOT NULL, -- the larder's food
    learned_at TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- +goose Down
DROP TABLE learned_food;
DROP TABLE line_correction;
