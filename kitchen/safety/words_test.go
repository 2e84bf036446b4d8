package safety_test

import (
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/safety"
	"benchproof/seed"
)

// calls tells whether the caution that begins with these words is listed.
func calls(cautions []safety.Caution, begins string) bool {
	for _, c := range cautions {
		if strings.HasPrefix(c.Text, begins) {
			return true
		}
	}
	return false
}

// TestCautionWords tries the words that each caution must and must not answer
// to, one food or one step at a time.
func TestCautionWords(t *testing.T) {
	tests := []struct {
		caution  string
		step     string // what is done with the food
		foods    []string
		notFoods []string
	}{
		{poultry, "Roast it.",
			[]string{"chicken thighs", "turkey breast", "duck legs", "a goose", "quail", "guinea fowl", "2 poussins, spatchcocked poultry"},
			[]string{"chicken broth", "goose fat", "duck egg", "chicken bouillon", "turkey gravy", "chickpeas"}},
		{mince, "Fry it.",
			[]string{"beef mince", "minced lamb", "ground pork", "ground beef", "breakfast sausages", "sausagemeat", "meatballs"},
			[]string{"minced garlic", "ground cumin", "smoked sausage", "dried chorizo sausage", "vegan sausages"}},
		{meat, "Grill it.",
			[]string{"lamb chops", "pork loin", "sirloin steak", "venison haunch", "veal escalopes"},
			[]string{"beef stock", "pork fat", "beefsteak tomatoes", "lambs lettuce"}},
		{fish, "Bake it.",
			[]string{"salmon fillets", "whole trout", "raw prawns", "mussels", "squid", "monkfish tail"},
			[]string{"fish sauce", "smoked salmon", "dried shrimp", "fish stock", "tinned tuna", "codfish-free crisps"}},
		{rawFish, "Slice it thinly.",
			[]string{"tuna loin", "scallops", "sea bass"},
			[]string{"smoked trout", "tinned sardines", "fish sauce"}},
		{rawEgg, "Whisk it.",
			[]string{"2 eggs", "egg yolks", "egg whites", "1 large egg"},
			[]string{"eggplant", "pasteurised egg whites", "hard-boiled eggs", "egg noodles", "chocolate eggs"}},
		{flour, "Knead the dough.",
			[]string{"plain flour", "strong bread flour", "rye flour", "semolina"},
			[]string{"cornflour", "flour tortillas", "toasted flour", "sunflower seeds"}},
		{rice, "Cook it.",
			[]string{"basmati rice", "risotto rice", "brown rice", "arborio"},
			[]string{"rice vinegar", "rice noodles", "rice flour", "rice paper", "liquorice"}},
		{honey, "Stir it in.",
			[]string{"runny honey", "manuka honey"},
			[]string{"honeydew melon", "honeycomb toffee pieces"}},
		{beans, "Boil them.",
			[]string{"dried red kidney beans", "cannellini beans, dried"},
			[]string{"canned kidney beans", "green beans", "jarred cannellini beans"}},
	}
	for _, test := range tests {
		for _, food := range test.foods {
			t.Run(food, func(t *testing.T) {
				if got := safety.Cautions(withFood(food, test.step), nil); !calls(got, test.caution) {
					t.Errorf("%q does not call for “%s…”: %v", food, test.caution, got)
				}
			})
		}
		for _, food := range test.notFoods {
			t.Run("not "+food, func(t *testing.T) {
				if got := safety.Cautions(withFood(food, test.step), nil); calls(got, test.caution) {
					t.Errorf("%q calls for “%s…”", food, test.caution)
				}
			})
		}
	}
}

