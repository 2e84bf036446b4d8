package food_test

import (
	"bytes"
	"strings"
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

const smallTable = `# a comment
aisle: Baking

plain flour
    id: plain-flour
    also: all-purpose flour, AP flour
    plural: plain flours
    source: USDA SR 20081
    weighs: cup 125
    weighs (estimate): cup sifted 115, fl oz 15.5
    holds: water 11.92, energy 364, sodium 2
    allergens: wheat
    may hold: soya, milk
    packs: 500 g bag, 1.5 kg bag

aisle: Dairy and eggs

egg
    id: egg
    source: estimate
    weighs: each large 50, each large [metric] 60
    packs: 6 each box
`

func TestReadTable(t *testing.T) {
	got, err := food.ReadTable(strings.NewReader(smallTable))
	if err != nil {
		t.Fatal(err)
	}
	n := func(s string) *measure.Number { v := num(s); return &v }
	want := []food.Food{
		{
			ID: "plain-flour", Name: "plain flour", Names: []string{"all-purpose flour", "AP flour"}, Plural: "plain flours",
			Aisle: "Baking", Source: "USDA SR 20081",
			Weights: []food.Weight{
				{Unit: measure.Cup, Grams: num("125"), Source: "USDA SR 20081"},
				{Unit: measure.Cup, Form: "sifted", Grams: num("115"), Source: "estimate"},
				{Unit: measure.FluidOunce, Grams: num("15.5"), Source: "estimate"},
			},
			Per100:    food.Nutrients{Water: n("11.92"), EnergyKcal: n("364"), SodiumMilligrams: n("2")},
			Allergens: []string{"wheat"}, MayHold: []string{"soya", "milk"},
			Packs: []food.Pack{
				{Amount: measure.Of(num("500"), measure.Gram), Name: "bag"},
				{Amount: measure.Of(num("1.5"), measure.Kilogram), Name: "bag"},
			},
		},
		{
			ID: "egg", Name: "egg", Aisle: "Dairy and eggs", Source: "estimate",
			Weights: []food.Weight{
				{Unit: measure.Each, Form: "large", Grams: num("50"), Source: "estimate"},
				{Unit: measure.Each, Form: "large", System: measure.Metric, Grams: num("60"), Source: "estimate"},
			},
			Packs: []food.Pack{{Amount: measure.Of(num("6"), measure.Each), Name: "box"}},
		},
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Errorf("foods (-want +got):\n%s", d)
	}
}

func TestReadTableNamesTheLineOfAFault(t *testing.T) {
	const head = "aisle: Baking\n\nflour\n    id: flour\n    source: estimate\n" // 5 lines
	for _, tc := range []struct{ name, table, says string }{
		{"no such aisle", "aisle: Toys\n", `line 1: there is no aisle "Toys"`},
		{"no aisle", "flour\n    id: flour\n    source: estimate\n", "line 1: no aisle stands above flour"},
		{"no id", "aisle: Baking\nflour\n    source: estimate\n", "line 2: flour has no id"},
		{"no source", "aisle: Baking\nflour\n    id: flour\n", "line 2: flour does not say where its figures are from"},
		{"id not a slug", "aisle: Baking\nflour\n    id: Plain Flour\n    source: estimate\n", `line 2: the id "Plain Flour" must be`},
		{"id ends in a hyphen", "aisle: Baking\nflour\n    id: flour-\n    source: estimate\n", `line 2: the id "flour-" must be`},
		{"id twice", head + "\nother\n    id: flour\n    source: estimate\n", "line 7: the id flour is taken on line 3"},
		{"name with a comma", "aisle: Baking\nflour, plain\n", "line 2: a food's name has no colon or comma"},
		{"line without a food", "aisle: Baking\n    id: x\n", "line 2: no food stands above"},
		{"line without a colon", head + "    maize\n", "line 6: write what it is before a colon"},
		{"unknown key", head + "    colour: white\n", "line 6: “colour” is nothing a food has"},
		{"key twice", head + "    source: estimate\n", "line 6: “source” stands twice"},
		{"nothing behind", head + "    also:\n", "line 6: nothing stands behind “also:”"},
		{"weight without unit", head + "    weighs: 125\n", `line 6: "125" is no weight`},
		{"weight without grams", head + "    weighs: cup sifted\n", `line 6: "cup sifted" must end in grams`},
		{"weight of nothing", head + "    weighs: cup 0\n", `line 6: "cup 0" must end in grams above 0`},
		{"weight of no unit", head + "    weighs: bucket 9\n", `line 6: "bucket 9" begins with no unit`},
		{"weight of no system", head + "    weighs: cup [lunar] 9\n", "line 6: [lunar] is no measuring system"},
		{"unknown nutrient", head + "    holds: joy 3\n", `line 6: "joy" is no nutrient`},
		{"nutrient without figure", head + "    holds: fat\n", `line 6: "fat" needs a figure`},
		{"negative nutrient", head + "    holds: fat -1\n", `line 6: "fat -1" needs a figure`},
		{"more than 100 g", head + "    holds: fat 101\n", "line 6: 100 g cannot hold 101 g of fat"},
		{"more energy than fat", head + "    holds: energy 903\n", "line 6: 100 g cannot hold 903 kcal"},
		{"nutrient twice", head + "    holds: fat 1, fat 2\n", "line 6: fat stands twice"},
		{"unknown allergen", head + "    allergens: cheese\n", `line 6: "cheese" is no allergen code`},
		{"unknown allergen that may be", head + "    may hold: cheese\n", `line 6: "cheese" is no allergen code`},
		{"pack without unit", head + "    packs: 500\n", `line 6: "500" is no pack`},
		{"pack without number", head + "    packs: big g bag\n", `line 6: "big g bag" must begin with a number`},
		{"pack of no unit", head + "    packs: 5 buckets full\n", `line 6: "5 buckets full" has no unit`},
	} {
		t.Run(tc.name, func(t *testing.T) {
			foods, err := food.ReadTable(strings.NewReader(tc.table))
			if err == nil {
				t.Fatalf("read %d foods, want a fault saying %q", len(foods), tc.says)
			}
			if fault.KindOf(err) != fault.Invalid || !strings.Contains(fault.Say(err), tc.says) {
				t.Errorf("fault %v %q, want Invalid saying %q", fault.KindOf(err), fault.Say(err), tc.says)
			}
		})
	}
}

func TestReadTableOfNothing(t *testing.T) {
	foods, err := food.ReadTable(strings.NewReader("\n# only a comment\n"))
	if err != nil || len(foods) != 0 {
		t.Errorf("read %v, %v; want nothing", foods, err)
	}
}

// Law: read(write(x)) = x, for the whole built-in larder.
func TestWriteTableReadsBack(t *testing.T) {
	var all []food.Food
	for _, aisle := range food.Aisles { // the table goes aisle by aisle
		for _, f := range larder(t).Foods() {
			if f.Aisle == aisle {
				all = append(all, *f)
			}
		}
	}
	var text bytes.Buffer
	if err := food.WriteTable(&text, all); err != nil {
		t.Fatal(err)
	}
	again, err := food.ReadTable(&text)
	if err != nil {
		t.Fatal(err)
	}
	for i := range all {
		if d := cmp.Diff(byID(all[i].Weights), byID(again[i].Weights)); d != "" {
			t.Fatalf("%s, weights (-want +got):\n%s", all[i].Name, d)
		}
		all[i].Weights, again[i].Weights = nil, nil
	}
	if d := cmp.Diff(all, again); d != "" {
		t.Errorf("foods (-want +got):\n%s", d)
	}
}

// byID gives weights under a key: they are written by source, so that those of
// two sources can change places if they stand mixed.
func byID(weights []food.Weight) map[string]food.Weight {
	m := map[string]food.Weight{}
	for _, w := range weights {
		m[string(w.Unit)+"/"+w.Form+"/"+string(w.System)] = w
	}
	return m
}

func FuzzReadTable(f *testing.F) {
	f.Add(smallTable)
	f.Add("aisle: Baking\nx\n    id: x\n    source: y\n    weighs: cup [us] 1/3\n")
	f.Fuzz(func(t *testing.T, table string) {
		foods, err := food.ReadTable(strings.NewReader(table))
		if err != nil {
			return
		}
		var text bytes.Buffer
		if err := food.WriteTable(&text, foods); err != nil {
			t.Fatal(err)
		}
		again, err := food.ReadTable(bytes.NewReader(text.Bytes()))
		if err != nil {
			t.Fatalf("what was written does not read: %v\n%s", err, text.String())
		}
		if len(again) != len(foods) {
			t.Fatalf("%d foods written, %d read back", len(foods), len(again))
		}
	})
}

// Law: a weight scales with its amount, whatever the food and the unit.
func TestGramsAreLinear(t *testing.T) {
	all := larder(t).Foods()
	rapid.Check(t, func(t *rapid.T) {
		f := anyFood(t, all)
		if len(f.Weights) == 0 {
			return
		}
		w := f.Weights[rapid.IntRange(0, len(f.Weights)-1).Draw(t, "weight")]
		system := rapid.SampledFrom(measure.Systems()).Draw(t, "system")
		amount, k := anyGrams(t, "amount"), anyGrams(t, "k")
		one, err := f.Grams(measure.Of(amount, w.Unit), w.Form, system)
		if err != nil {
			t.Fatalf("%s: %v", f.Name, err)
		}
		many, err := f.Grams(measure.Of(amount.Mul(k), w.Unit), w.Form, system)
		if err != nil {
			t.Fatalf("%s: %v", f.Name, err)
		}
		if !many.Grams.From.Equal(one.Grams.From.Mul(k)) || many.Assumed != one.Assumed || many.Source != one.Source {
			t.Fatalf("%s: %v × %s is not %v", f.Name, one, k, many)
		}
	})
}

// Law: grams to millilitres and back is exact, where a food has a volume.
func TestMillilitresTurnBack(t *testing.T) {
	all := larder(t).Foods()
	rapid.Check(t, func(t *rapid.T) {
		f, grams := anyFood(t, all), anyGrams(t, "grams")
		ml, ok := f.Millilitres(measure.One(grams), "")
		if !ok {
			return
		}
		density, _ := f.GramsPerMillilitre("")
		if got := ml.From.Mul(density); !got.Equal(grams) {
			t.Fatalf("%s: %s g → %s mL → %s g", f.Name, grams, ml.From, got)
		}
	})
}
