package demo_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// perMeasure is what one unit of a food weighs in grams. The foods are the ends
// of names as the recipes write them; the first that fits counts. Source: USDA
// SR26, weight of one US measure, by NDB number.
var perMeasure = []struct {
	food  string
	unit  measure.Unit
	grams float64
	ndb   string
}{
	{"egg yolk", measure.Each, 17, "01125"},
	{"egg yolks", measure.Each, 17, "01125"},
	{"egg", measure.Each, 50, "01123"},
	{"eggs", measure.Each, 50, "01123"},
	{"milk", measure.Millilitre, 244 / 236.588, "01077"},
	{"cream", measure.Millilitre, 238 / 236.588, "01053"},
	{"vinegar", measure.Millilitre, 239 / 236.588, "02048"},
	{"water", measure.Millilitre, 237 / 236.588, "14429"},
	{"ale", measure.Millilitre, 356.0 / 355, "14003"},
	{"stock", measure.Litre, 1000, "as water"},
	{"water", measure.Tablespoon, 15, "14429"},
	{"salt", measure.Teaspoon, 6, "02047"},
	{"baking powder", measure.Teaspoon, 4.6, "18369"},
	{"baking soda", measure.Teaspoon, 4.6, "18372"},
	{"cornmeal", measure.Cup, 157, "20022"},
	{"flour", measure.Cup, 125, "20081"},
	{"buttermilk", measure.Cup, 245, "01088"},
	{"sugar", measure.Cup, 200, "19335"},
	{"butter", measure.Stick, 113, "01145"},
}

// water is the share of water in a food: SR26, g in 100 g.
var water = map[string]float64{
	"milk":   0.8813, // 01077
	"egg":    0.7615, // 01123
	"butter": 0.1617, // 01145
}

// grams weighs a line at both ends of its range; ok is false where it says no
// weight and the table above has none (a pinch, a bay leaf).
func grams(l recipe.Line) (from, to float64, ok bool) {
	per := 0.0
	switch l.Amount.Unit {
	case measure.Gram:
		per = 1
	case measure.Kilogram:
		per = 1000
	case measure.Ounce:
		per = 28.349523125
	default:
		for _, row := range perMeasure {
			if row.unit == l.Amount.Unit && strings.HasSuffix(strings.ToLower(l.Food), row.food) {
				per = row.grams
				break
			}
		}
	}
	return l.Amount.From.Float() * per, l.Amount.To.Float() * per, per > 0 && l.HasAmount
}

// weigh adds up the lines of a component ("" for all of them) whose food ends
// in one of the names; no names means every line that can be weighed.
func weigh(r recipe.Recipe, component string, names ...string) (from, to float64) {
	for _, c := range r.Components {
		if component != "" && c.Name != component {
			continue
		}
		for _, l := range c.Lines {
			if len(names) > 0 && !endsInOne(strings.ToLower(l.Food), names) {
				continue
			}
			if a, b, ok := grams(l); ok {
				from, to = from+a, to+b
			}
		}
	}
	return from, to
}

func endsInOne(food string, names []string) bool {
	for _, name := range names {
		if food == name || strings.HasSuffix(food, " "+name) {
			return true
		}
	}
	return false
}

// TestRatios computes from the reading what README.md promises. All ranges are
// common practice, no source, but for those that name one.
func TestRatios(t *testing.T) {
	for _, tt := range []struct {
		name, key, component string
		of, to               []string
		low, high            float64 // of ÷ to
	}{
		{"knots: milk and egg to flour", "knots", "Dough", []string{"milk", "egg"}, []string{"flour"}, 0.60, 0.66},
		{"knots: salt to flour", "knots", "Dough", []string{"salt"}, []string{"flour"}, 0.016, 0.022},
		{"knots: yeast to flour", "knots", "Dough", []string{"yeast"}, []string{"flour"}, 0.008, 0.02},
		{"knots: sugar to flour", "knots", "Dough", []string{"sugar"}, []string{"flour"}, 0.05, 0.15},
		{"knots: butter to flour", "knots", "Dough", []string{"butter"}, []string{"flour"}, 0.08, 0.20},
		{"tart: butter to flour", "tart", "Pastry", []string{"butter"}, []string{"flour"}, 0.45, 0.60},
		{"tart: sugar to flour", "tart", "Pastry", []string{"sugar"}, []string{"flour"}, 0.25, 0.40},
		{"tart: yolk and water to flour", "tart", "Pastry", []string{"yolk", "water"}, []string{"flour"}, 0.12, 0.26},
		{"tart: starch to milk", "tart", "Pastry cream", []string{"cornflour"}, []string{"milk"}, 0.07, 0.10},
		{"tart: sugar to milk", "tart", "Pastry cream", []string{"sugar"}, []string{"milk"}, 0.17, 0.25},
		{"tart: yolk to milk", "tart", "Pastry cream", []string{"yolks"}, []string{"milk"}, 0.12, 0.21},
		{"custards: sugar to milk and cream", "custards", "Custard", []string{"sugar"}, []string{"milk", "cream"}, 0.10, 0.18},
		{"pickles: vinegar to water", "pickles", "Brine", []string{"vinegar"}, []string{"water"}, 1, 3},
		{"pickles: salt to vinegar and water", "pickles", "Brine", []string{"salt"}, []string{"vinegar", "water"}, 0.02, 0.05},
		{"stew: stock to barley", "stew", "", []string{"stock"}, []string{"barley"}, 6, 12},
		{"fish: ale to flour and cornflour", "fish", "Batter", []string{"ale"}, []string{"flour", "cornflour"}, 1.2, 1.5},
		{"fish: baking powder to flour", "fish", "Batter", []string{"powder"}, []string{"flour", "cornflour"}, 0.01, 0.05},
		{"fish: salt to fish", "fish", "Fish", []string{"salt"}, []string{"fillets"}, 0.008, 0.015},
		{"soup: salt to cucumber and yoghurt", "soup", "Soup", []string{"salt"}, []string{"yoghurt"}, 0.005, 0.012},
		{"beans: wet to dry", "beans", "Corn Lid", []string{"buttermilk", "eggs"}, []string{"cornmeal", "flour"}, 1.1, 1.5},
		{"beans: raising to dry", "beans", "Corn Lid", []string{"powder", "soda"}, []string{"cornmeal", "flour"}, 0.03, 0.05},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := read(t, tt.key, len(versions(newShow(t), tt.key)))
			of0, of1 := weigh(r, tt.component, tt.of...)
			to0, to1 := weigh(r, tt.component, tt.to...)
			if of0 == 0 || to0 == 0 {
				t.Fatalf("%v weighs %.1f g, %v weighs %.1f g: a food is not found", tt.of, of0, tt.to, to0)
			}
			if least, most := of0/to1, of1/to0; least < tt.low || most > tt.high {
				t.Errorf("ratio %.3f to %.3f, want %.3f to %.3f", least, most, tt.low, tt.high)
			}
		})
	}
}

