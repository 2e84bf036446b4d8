package recipe

import (
	"strings"

	"benchproof/kitchen/measure"
)

// familyOf tells whose unit u is.
func familyOf(u measure.Unit) family {
	switch u {
	case measure.Milligram, measure.Gram, measure.Kilogram, measure.Millilitre, measure.Centilitre, measure.Decilitre,
		measure.Litre, measure.Millimetre, measure.Centimetre:
		return metric
	case measure.Ounce, measure.Pound, measure.FluidOunce, measure.Gill, measure.Cup, measure.Pint, measure.Quart, measure.Gallon,
		measure.Stick, measure.Inch:
		return foreign
	}
	return neutral
}

// spoon are the small volumes that every kitchen has.
var spoon = map[measure.Unit]bool{
	measure.Teaspoon: true, measure.Tablespoon: true, measure.Dessertspn: true, measure.Pinch: true, measure.Dash: true,
	measure.Drop: true, measure.Smidgen: true,
}

// spoons is whose spoons a metric style means: the show's own, if they are
// metric in their way.
func (t *teller) spoons() measure.System {
	switch t.house {
	case measure.Australian, measure.Japanese:
		return t.house
	}
	return measure.Metric
}

func informal(u measure.Unit) bool {
	return u == measure.Pinch || u == measure.Dash || u == measure.Drop || u == measure.Smidgen
}

func isCount(u measure.Unit) bool { return u.Kind() == measure.Count }

func isWeighed(u measure.Unit) bool { return u.Kind() == measure.Mass || u.Kind() == measure.Volume }

// inCups tells foods that a US cook measures by volume when the recipe gives
// grams. What is bought and weighed in pieces is given in ounces: common
// practice, no source.
func (t *teller) inCups() bool {
	if t.food == nil || t.pack {
		return false
	}
	switch t.food.Aisle {
	case "Fruit and vegetables", "Meat and poultry", "Fish and seafood", "Bakery", "Chocolate and sweets", "Tins and jars", "Frozen":
		return t.line.Form != "" && t.food.Aisle != "Meat and poultry" && t.food.Aisle != "Fish and seafood"
	}
	return true
}

// isLiquid tells foods that are poured: a cup of them becomes millilitres, not
// grams.
func (t *teller) isLiquid() bool {
	name := t.line.Food
	if t.food != nil {
		name = t.food.Name
	}
	for _, w := range strings.Fields(strings.ToLower(name)) {
		if poured[strings.TrimSuffix(w, "s")] {
			return !strings.Contains(name, "powder") && !strings.Contains(name, "cheese") && !strings.HasPrefix(name, "sour") &&
				!strings.Contains(name, "condensed")
		}
	}
	return false
}

var poured = map[string]bool{
	"water": true, "milk": true, "cream": true, "buttermilk": true, "stock": true, "broth": true, "juice": true, "oil": true,
	"vinegar": true, "wine": true, "beer": true, "stout": true, "ale": true, "cider": true, "coffee": true, "tea": true,
	"rum": true, "brandy": true, "whisky": true, "sherry": true, "sake": true, "mirin": true, "lemonade": true, "vodka": true,
	"kefir": true, "dashi": true, "passata": true, "marsala": true, "port": true, "vermouth": true, "gin": true,
}

// isButter tells fats that are weighed even by the spoonful.
func (t *teller) isButter() bool {
	name := strings.ToLower(t.line.Food)
	for _, fat := range []string{"butter", "lard", "margarine", "shortening", "dripping", "suet"} {
		if strings.HasSuffix(name, fat) && !strings.HasSuffix(name, "peanut butter") && !strings.HasSuffix(name, "nut butter") {
			return true
		}
	}
	return false
}

// isPacked tells "2 × 400 g tins".
func (t *teller) isPacked() bool { return !t.line.Packs.Count.IsZero() }

// showPacks writes whole packs as packs: "2 × 400 g" with "tins" in the words. A
// part of a pack is written by its content.
func (t *teller) showPacks(style Style) (written, bool) {
	p := t.line.Packs
	if !p.Count.From.IsWhole() || !p.Count.To.IsWhole() {
		return written{}, false
	}
	one := *t
	one.line.Packs, one.line.Plus, one.pack = Packs{}, nil, true
	one.line.Amount = p.Size
	one.line.Equals = nil
	for _, e := range t.line.Equals {
		if p.Count.IsSingle() && !p.Count.From.IsZero() {
			one.line.Equals = append(one.line.Equals, e.Scale(measure.Whole(1).Quo(p.Count.From)))
		}
	}
	w := one.show(style)
	t.assume(one.assumed)
	t.packed = true
	number := measure.Hand{}.Write(measure.Amount{Range: p.Count}).Text
	w.text = number + " × " + w.text
	return w, true
}