// TestCautionSteps tries what is done.
func TestCautionSteps(t *testing.T) {
	tests := []struct {
		caution  string
		food     string
		steps    []string
		notSteps []string
	}{
		{custard, "eggs",
			[]string{"Cook the custard until it coats the spoon.", "Boil the crème pâtissière.", "Make the lemon curd over simmering water.", "Churn the ice cream base, cooked to 80 °C."},
			[]string{"Fry the eggs.", "Bake the cake."}},
		{rawEgg, "eggs",
			[]string{"Boil the eggs so that they stay runny.", "Poach the egg for 2 minutes: a poached egg.", "Melt the butter for the hollandaise.", "Toss the boiled pasta, as for a carbonara."},
			[]string{"Boil for 10 minutes, until firm.", "Bake until set."}},
		{pickles, "vegetables",
			[]string{"Boil the vinegar and fill the jars.", "Cover with hot brine, close the jar."},
			[]string{"Dress with vinegar.", "Fill a jar with the dressing."}},
		{hotOil, "potatoes",
			[]string{"Deep-fry for 3 minutes.", "Deep fry twice.", "Fill a pan a third with oil.", "Heat the oil to 180 °C."},
			[]string{"Fry gently.", "Roast at 180 °C.", "Brush with oil."}},
		{garlic, "garlic",
			[]string{"Confit for an hour.", "Warm the oil to infuse it.", "Cover with olive oil and keep."},
			[]string{"Crush it.", "Fry it in olive oil."}},
		{hotSugar, "sugar",
			[]string{"Cook to a dark caramel.", "Boil the sugar and water to 150 °C.", "Pour out the toffee."},
			[]string{"Boil the milk with the sugar.", "Beat the sugar with the butter."}},
		{cooling, "peas",
			[]string{"Boil. Then chill for an hour.", "Simmer, cool and put in the fridge.", "Bake. Leftovers keep 2 days."},
			[]string{"Boil and serve.", "Toss and serve."}},
	}
	for _, test := range tests {
		for _, step := range test.steps {
			t.Run(step, func(t *testing.T) {
				if got := safety.Cautions(withFood(test.food, step), nil); !calls(got, test.caution) {
					t.Errorf("it does not call for “%s…”: %v", test.caution, got)
				}
			})
		}
		for _, step := range test.notSteps {
			t.Run("not "+step, func(t *testing.T) {
				if got := safety.Cautions(withFood(test.food, step), nil); calls(got, test.caution) {
					t.Errorf("it calls for “%s…”", test.caution)
				}
			})
		}
	}
}

func withFood(food, step string) recipe.Recipe {
	return recipe.Recipe{Title: "Supper", Components: []recipe.Component{{
		Lines: []recipe.Line{{Text: food, Read: true, Food: food}},
		Steps: []recipe.Step{{Text: step}},
	}}}
}

// TestCautionsLaws: no text breaks the rules, none is said twice, the last is
// always the deferral, and adding an ingredient never takes a caution about
// another away.
func TestCautionsLaws(t *testing.T) {
	foods := []string{"chicken", "eggs", "flour", "honey", "rice", "cod", "lamb", "garlic", "sugar", "water", "???", ""}
	steps := []string{"Knead the dough.", "Bake.", "Chill.", "Fry in deep oil.", "Whisk.", "", "Boil with vinegar and fill the jars."}
	rapid.Check(t, func(t *rapid.T) {
		names := rapid.SliceOfN(rapid.SampledFrom(foods), 0, 6).Draw(t, "foods")
		method := rapid.SliceOfN(rapid.SampledFrom(steps), 0, 4).Draw(t, "steps")
		title := rapid.String().Draw(t, "title")
		got := safety.Cautions(dish(title, strings.Join(names, ","), method...), nil)
		seen := map[string]bool{}
		for i, c := range got {
			if c.Text == "" || seen[c.Text] || (c.Text == safety.Deferral) != (i == len(got)-1) {
				t.Fatalf("caution %d of %d is %q", i, len(got), c.Text)
			}
			seen[c.Text] = true
		}
		more := safety.Cautions(dish(title, strings.Join(append(names, "honey"), ","), method...), nil)
		if len(more) < len(got) || !calls(more, honey) {
			t.Fatalf("with honey there are %d cautions, without %d", len(more), len(got))
		}
	})
}

// BenchmarkCautions bounds drawing a recipe of fifteen lines.
func BenchmarkCautions(b *testing.B) {
	kitchen, err := seed.Larder()
	if err != nil {
		b.Fatal(err)
	}
	text, err := os.ReadFile("../../seed/demo/recipes/tart-v2.txt")
	if err != nil {
		b.Fatal(err)
	}
	r := recipe.Reader{Larder: kitchen}.Read(string(text))
	b.ReportAllocs()
	for b.Loop() {
		if len(safety.Cautions(r, kitchen)) == 0 || len(safety.Allergens(r, kitchen).EU) == 0 {
			b.Fatal("nothing found")
		}
	}
}
