package web

import (
	"slices"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/shop"
	"benchproof/views"
)

// packs are the sizes that a food is bought in.
func (s *Server) packs() entry[shop.Pack] {
	return entry[shop.Pack]{
		word: "pack", many: "packs", fields: packFields, values: packValues, read: readPack,
		get: s.store.Pack, add: s.store.AddPack, save: s.store.SavePack, remove: s.store.DeletePack,
		blank: func(foodID string) shop.Pack { return shop.Pack{FoodID: foodID} },
		key:   func(p shop.Pack) entryKey { return entryKey{p.ID, p.FoodID, p.Revision} },
		stamp: func(p *shop.Pack, revision int) { p.Revision = revision },
	}
}

func packFields(d *foodDesk) []views.Field {
	hint := "What one of them holds: 500 g, 1.5 kg, 1 L, 12."
	if usual := usualPacks(d.food); usual != "" {
		hint = "What one of them holds. Usual: " + usual + "."
	}
	return []views.Field{
		{Name: "amount", Label: "Pack of", Required: true, Hint: hint},
		{Name: "price", Label: "Price", Kind: views.FieldDecimal, Unit: d.show.Currency, Hint: "Leave it empty if you do not know it."},
	}
}

// usualPacks are the larder's own for a food: "500 g bag, 1 kg bag".
func usualPacks(f *food.Food) string {
	var all []string
	for _, pack := range f.Packs {
		all = append(all, joined(" ", pack.Amount.String(), pack.Name))
	}
	return strings.Join(all, ", ")
}

func packValues(d *foodDesk, p shop.Pack) values {
	return values{"amount": amountValue(p.Amount), "price": minorValue(p.Price, d.show.Currency)}
}

func readPack(f *typed, d *foodDesk, p *shop.Pack) {
	p.Amount = f.amount("amount", "Write what one pack holds: 500 g, 1.5 kg, 1 L or 12.")
	p.Price = f.price("price", d.show.Currency)
}

// amountValue is an amount as it is typed, to be read back as it was: "1½ kg".
func amountValue(a measure.Amount) string {
	if a.IsZero() {
		return ""
	}
	texts := []string{a.String()}
	unit := a.Unit.Name(a.To.Cmp(measure.Whole(1)) > 0)
	for _, number := range []string{measure.FormatDecimal(a.To, 9), measure.FormatNumber(a.To), a.To.String()} {
		texts = append(texts, joined(" ", number, unit))
	}
	for _, text := range texts {
		text = strings.ReplaceAll(text, "\u00a0", " ")
		if r, rest, ok := measure.ReadAmount(text); ok && rest == "" && r.Amount.To.Equal(a.To) && r.Amount.Unit == a.Unit {
			return text
		}
	}
	return texts[0]
}

// amount is what a pack or the larder holds: one value above 0, by weight,
// volume or number, and nothing else in the field; say tells what to type.
func (t *typed) amount(name, say string) measure.Amount {
	text := t.needed(name, say)
	if text == "" {
		return measure.Amount{}
	}
	r, rest, ok := measure.ReadAmount(text)
	kinds := []measure.Kind{measure.Mass, measure.Volume, measure.Count}
	if !ok || rest != "" || r.Note != "" || !r.HasAmount() || !r.Amount.IsSingle() || r.Amount.To.Sign() <= 0 || !slices.Contains(kinds, r.Amount.Unit.Kind()) {
		t.fail(name, "“%s” is not one amount by weight, volume or number. %s", text, say)
		return measure.Amount{}
	}
	if r.System != "" && r.Amount.Unit.Kind() == measure.Volume { // "1 US pint", whatever the house's pint is
		if per, ok := r.System.Millilitres(r.Amount.Unit); ok {
			return measure.Of(r.Amount.To.Mul(per), measure.Millilitre)
		}
	}
	return r.Amount
}

// packEntries words the packs of a food.
func packEntries(e entry[shop.Pack], d *foodDesk, packs []shop.Pack, form views.Form) views.FoodEntries {
	list := views.FoodEntries{Form: form}
	if len(packs) == 0 {
		list.Empty = "No packs are noted. With packs and prices the shopping list says what to buy and what it costs."
	}
	for _, p := range packs {
		row := views.FoodEntry{
			Measure: p.Amount.String(), Text: minorText(p.Price, d.show.Currency), Small: unitPrice(p, d.show.Currency, d.show.System),
			Of:       "the pack of " + p.Amount.String(),
			EditPath: e.changePath(p.FoodID, p.ID), DeleteAction: e.path(p.FoodID, p.ID) + "/delete",
		}
		if row.Text == "" {
			row.Text = "no price"
		}
		list.Rows = append(list.Rows, row)
	}
	return list
}
