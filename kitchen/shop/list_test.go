package shop_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
)

func whole(n int64) measure.Number { return measure.Whole(n) }

func weight(u measure.Unit, form, grams string) food.Weight {
	return food.Weight{Unit: u, Form: form, Grams: measure.MustNumber(grams), Source: "USDA SR"}
}

// larder is a small larder. Weights are those of SR26: flour 20081 cup 125 g,
// honey 19296 cup 339 g, milk 01077 cup 244 g, butter 01145 cup 227 g and stick
// 113 g, egg 01123 50 g, white 01124 33 g, yolk 01125 17 g (large), onion 11282
// medium 110 g and cup chopped 160 g, caraway an estimate.
func larder() *food.Larder {
	litres := []food.Pack{{Amount: measure.Of(whole(1), measure.Litre)}}
	return food.NewLarder([]food.Food{
		{ID: "plain-flour", Name: "plain flour", Aisle: "Flours and grains", Weights: []food.Weight{weight(measure.Cup, "", "125"), weight(measure.Cup, "sifted", "115")}},
		{ID: "honey", Name: "honey", Aisle: "Sugars and syrups", Weights: []food.Weight{weight(measure.Cup, "", "339")}},
		{ID: "milk", Name: "whole milk", Aisle: "Dairy and eggs", Weights: []food.Weight{weight(measure.Cup, "", "244")}, Packs: litres},
		{ID: "butter", Name: "unsalted butter", Aisle: "Dairy and eggs", Weights: []food.Weight{weight(measure.Cup, "", "227"), weight(measure.Stick, "", "113")}},
		{ID: "egg", Name: "egg", Plural: "eggs", Aisle: "Dairy and eggs", Weights: []food.Weight{weight(measure.Each, "large", "50"), weight(measure.Cup, "", "243")}},
		{ID: "egg-yolk", Name: "egg yolk", Aisle: "Dairy and eggs", Weights: []food.Weight{weight(measure.Each, "large", "17")}},
		{ID: "egg-white", Name: "egg white", Aisle: "Dairy and eggs", Weights: []food.Weight{weight(measure.Each, "large", "33"), weight(measure.Cup, "", "243")}},
		{ID: "onion", Name: "onion", Plural: "onions", Aisle: "Fruit and vegetables", Weights: []food.Weight{weight(measure.Each, "medium", "110"), weight(measure.Cup, "chopped", "160")}},
		{ID: "thyme", Name: "thyme", Aisle: "Fresh herbs"},
		{ID: "salt", Name: "fine salt", Aisle: "Spices and dried herbs", Weights: []food.Weight{weight(measure.Teaspoon, "", "6")}},
		{ID: "caraway", Name: "caraway seeds", Aisle: "Spices and dried herbs", Weights: []food.Weight{{Unit: measure.Teaspoon, Grams: measure.MustNumber("2.1"), Source: food.Estimate}}},
		{ID: "tomatoes", Name: "tinned tomatoes", Aisle: "Tins and jars"},
		{ID: "water", Name: "water", Aisle: "Other"},
		{ID: "lost", Name: "lost food", Aisle: "Under the counter"},
	})
}

// line makes a line the way the reader does: "270 g" of the food id.
func line(id, name, n string, u measure.Unit) recipe.Line {
	l := recipe.Line{Text: strings.TrimSpace(n + " " + string(u) + " " + name), Read: true, Food: name, FoodID: id}
	if n != "" {
		l.Amount, l.HasAmount = measure.Of(measure.MustNumber(n), u), true
	}
	return l
}

func with(l recipe.Line, change func(*recipe.Line)) recipe.Line {
	change(&l)
	return l
}

func one(title string, lines ...recipe.Line) recipe.Recipe {
	return recipe.Recipe{Title: title, Components: []recipe.Component{{Lines: lines}}}
}

func need(batch string, makes string, r recipe.Recipe) shop.Need {
	return shop.Need{Batch: batch, Makes: measure.MustNumber(makes), Recipe: r, System: measure.Metric}
}

// shown writes a sheet in lines: "aisle: measure | name | small".
func shown(s shop.Sheet) []string {
	var lines []string
	for _, aisle := range s.Aisles {
		for _, item := range aisle.Items {
			text := aisle.Name + ": " + item.Measure + " | " + item.Name + " | " + item.Small
			lines = append(lines, strings.TrimRight(strings.ReplaceAll(text, "\u00a0", " "), "| "))
		}
	}
	return lines
}

// made is a list for some makes of one recipe.
func made(makes string, lines ...recipe.Line) []string {
	return shown(shop.List([]shop.Need{need("shoot", makes, one("Buns", lines...))}, larder()))
}

func inUS(l *recipe.Line) { l.System = measure.US }

func toTaste(l *recipe.Line) { l.ToTaste = true }

func sifted(l *recipe.Line) { l.Form = "sifted" }

