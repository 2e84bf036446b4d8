package seed_test

import (
	"maps"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/seed"

	"github.com/google/go-cmp/cmp"
)

func builtIn(tb testing.TB) *food.Larder {
	tb.Helper()
	l, err := seed.Larder()
	if err != nil {
		tb.Fatal(err)
	}
	return l
}

func TestTheLarderIsWellStocked(t *testing.T) {
	foods := builtIn(t).Foods()
	names, fromTable, likeTable := 0, 0, 0
	aisles := map[string]int{}
	for _, f := range foods {
		names += 1 + len(f.Names)
		aisles[f.Aisle]++
		switch {
		case strings.HasPrefix(f.Source, "USDA SR "):
			fromTable++
		case strings.HasPrefix(f.Source, "estimate, as USDA SR "):
			likeTable++
		case f.Source != food.Estimate:
			t.Errorf("%s: source %q is neither the USDA's nor an estimate", f.Name, f.Source)
		}
	}
	t.Logf("%d foods, %d names; %d from USDA SR, %d as another of its foods", len(foods), names, fromTable, likeTable)
	if len(foods) < 600 {
		t.Errorf("%d foods, want 600 or more", len(foods))
	}
	if fromTable*2 < len(foods) {
		t.Errorf("%d of %d foods are from USDA SR, want half or more", fromTable, len(foods))
	}
	for _, aisle := range food.Aisles {
		if aisles[aisle] == 0 {
			t.Errorf("nothing stands in the aisle %s", aisle)
		}
	}
}

func TestEveryFoodCanBeUsed(t *testing.T) {
	for _, f := range builtIn(t).Foods() {
		for _, n := range []food.Nutrient{food.EnergyKcal, food.Protein, food.Fat, food.Carbohydrate} {
			if f.Per100.Get(n) == nil {
				t.Errorf("%s: %s is not known", f.Name, n)
			}
		}
		if f.Per100.Get(food.Water) == nil && f.Source != "USDA SR 08156" {
			t.Errorf("%s: water is not known", f.Name)
		}
		if parts := sum(f, food.Water, food.Protein, food.Fat, food.Carbohydrate, food.Alcohol); parts > 103 {
			t.Errorf("%s: 100 g hold %.1f g", f.Name, parts)
		}
		if strings.HasPrefix(f.Source, food.Estimate) && f.Per100.Get(food.Fibre) != nil && sum(f, food.Fibre) > sum(f, food.Carbohydrate)+0.6 {
			t.Errorf("%s: more fibre than carbohydrate", f.Name)
		}
		if len(f.Packs) == 0 && len(f.Weights) == 0 {
			t.Errorf("%s has neither packs nor weights", f.Name)
		}
		if holds, may := f.Allergens, f.MayHold; slices.ContainsFunc(may, func(code string) bool { return slices.Contains(holds, code) }) {
			t.Errorf("%s holds %v and may hold %v", f.Name, holds, may)
		}
	}
}

func sum(f *food.Food, nutrients ...food.Nutrient) float64 {
	total := 0.0
	for _, n := range nutrients {
		if figure := f.Per100.Get(n); figure != nil {
			total += figure.Float()
		}
	}
	return total
}

// A cup, a spoon and a fluid ounce of one food in one form must agree, and no
// food is lighter than snow or heavier than syrup. Where the USDA's own rows
// disagree by more, the food is named here.
func TestWeightsOfOneFoodAgree(t *testing.T) {
	apart := map[string]bool{ // USDA rows, or a dash and a spoon
		"black-pepper": true, "salt": true, "alfalfa-sprouts": true, "white-chocolate": true, "mint": true,
	}
	light := map[string]bool{"dried-chives": true} // SR 11615, freeze-dried
	for _, f := range builtIn(t).Foods() {
		least, most := map[string]float64{}, map[string]float64{}
		seen := map[string]bool{}
		for _, w := range f.Weights {
			key := string(w.Unit) + "/" + w.Form + "/" + string(w.System)
			if seen[key] {
				t.Errorf("%s: %s stands twice", f.Name, key)
			}
			seen[key] = true
			ml, ok := measure.US.Millilitres(w.Unit)
			if !ok || w.Unit.Kind() != measure.Volume {
				continue
			}
			density := w.Grams.Float() / ml.Float()
			if (density < 0.02 || density > 1.6) && !light[f.ID] {
				t.Errorf("%s: a %s %s weighs %.3f g/mL", f.Name, w.Unit, w.Form, density)
			}
			if d, ok := least[w.Form]; !ok || density < d {
				least[w.Form] = density
			}
			most[w.Form] = max(most[w.Form], density)
		}
		for form := range least {
			if most[form] > 1.3*least[form] && !apart[f.ID] {
				t.Errorf("%s, form %q: from %.2f to %.2f g/mL", f.Name, form, least[form], most[form])
			}
		}
	}
}

// Names that several foods share, on purpose: these ask. Any other is a slip in
// the tables.
func TestOnlyTheseNamesAsk(t *testing.T) {
	l := builtIn(t)
	asks := map[string]bool{}
	for _, f := range l.Foods() {
		for _, name := range append([]string{f.Name}, f.Names...) {
			switch m := l.Match(name); {
			case m.How == food.Ask:
				asks[name] = true
				if !slices.Contains(m.Choices, f) {
					t.Errorf("%q asks without %s", name, f.Name)
				}
			case m.Food != f:
				t.Errorf("%q is a name of %s, but finds %v (%s)", name, f.Name, m.Food, m.How)
			case m.Form != "" || m.Left != "":
				t.Errorf("%q leaves form %q, words %q", name, m.Form, m.Left)
			}
		}
	}
	want := []string{"black lentil", "cheese", "chervil", "chilli powder", "coriander", "corn flour", "cream", "ginger", "liver",
		"marjoram", "oatmeal", "oregano", "pectin", "rosemary", "sage", "tarragon", "thyme", "yeast"}
	if d := cmp.Diff(want, slices.Sorted(maps.Keys(asks))); d != "" {
		t.Errorf("names that ask (-want +got):\n%s", d)
	}
}

