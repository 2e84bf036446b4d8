package shop_test

import (
	"fmt"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
)

// oneFood is a larder of one food, whose id is x.
func oneFood(name, plural string) *food.Larder {
	return food.NewLarder([]food.Food{{ID: "x", Name: name, Plural: plural, Aisle: "Other"}})
}

func only(t *testing.T, s shop.Sheet) shop.Item {
	t.Helper()
	if s.Items() != 1 {
		t.Fatalf("the sheet has %d items, want 1: %q", s.Items(), shown(s))
	}
	return s.Aisles[0].Items[0]
}

func TestItemTellsWhatItIsFor(t *testing.T) {
	buns := one("Buns", line("butter", "butter", "60", measure.Gram), line("butter", "butter", "1", measure.Stick))
	glaze := one("Glaze", with(line("butter", "butter", "", measure.Each), func(l *recipe.Line) { l.ToTaste = true }))
	got := only(t, shop.List([]shop.Need{need("shoot", "1", buns), need("swap-out", "2", buns), need("shoot", "1", glaze)}, larder()))
	want := []shop.Use{
		{Batch: "shoot", Recipe: "Buns", Measure: "175\u00a0g"},
		{Batch: "swap-out", Recipe: "Buns", Measure: "350\u00a0g"},
		{Batch: "shoot", Recipe: "Glaze"},
	}
	if diff := cmp.Diff(want, got.Uses); diff != "" {
		t.Errorf("uses (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff([]measure.Amount{measure.Of(whole(519), measure.Gram)}, got.Exact); diff != "" {
		t.Errorf("exact sum (-want +got):\n%s", diff)
	}
	if got.Measure != "520\u00a0g" || !got.ToTaste || got.FoodID != "butter" {
		t.Errorf("item = %+v", got)
	}
}

func TestItemKeysDoNotDependOnAmounts(t *testing.T) {
	keys := func(makes string, lines ...recipe.Line) []string {
		var all []string
		for _, aisle := range shop.List([]shop.Need{need("shoot", makes, one("Buns", lines...))}, larder()).Aisles {
			for _, item := range aisle.Items {
				all = append(all, item.Key)
			}
		}
		return all
	}
	few := keys("1", line("honey", "honey", "1", measure.Gram), line("egg-yolk", "yolk", "1", measure.Each), line("", "Stock  Powder", "1", measure.Gram))
	many := keys("9", line("honey", "runny honey", "3", measure.Cup), line("egg", "eggs", "5", measure.Each), line("", "stock powder", "", measure.Each))
	if !slices.Equal(few, many) {
		t.Errorf("keys %q and %q differ", few, many)
	}
	if len(slices.Compact(slices.Sorted(slices.Values(few)))) != 3 {
		t.Errorf("keys are not distinct: %q", few)
	}
}

func TestItemFlags(t *testing.T) {
	optional := func(l *recipe.Line) { l.Optional = true }
	couldBe := func(ids ...string) func(*recipe.Line) { return func(l *recipe.Line) { l.Choices = ids } }
	asks := func(question string) func(*recipe.Line) { return func(l *recipe.Line) { l.Reason = question } }
	honey := line("honey", "honey", "100", measure.Gram)
	tests := []struct {
		name  string
		lines []recipe.Line
		check func(shop.Item) bool
	}{
		{
			"nothing to say", []recipe.Line{honey},
			func(i shop.Item) bool { return !i.Optional && !i.Estimate && !i.ToTaste && i.Question == "" },
		},
		{
			"optional", []recipe.Line{with(honey, optional)},
			func(i shop.Item) bool { return i.Optional },
		},
		{
			"optional in one line only", []recipe.Line{with(honey, optional), honey},
			func(i shop.Item) bool { return !i.Optional },
		},
		{
			"an estimate", []recipe.Line{line("caraway", "caraway", "2", measure.Teaspoon)},
			func(i shop.Item) bool { return i.Estimate },
		},
		{
			"a line's own question", []recipe.Line{with(line("", "butter", "1", measure.Knob), asks("How much is a knob?"))},
			func(i shop.Item) bool { return i.Question == "How much is a knob?" },
		},
		{
			"the first question of several",
			[]recipe.Line{honey, with(honey, asks("First?")), with(honey, asks("Second?"))},
			func(i shop.Item) bool { return i.Question == "First?" },
		},
		{
			"a name that could be several foods",
			[]recipe.Line{with(line("", "cream", "100", measure.Gram), couldBe("milk", "butter", "egg"))},
			func(i shop.Item) bool {
				return i.Question == "Which is meant: whole milk, unsalted butter or egg?" && i.Name == "cream"
			},
		},
		{
			"no name at all",
			[]recipe.Line{{Text: "200 g", Read: true, HasAmount: true, Amount: measure.Of(whole(200), measure.Gram)}},
			func(i shop.Item) bool { return i.Name == "200 g" },
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := only(t, shop.List([]shop.Need{need("shoot", "1", one("Buns", test.lines...))}, larder()))
			if !test.check(got) {
				t.Errorf("item = %+v", got)
			}
		})
	}
}