// tins says that the line's amount is so many tins of 400 g.
func tins(n int64) func(*recipe.Line) {
	return func(l *recipe.Line) {
		l.Packs = recipe.Packs{Count: measure.One(whole(n)), Size: measure.Of(whole(400), measure.Gram), Unit: measure.Tin}
	}
}

func TestListSumsEachFood(t *testing.T) {
	flour := func(n string, u measure.Unit) recipe.Line { return line("plain-flour", "plain flour", n, u) }
	onion := func(n string, u measure.Unit) recipe.Line { return line("onion", "onion", n, u) }
	thyme := func(n string, u measure.Unit) recipe.Line { return line("thyme", "thyme", n, u) }
	salt := func(n string, u measure.Unit) recipe.Line { return line("salt", "salt", n, u) }
	tomatoes := func(n string, u measure.Unit) recipe.Line { return line("tomatoes", "tomatoes", n, u) }
	tests := []struct {
		name  string
		makes string
		lines []recipe.Line
		want  []string
	}{
		{"no makes, nothing needed", "0", []recipe.Line{flour("200", measure.Gram)}, nil},
		{"fewer than none", "-1", []recipe.Line{flour("200", measure.Gram)}, nil},
		{
			"makes times amount", "3",
			[]recipe.Line{flour("320", measure.Gram)},
			[]string{"Flours and grains: 960 g | plain flour"},
		},
		{
			"half a make", "1/2",
			[]recipe.Line{flour("320", measure.Gram)},
			[]string{"Flours and grains: 160 g | plain flour"},
		},
		{
			"grams and cups sum in grams", "1", // SR26 20081: 125 g a cup
			[]recipe.Line{flour("200", measure.Gram), with(flour("2", measure.Cup), inUS)},
			[]string{"Flours and grains: 450 g | plain flour"},
		},
		{
			"sifted cups by their own weight", "1",
			[]recipe.Line{with(with(flour("2", measure.Cup), inUS), sifted)},
			[]string{"Flours and grains: 230 g | plain flour | 475 mL"},
		},
		{
			"kilograms", "7",
			[]recipe.Line{flour("333", measure.Gram)},
			[]string{"Flours and grains: 2.35 kg | plain flour"},
		},
		{
			"of a range the larger end", "2",
			[]recipe.Line{with(flour("100", measure.Gram), func(l *recipe.Line) { l.Amount.To = whole(120) })},
			[]string{"Flours and grains: 240 g | plain flour"},
		},
		{
			"an amount plus another", "1", // 200 g + 30 mL at 125 g in 236.588 mL = 215.85 g
			[]recipe.Line{with(flour("200", measure.Gram), func(l *recipe.Line) {
				l.Plus = []measure.Amount{measure.Of(whole(2), measure.Tablespoon)}
			})},
			[]string{"Flours and grains: 220 g | plain flour"},
		},
		{
			"milk is sold by volume", "1", // 270 ÷ 244 × 236.588 = 261.8 mL
			[]recipe.Line{line("milk", "milk", "270", measure.Gram)},
			[]string{"Dairy and eggs: 265 mL | whole milk | 270 g"},
		},
		{
			"sticks are weighed", "1", // 1½ × 113 = 169.5 g
			[]recipe.Line{line("butter", "butter", "3/2", measure.Stick)},
			[]string{"Dairy and eggs: 170 g | unsalted butter"},
		},
		{
			"few spoons stay spoons", "3",
			[]recipe.Line{line("caraway", "caraway seeds", "1/2", measure.Teaspoon)},
			[]string{"Spices and dried herbs: 1½ tsp | caraway seeds | 4 g"},
		},
		{
			"many spoons are weighed", "2", // 60 mL × 339 ÷ 236.588 = 85.97 g
			[]recipe.Line{line("honey", "honey", "2", measure.Tablespoon)},
			[]string{"Sugars and syrups: 90 g | honey | 4 tbsp"},
		},
		{
			"pieces, with their weight", "2",
			[]recipe.Line{onion("3/2", measure.Each)},
			[]string{"Fruit and vegetables: 3 | onions | about 330 g"},
		},
		{
			"pieces and grams", "1",
			[]recipe.Line{onion("2", measure.Each), onion("150", measure.Gram)},
			[]string{"Fruit and vegetables: 370 g | onions | about 4"},
		},
		{
			"what cannot be summed stays apart", "1",
			[]recipe.Line{thyme("2", measure.Sprig), thyme("5", measure.Gram)},
			[]string{"Fresh herbs: 5 g + 2 sprigs | thyme"},
		},
		{
			"counted units stay apart", "1",
			[]recipe.Line{thyme("2", measure.Sprig), thyme("1/2", measure.Bunch)},
			[]string{"Fresh herbs: 2 sprigs + 1 bunch | thyme"},
		},
		{
			"tins", "2",
			[]recipe.Line{with(tomatoes("800", measure.Gram), tins(2))},
			[]string{"Tins and jars: 4 × 400 g tins | tinned tomatoes | 1.6 kg"},
		},
		{
			"tins and loose", "1",
			[]recipe.Line{tomatoes("100", measure.Gram), with(tomatoes("400", measure.Gram), tins(1))},
			[]string{"Tins and jars: 500 g | tinned tomatoes"},
		},
		{
			"to taste has no amount", "1",
			[]recipe.Line{with(salt("", measure.Each), toTaste)},
			[]string{"Spices and dried herbs:  | fine salt"},
		},
		{
			"an amount and more to taste", "1", // 5 mL × 6 g ÷ 4.929 mL = 6.09 g
			[]recipe.Line{salt("1", measure.Teaspoon), salt("", measure.Each)},
			[]string{"Spices and dried herbs: 1 tsp | fine salt | 7 g, and more to taste"},
		},
		{
			"unknown foods as written, under Other", "2",
			[]recipe.Line{line("", "Gran’s  stock powder", "10", measure.Gram), line("", "gran’s stock powder", "1", measure.Teaspoon)},
			[]string{"Other: 20 g + 2 tsp | Gran’s stock powder"},
		},
		{
			"an aisle nobody walks is Other", "1",
			[]recipe.Line{line("lost", "lost food", "1", measure.Gram)},
			[]string{"Other: 1 g | lost food"},
		},
		{
			"an id the larder has no more", "1",
			[]recipe.Line{line("gone", "gone food", "1", measure.Gram)},
			[]string{"Other: 1 g | gone food"},
		},
		{
			"water comes from the tap", "1",
			[]recipe.Line{line("water", "cold water", "300", measure.Millilitre)},
			nil,
		},
		{
			"aisles in walking order, foods by name", "1",
			[]recipe.Line{salt("9", measure.Gram), line("milk", "milk", "20", measure.Millilitre), line("butter", "butter", "20", measure.Gram), onion("1", measure.Each)},
			[]string{
				"Fruit and vegetables: 1 | onion | about 110 g",
				"Dairy and eggs: 20 g | unsalted butter",
				"Dairy and eggs: 20 mL | whole milk",
				"Spices and dried herbs: 9 g | fine salt",
			},
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, made(test.makes, test.lines...)); diff != "" {
				t.Errorf("List (-want +got):\n%s", diff)
			}
		})
	}
	if got := shop.List(nil, larder()); got.Items() != 0 || got.Questions != nil {
		t.Errorf("a list for nothing has %d items", got.Items())
	}
}

