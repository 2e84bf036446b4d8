package store

import (
	"context"

	"benchproof/kitchen/recipe"
)

const (
	mostLineCorrections = 2000
	mostLearnedFoods    = 20000
)

const selectLineCorrections = `
SELECT text, amount_from, amount_to, amount_unit, has_amount, food, food_id, preparation, note, is_to_taste, size
FROM line_correction`

// correctedLine is a correction with the line it is about.
type correctedLine struct {
	recipe.Correction
	text string
}

func scanCorrectedLine(row scanner) (c correctedLine, err error) {
	err = row.Scan(&c.text, exact{&c.Amount.From}, exact{&c.Amount.To}, &c.Amount.Unit, &c.HasAmount,
		&c.Food, &c.FoodID, &c.Preparation, &c.Note, &c.ToTaste, &c.Size)
	return c, err
}

const insertLineCorrection = `
INSERT INTO line_correction (recipe_id, text, amount_from, amount_to, amount_unit, has_amount, food, food_id, preparation, note, is_to_taste, size, corrected_at)
SELECT recipe_id, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13
FROM recipe
WHERE recipe_id = ?1
  AND deleted_at IS NULL
ON CONFLICT (recipe_id, text) DO UPDATE
SET amount_from = excluded.amount_from,
    amount_to = excluded.amount_to,
    amount_unit = excluded.amount_unit,
    has_amount = excluded.has_amount,
    food = excluded.food,
    food_id = excluded.food_id,
    preparation = excluded.preparation,
    note = excluded.note,
    is_to_taste = excluded.is_to_taste,
    size = excluded.size,
    corrected_at = excluded.corrected_at`

// LineCorrections gives what people said the lines of a recipe mean, by the
// line's text with outer blanks trimmed, as recipe.Reader takes it.
func (s *Store) LineCorrections(ctx context.Context, recipeID int64) (map[string]recipe.Correction, error) {
	all, err := list(ctx, s.reader, scanCorrectedLine, selectLineCorrections+`
WHERE recipe_id = ?1
ORDER BY text
LIMIT ?2`, recipeID, mostLineCorrections)
	corrections := make(map[string]recipe.Correction, len(all))
	for _, each := range all {
		corrections[each.text] = each.Correction
	}
	return corrections, operation{"list line corrections of recipe", recipeID}.wrap(err)
}

// CorrectLine keeps what a line of a recipe means, in place of an earlier
// correction. Versions that hold the line keep the reading they have.
func (s *Store) CorrectLine(ctx context.Context, recipeID int64, text string, c recipe.Correction) error {
	return s.write(ctx, operation{"correct line of recipe", recipeID}, func(t *tx) error {
		if err := t.room(ctx, "corrections", mostLineCorrections, "SELECT count(*) FROM line_correction WHERE recipe_id = ?1 AND text <> ?2", recipeID, text); err != nil {
			return err
		}
		rows, err := t.change(ctx, insertLineCorrection, recipeID, text,
			c.Amount.From.String(), c.Amount.To.String(), c.Amount.Unit, c.HasAmount, c.Food, c.FoodID, c.Preparation, c.Note, c.ToTaste, c.Size, t.now)
		if err == nil && rows == 0 {
			err = missing("recipe")
		}
		return err
	})
}

// ForgetLine takes a line's correction away; none there is no error.
func (s *Store) ForgetLine(ctx context.Context, recipeID int64, text string) error {
	return s.write(ctx, operation{"forget line of recipe", recipeID}, func(t *tx) error {
		_, err := t.change(ctx, `
DELETE FROM line_correction
WHERE recipe_id = ?1
  AND text = ?2`, recipeID, text)
		return err
	})
}

// learnedFood is a written name and the food it means.
type learnedFood struct{ name, foodID string }

func scanLearnedFood(row scanner) (f learnedFood, err error) {
	err = row.Scan(&f.name, &f.foodID)
	return f, err
}

// LearnedFoods gives the food ids that written names mean in this show, as
// food.Larder.Learn takes them.
func (s *Store) LearnedFoods(ctx context.Context) (map[string]string, error) {
	all, err := list(ctx, s.reader, scanLearnedFood, `
SELECT name, food_id
FROM learned_food
ORDER BY name
LIMIT ?1`, mostLearnedFoods)
	foods := make(map[string]string, len(all))
	for _, each := range all {
		foods[each.name] = each.foodID
	}
	return foods, operation{verb: "list learned foods"}.wrap(err)
}

// LearnFood keeps which food a written name means, in place of an earlier one.
func (s *Store) LearnFood(ctx context.Context, name, foodID string) error {
	return s.write(ctx, operation{verb: "learn food"}, func(t *tx) error {
		if err := t.room(ctx, "learned names", mostLearnedFoods, "SELECT count(*) FROM learned_food WHERE name <> ?1", name); err != nil {
			return err
		}
		_, err := t.change(ctx, `
INSERT INTO learned_food (name, food_id, learned_at)
VALUES (?1, ?2, ?3)
ON CONFLICT (name) DO UPDATE
SET food_id = excluded.food_id,
    learned_at = excluded.learned_at`, name, foodID, t.now)
		return err
	})
}

// ForgetFood takes a learned name away; none there is no error.
func (s *Store) ForgetFood(ctx context.Context, name string) error {
	return s.write(ctx, operation{verb: "forget food"}, func(t *tx) error {
		_, err := t.change(ctx, `
DELETE FROM learned_food
WHERE name = ?1`, name)
		return err
	})
}