func TestUnreadLinesAreQuestions(t *testing.T) {
	stew := one("Stew", recipe.Line{Text: "some of the good stuff", Reason: "No amount and no food we know."}, line("honey", "honey", "30", measure.Gram))
	stew.Unread = []recipe.Unread{{Number: 9, Text: "see page 4", Reason: "It is neither an ingredient nor a step."}}
	got := shop.List([]shop.Need{need("trial", "1", stew), need("shoot", "2", stew), need("spare", "0", stew)}, larder())
	want := []shop.Question{
		{Text: "some of the good stuff", Reason: "No amount and no food we know.", Recipe: "Stew", Batches: []string{"trial", "shoot"}},
		{Text: "see page 4", Reason: "It is neither an ingredient nor a step.", Recipe: "Stew", Batches: []string{"trial", "shoot"}},
	}
	if diff := cmp.Diff(want, got.Questions); diff != "" {
		t.Errorf("questions (-want +got):\n%s", diff)
	}
	if got.Items() != 1 {
		t.Errorf("an unread line is on the list: %q", shown(got))
	}
}

func TestListWithoutALarder(t *testing.T) {
	got := shown(shop.List([]shop.Need{need("shoot", "2", one("Buns", line("honey", "honey", "30", measure.Gram), line("water", "water", "1", measure.Cup)))}, nil))
	if diff := cmp.Diff([]string{"Other: 60 g | honey", "Other: 500 mL | water"}, got); diff != "" {
		t.Errorf("List (-want +got):\n%s", diff)
	}
}

// TestListInAmericanHouses: pounds and ounces of 28.349523125 g, cups of
// 236.588 mL (NIST Handbook 44, App. C), rounded up.
func TestListInAmericanHouses(t *testing.T) {
	tests := []struct {
		name string
		line recipe.Line
		want string
	}{
		{"pounds and ounces", line("plain-flour", "flour", "960", measure.Gram), "Flours and grains: 960 g | plain flour | 2 lb 2 oz"},
		{"ounces", line("plain-flour", "flour", "200", measure.Gram), "Flours and grains: 200 g | plain flour | 8 oz"},
		{"pounds", line("plain-flour", "flour", "453", measure.Gram), "Flours and grains: 455 g | plain flour | 1 lb"},
		{"cups", line("milk", "milk", "270", measure.Gram), "Dairy and eggs: 1¼ cups | whole milk | 270 g"},
		{"quarts", line("milk", "milk", "5", measure.Cup), "Dairy and eggs: 1¼ quarts | whole milk"},
		{"spoons", line("salt", "salt", "2", measure.Teaspoon), "Spices and dried herbs: 2 tsp | fine salt | 12 g"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			n := need("shoot", "1", one("Buns", test.line))
			n.System = measure.US
			if diff := cmp.Diff([]string{test.want}, shown(shop.List([]shop.Need{n}, larder()))); diff != "" {
				t.Errorf("List (-want +got):\n%s", diff)
			}
		})
	}
}

// The foods and units of the lists that the laws are tried on.
var (
	someUnits = []measure.Unit{
		measure.Gram, measure.Kilogram, measure.Ounce, measure.Millilitre, measure.Cup,
		measure.Tablespoon, measure.Teaspoon, measure.Each, measure.Sprig, measure.Stick,
	}
	someFoods = []string{"plain-flour", "honey", "milk", "butter", "egg", "egg-yolk", "egg-white", "onion", "thyme", "salt", ""}
)

// anyLines draws the lines of a recipe.
func anyLines(t *rapid.T) []recipe.Line {
	var lines []recipe.Line
	for i := range rapid.IntRange(1, 12).Draw(t, "lines") {
		id := rapid.SampledFrom(someFoods).Draw(t, "food")
		n := fmt.Sprintf("%d/%d", rapid.IntRange(1, 900).Draw(t, "n"), rapid.IntRange(1, 8).Draw(t, "of"))
		l := line(id, "food "+id, n, rapid.SampledFrom(someUnits).Draw(t, "unit"))
		l.Number = i + 1
		lines = append(lines, l)
	}
	return lines
}

// exactSums are the exact sums by key. Eggs are bought whole, so that theirs do
// not add up, and are left out.
func exactSums(s shop.Sheet) map[string]string {
	all := map[string]string{}
	for _, aisle := range s.Aisles {
		for _, item := range aisle.Items {
			if item.Key != "egg" {
				all[item.Key] = fmt.Sprint(item.Exact)
			}
		}
	}
	return all
}