// TestListBuysEggs: one egg gives one yolk and one white. Weights of a large US
// egg: 50 g, white 33 g, yolk 17 g (SR26 01123, 01124, 01125).
func TestListBuysEggs(t *testing.T) {
	egg := func(n string) recipe.Line { return line("egg", "egg", n, measure.Each) }
	yolk := func(n string) recipe.Line { return line("egg-yolk", "egg yolk", n, measure.Each) }
	white := func(n string) recipe.Line { return line("egg-white", "egg white", n, measure.Each) }
	tests := []struct {
		name  string
		lines []recipe.Line
		want  string
	}{
		{"one", []recipe.Line{egg("1")}, "1 | egg"},
		{"part of one", []recipe.Line{egg("1/2")}, "1 | egg"},
		{"yolks and whites of the same eggs", []recipe.Line{yolk("4"), white("2")}, "4 | eggs | 4 yolks, 2 whites"},
		{"whole, yolks and whites", []recipe.Line{egg("2"), yolk("4"), white("2")}, "6 | eggs | 2 whole, 4 yolks, 2 whites"},
		{"more whites than yolks", []recipe.Line{yolk("1"), white("3")}, "3 | eggs | 1 yolk, 3 whites"},
		{"a yolk and a half", []recipe.Line{yolk("3/2")}, "2 | eggs | 1½ yolks"},
		{"by weight", []recipe.Line{line("egg", "beaten egg", "120", measure.Gram)}, "3 | eggs"},
		{"whites by weight", []recipe.Line{line("egg-white", "egg white", "100", measure.Gram)}, "4 | eggs | 3¼ whites"},
		{"sizes are named", []recipe.Line{with(egg("2"), func(l *recipe.Line) { l.Size = "large" }), with(egg("1"), func(l *recipe.Line) { l.Size = "medium" })}, "3 | eggs | large and medium"},
		{"what cannot be counted stays", []recipe.Line{egg("2"), line("egg-yolk", "egg yolk", "1", measure.Cup)}, "2 + 250 mL | egg"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := made("1", test.lines...)
			if diff := cmp.Diff([]string{"Dairy and eggs: " + test.want}, got); diff != "" {
				t.Errorf("List (-want +got):\n%s", diff)
			}
		})
	}
}
