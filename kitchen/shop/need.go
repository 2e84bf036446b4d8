package shop

import (
	"cmp"
	"strings"
	"time"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Need is one planned make to shop for, or several alike.
type Need struct {
	Batch  string         // what it is for, as shown: "shoot", "swap-out"
	Makes  measure.Number // how many times Recipe; 0 or less needs nothing
	Recipe recipe.Recipe  // at the scale it is made
	System measure.System // the show's house measures; the recipe's own go before
	On     time.Time      // the date it is made, midnight UTC; zero if not known
}

// portion is one line's part in what is bought of a food.
type portion struct {
	batch, recipe string
	day           time.Time      // the date it is needed
	name          string         // the food as the recipe calls it
	food          *food.Food     // the larder's own, the yolk of an egg; nil if not known
	amount        measure.Amount // the larger end of its range, times the makes; zero without one
	form          string         // the larder's words for weights: "sifted", "large"
	size          string
	system        measure.System
	pack          pack
	toTaste       bool
	optional      bool
	question      string
}

// pack is a number of packs of one size, "2 × 400 g tins"; zero if none.
type pack struct {
	count measure.Number
	size  measure.Amount
	unit  measure.Unit
}

// portions gives the parts a line has: its amount and what it adds with "plus".
func portions(n Need, line recipe.Line, f *food.Food) []portion {
	p := portion{
		batch: n.Batch, recipe: n.Recipe.Title, day: n.On, food: f, name: nameOf(line),
		form:     strings.TrimSpace(line.Size + " " + line.Form),
		size:     line.Size,
		system:   line.System.Or(n.Recipe.System).Or(n.System).Or(measure.US),
		toTaste:  line.ToTaste || !line.HasAmount,
		optional: line.Optional,
		question: line.Reason,
	}
	if !line.HasAmount {
		return []portion{p}
	}
	p.amount = most(line.Amount, n.Makes)
	if line.Packs.Unit != measure.Each && !line.Packs.Count.IsZero() {
		p.pack = pack{count: line.Packs.Count.To.Mul(n.Makes), size: most(line.Packs.Size, measure.Whole(1)), unit: line.Packs.Unit}
	}
	parts := []portion{p}
	for _, plus := range line.Plus {
		more := p
		more.amount, more.pack, more.question = most(plus, n.Makes), pack{}, ""
		parts = append(parts, more)
	}
	return parts
}

// most is the larger end of a, times the makes.
func most(a measure.Amount, makes measure.Number) measure.Amount {
	return measure.Of(a.To.Mul(makes), a.Unit)
}

// The larder's ids that need rules of their own.
const (
	waterID = "water" // from the tap: never bought
	eggID   = "egg"
	yolkID  = "egg-yolk"
	whiteID = "egg-white"
)

// keyOf names what a line buys, whatever its amount: the larder's food, or the
// name as written.
func keyOf(line recipe.Line, larder *food.Larder) (key string, f *food.Food) {
	if larder != nil && line.FoodID != "" {
		if f, ok := larder.Food(line.FoodID); ok {
			switch f.ID {
			case yolkID, whiteID:
				if egg, ok := larder.Food(eggID); ok {
					return eggID, egg
				}
			}
			return f.ID, f
		}
	}
	return "as written: " + strings.ToLower(nameOf(line)), nil
}

// nameOf is the food as the line calls it; the whole line where it names none.
func nameOf(line recipe.Line) string {
	return strings.Join(strings.Fields(cmp.Or(strings.TrimSpace(line.Food), line.Text)), " ")
}