// Common practice in UK, US, AU/NZ and CA kitchens, no source.
func TestOneFoodHasTheNamesOfEveryKitchen(t *testing.T) {
	l := builtIn(t)
	for _, names := range [][]string{
		{"plain flour", "all-purpose flour"}, {"strong white bread flour", "bread flour", "high grade flour"},
		{"self-raising flour", "self-rising flour"}, {"wholemeal flour", "whole wheat flour"}, {"cornflour", "cornstarch"},
		{"caster sugar", "superfine sugar"}, {"icing sugar", "powdered sugar", "confectioners' sugar"}, {"demerara sugar", "turbinado sugar"},
		{"bicarbonate of soda", "baking soda", "bicarb", "bicarb soda"}, {"golden syrup", "light treacle"},
		{"whipping cream", "heavy cream"}, {"single cream", "light cream"}, {"soured cream", "sour cream"}, {"natural yogurt", "plain yogurt", "dahi"},
		{"coriander leaves", "cilantro"}, {"aubergine", "eggplant", "brinjal"}, {"courgette", "zucchini"}, {"rocket", "arugula"},
		{"swede", "rutabaga"}, {"beetroot", "beet"}, {"spring onion", "scallion", "green onion"}, {"sweet pepper", "bell pepper", "capsicum"},
		{"mangetout", "snow peas"}, {"broad beans", "fava beans"}, {"sweet potato", "kumara"}, {"chinese leaf", "napa cabbage", "wombok"},
		{"swiss chard", "silverbeet"}, {"celeriac", "celery root"}, {"chicory", "belgian endive", "witlof"}, {"sweetcorn", "corn on the cob"},
		{"prawns", "shrimp"}, {"minced beef", "ground beef", "beef mince"}, {"stewing beef", "chuck steak"}, {"streaky bacon", "bacon"},
		{"back bacon", "canadian bacon"}, {"sultanas", "golden raisins"}, {"ground almonds", "almond flour", "almond meal"},
		{"desiccated coconut", "dried coconut"}, {"dried breadcrumbs", "breadcrumbs"}, {"rapeseed oil", "canola oil"}, {"groundnut oil", "peanut oil"},
		{"vegetable shortening", "shortening"}, {"tomato purée", "tomato paste"}, {"tomato ketchup", "catsup"}, {"treacle", "black treacle"},
		{"gelatine powder", "unflavored gelatin"}, {"filo pastry", "phyllo dough"}, {"digestive biscuits", "digestives"},
		{"sponge fingers", "ladyfingers", "savoiardi"}, {"tinned chickpeas", "garbanzo beans", "chickpeas"}, {"gram flour", "besan"},
		{"ghee", "clarified butter"}, {"toor dal", "pigeon peas"}, {"chilli flakes", "red pepper flakes"}, {"black cumin seeds", "nigella seeds", "kalonji"},
		{"katakuriko", "potato starch"}, {"daikon", "mooli"}, {"shaoxing wine", "chinese cooking wine"}, {"bonito flakes", "katsuobushi"},
		{"polenta", "cornmeal"}, {"passata", "sieved tomatoes"}, {"semolina", "sooji"}, {"soya milk", "soy milk"}, {"dulce de leche", "cajeta"},
		{"papaya", "pawpaw"}, {"passion fruit", "granadilla"}, {"gherkins", "dill pickles"}, {"stock", "broth"}, {"crisps", "potato chips"},
	} {
		first := l.Match(names[0])
		for _, name := range names[1:] {
			if m := l.Match(name); m.Food == nil || m.Food != first.Food {
				t.Errorf("%q is %v (%s), %q is %v (%s)", names[0], first.Food, first.How, name, m.Food, m.How)
			}
		}
	}
}

func TestReadLarderSaysWhereAFaultIs(t *testing.T) {
	table := func(text string) *fstest.MapFile { return &fstest.MapFile{Data: []byte(text)} }
	for _, tc := range []struct {
		name, says string
		files      fstest.MapFS
	}{
		{"file and line", "larder/b.txt, line 1: there is no aisle", fstest.MapFS{
			"larder/a.txt": table("# nothing"), "larder/b.txt": table("aisle: Toys\n")}},
		{"one id in two files", "larder/b.txt: the id x is taken in larder/a.txt", fstest.MapFS{
			"larder/a.txt": table("aisle: Other\nx\n    id: x\n    source: estimate\n"),
			"larder/b.txt": table("aisle: Other\ny\n    id: x\n    source: estimate\n")}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, err := seed.ReadLarder(tc.files)
			if fault.KindOf(err) != fault.Invalid || !strings.Contains(fault.Say(err), tc.says) {
				t.Errorf("err = %v, want Invalid saying %q", err, tc.says)
			}
		})
	}
	if foods, err := seed.ReadLarder(fstest.MapFS{}); err != nil || len(foods) != 0 {
		t.Errorf("of no files: %v, %v", foods, err)
	}
}