// True hydration counts the water in milk, egg and butter; 54 to 62 % is common
// practice for a soft enriched dough that can be rolled by hand.
func TestKnotsTrueHydration(t *testing.T) {
	for _, tt := range []struct {
		version    int
		isRollable bool
	}{{1, false}, {2, false}, {3, true}} {
		r := read(t, "knots", tt.version)
		wet := 0.0
		for food, share := range water {
			g, _ := weigh(r, "Dough", food)
			wet += g * share
		}
		flour, _ := weigh(r, "Dough", "flour")
		if got := wet / flour; (got >= 0.54 && got <= 0.62) != tt.isRollable {
			t.Errorf("version %d: true hydration %.1f %%", tt.version, 100*got)
		}
	}
}

// Egg for 500 mL of milk and cream: 150 to 220 g sets a custard that is turned
// out (common practice, no source). Version 1 is at the bottom of it and tore.
func TestCustardEggs(t *testing.T) {
	for version, want := range map[int]float64{1: 150, 2: 184, 3: 184} {
		r := read(t, "custards", version)
		egg, _ := weigh(r, "Custard", "egg", "eggs", "yolks")
		dairy := 0.0
		for _, c := range r.Components {
			for _, l := range c.Lines {
				if l.Amount.Unit == measure.Millilitre {
					dairy += l.Amount.From.Float()
				}
			}
		}
		if got := egg / dairy * 500; got != want || got < 150 || got > 220 {
			t.Errorf("version %d: %.1f g of egg for 500 mL, want %.1f", version, got, want)
		}
	}
}

// Acetic acid in the brine: vinegar of 5 %, at least one part to one of water,
// so at least 2.5 % (common practice for refrigerator pickles).
func TestPickleAcid(t *testing.T) {
	r := read(t, "pickles", 1)
	vinegar, _ := weigh(r, "Brine", "vinegar")
	water, _ := weigh(r, "Brine", "water")
	if acid := 5 * vinegar / (vinegar + water); acid < 2.5 || acid > 4 {
		t.Errorf("%.2f %% acetic acid in the brine", acid)
	}
}

// What a trial weighed is what its version's lines add up to, less the few
// grams that stay on bowl and hook.
func TestTrialsWeighWhatTheLinesSay(t *testing.T) {
	parts := map[string]string{"knots": "Dough", "tart": "Pastry", "custards": "Custard"}
	const stays = 6 // grams a make
	weighed := 0
	for _, e := range newShow(t).Episodes {
		for i, trial := range e.Trials {
			if trial.DoughGrams.IsZero() {
				continue
			}
			weighed++
			from, to := weigh(read(t, e.Recipe, trial.Version), parts[e.Recipe])
			scale, got := trial.Scale.Float(), trial.DoughGrams.Float()
			if got < (from-stays)*scale || got > to*scale {
				t.Errorf("episode %d, trial %d: %.0f g, the lines say %.1f to %.1f g × %.1f", e.Brief.Number, i+1, got, from, to, scale)
			}
		}
	}
	if weighed < 10 {
		t.Errorf("%d trials weighed, want at least 10", weighed)
	}
}

// Bake loss of bread dough: 10 to 13 % (a professional baking textbook). A
// custard under foil in water loses 1 to 3 % (common practice).
func TestTrialLosses(t *testing.T) {
	for _, e := range newShow(t).Episodes {
		low, high := 0.10, 0.13
		if e.Recipe == "custards" {
			low, high = 0.01, 0.03
		}
		for i, trial := range e.Trials {
			if trial.BakedGrams.IsZero() {
				continue
			}
			loss := 1 - trial.BakedGrams.Quo(trial.DoughGrams).Float()
			if loss < low || loss > high {
				t.Errorf("episode %d, trial %d: loss %.1f %%", e.Brief.Number, i+1, 100*loss)
			}
		}
	}
}
