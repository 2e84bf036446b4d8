package store

import (
	"errors"

	"benchproof/kitchen/recipe"
)

const insertLine = `
INSERT INTO line (version_id, component, position,
                  number, text, is_read, reason, amount_from, amount_to, amount_unit, has_amount, is_about, plus, equals,
                  pack_count_from, pack_count_to, pack_size_from, pack_size_to, pack_size_unit, pack_unit,
                  size, food, food_id, choices, form, preparation, note,
                  is_optional, is_to_taste, is_divided, system, is_corrected)
VALUES (?1, ?2, ?3,
        ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14,
        ?15, ?16, ?17, ?18, ?19, ?20,
        ?21, ?22, ?23, ?24, ?25, ?26, ?27,
        ?28, ?29, ?30, ?31, ?32)`

const selectLines = `
SELECT component,
       number, text, is_read, reason, amount_from, amount_to, amount_unit, has_amount, is_about, plus, equals,
       pack_count_from, pack_count_to, pack_size_from, pack_size_to, pack_size_unit, pack_unit,
       size, food, food_id, choices, form, preparation, note,
       is_optional, is_to_taste, is_divided, system, is_corrected
FROM line
WHERE version_id = ?1
ORDER BY component, position`

func lineFields(l recipe.Line) []any {
	return []any{
		l.Number, l.Text, l.Read, l.Reason, l.Amount.From.String(), l.Amount.To.String(), l.Amount.Unit, l.HasAmount, l.About, amountsText(l.Plus), amountsText(l.Equals),
		l.Packs.Count.From.String(), l.Packs.Count.To.String(), l.Packs.Size.From.String(), l.Packs.Size.To.String(), l.Packs.Size.Unit, l.Packs.Unit,
		l.Size, l.Food, l.FoodID, itemsText(l.Choices), l.Form, l.Preparation, l.Note,
		l.Optional, l.ToTaste, l.Divided, l.System, l.Corrected}
}

// placedLine is a line with its component's position.
type placedLine struct {
	recipe.Line
	component int
}

func scanLine(row scanner) (l placedLine, err error) {
	var plus, equals, choices string
	err = row.Scan(&l.component,
		&l.Number, &l.Text, &l.Read, &l.Reason, exact{&l.Amount.From}, exact{&l.Amount.To}, &l.Amount.Unit, &l.HasAmount, &l.About, &plus, &equals,
		exact{&l.Packs.Count.From}, exact{&l.Packs.Count.To}, exact{&l.Packs.Size.From}, exact{&l.Packs.Size.To}, &l.Packs.Size.Unit, &l.Packs.Unit,
		&l.Size, &l.Food, &l.FoodID, &choices, &l.Form, &l.Preparation, &l.Note,
		&l.Optional, &l.ToTaste, &l.Divided, &l.System, &l.Corrected)
	if err != nil {
		return l, err
	}
	var errPlus, errEquals error
	l.Plus, errPlus = amounts(plus)
	l.Equals, errEquals = amounts(equals)
	l.Choices = items(choices)
	return l, errors.Join(errPlus, errEquals)
}