// TestListAddsUp: two batches of k makes need what one of 2k needs.
func TestListAddsUp(t *testing.T) {
	kitchen := larder()
	rapid.Check(t, func(t *rapid.T) {
		buns := one("Buns", anyLines(t)...)
		k := rapid.Int64Range(1, 6).Draw(t, "makes")
		atOnce := shop.List([]shop.Need{need("shoot", fmt.Sprint(2*k), buns)}, kitchen)
		apart := shop.List([]shop.Need{need("shoot", fmt.Sprint(k), buns), need("spare", fmt.Sprint(k), buns)}, kitchen)
		if diff := cmp.Diff(exactSums(atOnce), exactSums(apart)); diff != "" {
			t.Fatalf("%d makes at once and in two batches differ:\n%s", 2*k, diff)
		}
	})
}

// TestListIgnoresTheOrder of a recipe's lines, as far as sums of one kind go.
func TestListIgnoresTheOrder(t *testing.T) {
	kitchen := larder()
	rapid.Check(t, func(t *rapid.T) {
		lines := anyLines(t)
		forward := exactSums(shop.List([]shop.Need{need("shoot", "1", one("Buns", lines...))}, kitchen))
		slices.Reverse(lines)
		back := shop.List([]shop.Need{need("shoot", "1", one("Buns", lines...))}, kitchen)
		for _, aisle := range back.Aisles {
			for _, item := range aisle.Items {
				if item.Key != "egg" && len(item.Exact) == 1 && fmt.Sprint(item.Exact) != forward[item.Key] {
					t.Fatalf("turned round, %s is %v, not %v", item.Key, item.Exact, forward[item.Key])
				}
			}
		}
	})
}

// TestListBuysEnoughOfEverything: what is written is never less than the exact
// sum, and every food has its item.
func TestListBuysEnoughOfEverything(t *testing.T) {
	kitchen := larder()
	rapid.Check(t, func(t *rapid.T) {
		lines := anyLines(t)
		got := shop.List([]shop.Need{need("shoot", "1", one("Buns", lines...))}, kitchen)
		for _, aisle := range got.Aisles {
			for _, item := range aisle.Items {
				if !coversExact(item) {
					t.Fatalf("%q is less than %v", item.Measure, item.Exact)
				}
			}
		}
		wanted := map[string]bool{}
		for _, l := range lines {
			switch l.FoodID {
			case "egg-yolk", "egg-white":
				wanted["egg"] = true
			default:
				wanted[l.FoodID] = true
			}
		}
		if got.Items() != len(wanted) {
			t.Fatalf("%d items for %d foods", got.Items(), len(wanted))
		}
	})
}

// BenchmarkList bounds drawing a shopping list: four batches of a recipe of
// forty lines.
func BenchmarkList(b *testing.B) {
	kitchen := larder()
	var lines []recipe.Line
	for i := range 40 {
		lines = append(lines, line(someFoods[i%len(someFoods)], "food", "3/2", someUnits[i%len(someUnits)]))
	}
	buns := one("Buns", lines...)
	needs := []shop.Need{need("trial", "1", buns), need("shoot", "1", buns), need("swap-out", "2", buns), need("spare", "1/2", buns)}
	b.ReportAllocs()
	for b.Loop() {
		if shop.List(needs, kitchen).Items() == 0 {
			b.Fatal("nothing to buy")
		}
	}
}

// coversExact reads a measure in grams back and holds it against the exact sum.
func coversExact(item shop.Item) bool {
	if len(item.Exact) != 1 || item.Exact[0].Unit != measure.Gram || item.FoodID == "milk" {
		return true
	}
	got, rest, ok := measure.ReadAmount(item.Measure)
	if !ok || rest != "" {
		return false
	}
	grams, err := measure.Convert(got.Amount, measure.Gram, measure.Metric, measure.Metric)
	return err == nil && grams.To.Cmp(item.Exact[0].To) >= 0 && !item.Exact[0].To.IsZero()
}

// TestAislesCoverTheLarder holds that an aisle of the larder is never lost.
func TestAislesCoverTheLarder(t *testing.T) {
	for _, aisle := range food.Aisles {
		kitchen := food.NewLarder([]food.Food{{ID: "x", Name: "thing", Aisle: aisle}})
		got := shop.List([]shop.Need{need("shoot", "1", one("Buns", line("x", "thing", "1", measure.Gram)))}, kitchen)
		if len(got.Aisles) != 1 || got.Aisles[0].Name != aisle {
			t.Errorf("aisle %q came out as %+v", aisle, got.Aisles)
		}
	}
}
