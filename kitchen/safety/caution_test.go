package safety_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/safety"
)

// dish makes a recipe of a title, foods as written and steps.
func dish(title, foods string, steps ...string) recipe.Recipe {
	c := recipe.Component{}
	for name := range strings.SplitSeq(foods, ",") {
		if name = strings.TrimSpace(name); name != "" {
			c.Lines = append(c.Lines, recipe.Line{Text: name, Read: true, Food: name})
		}
	}
	for _, step := range steps {
		c.Steps = append(c.Steps, recipe.Step{Text: step})
	}
	return recipe.Recipe{Title: title, Components: []recipe.Component{c}}
}

// The first words of each caution, to name them by.
const (
	poultry  = "Cook poultry"
	mince    = "Cook minced"
	meat     = "Cook whole cuts"
	fish     = "Cook fish"
	rawFish  = "Raw and lightly cured fish"
	custard  = "Heat custard"
	rawEgg   = "Raw or lightly cooked egg"
	flour    = "Flour is a raw food"
	beans    = "Soak dried kidney beans"
	rice     = "Cool cooked rice"
	cooling  = "Cool cooked food"
	pickles  = "Keep it in the refrigerator"
	garlic   = "Garlic or herbs under oil"
	hotOil   = "Hot oil"
	hotSugar = "Boiling sugar"
	honey    = "Honey is not"
)

func TestCautionsFitTheRecipe(t *testing.T) {
	tests := []struct {
		name   string
		recipe recipe.Recipe
		want   []string
	}{
		{"nothing to say", dish("Salad", "tomatoes, basil, olive oil", "Slice the tomatoes and dress them."), nil},
		{"an empty recipe", recipe.Recipe{}, nil},

		{"roast chicken", dish("Roast chicken", "chicken, salt", "Roast for 80 minutes."), []string{poultry}},
		{"chicken stock is no poultry", dish("Soup", "chicken stock, leeks", "Simmer for 20 minutes."), nil},
		{"duck eggs are no poultry", dish("Boiled eggs", "duck eggs", "Boil for 10 minutes."), nil},
		{"sausages", dish("Toad", "pork sausages", "Bake for 30 minutes."), []string{mince}},
		{"minced beef", dish("Patties", "minced beef", "Fry for 4 minutes a side."), []string{mince}},
		{"mincemeat is fruit", dish("Pies", "mincemeat", "Bake for 20 minutes."), nil},
		{"a steak", dish("Steak", "rump steak", "Fry for 2 minutes a side."), []string{meat}},
		{"a stew passes the cooking limit by far, and must be cooled", dish("Stew", "lamb shoulder", "Brown the lamb.", "Simmer for 2 hours."), []string{cooling}},
		{"baked cod", dish("Cod", "cod fillets", "Bake for 12 minutes."), []string{fish}},
		{"fish sauce is no fish", dish("Noodles", "fish sauce, noodles", "Boil the noodles."), nil},
		{"cured fish", dish("Cured salmon", "salmon fillet, salt, sugar", "Rub with the salt and leave for 2 days in the fridge."), []string{rawFish}},

		{"pastry cream", dish("Tart", "egg yolks, milk, sugar", "Bring to the boil, whisking, for the pastry cream."), []string{custard}},
		{"mayonnaise", dish("Mayonnaise", "egg yolk, oil", "Whisk in the oil drop by drop."), []string{rawEgg}},
		{"mousse with hot chocolate", dish("Chocolate mousse", "eggs, chocolate", "Melt the chocolate.", "Fold in the whites."), []string{rawEgg}},
		{"meringue on a pie", dish("Pie", "egg whites, sugar", "Spread the meringue and bake for 5 minutes."), []string{rawEgg}},
		{"eggs in a cake that is baked", dish("Cake", "eggs, butter", "Bake for 40 minutes."), nil},
		{"egg noodles", dish("Noodles", "egg noodles", "Toss with oil."), nil},
		{"a mousse without egg", dish("Yoghurt mousse", "yoghurt", "Fold."), nil},

		{"dough", dish("Buns", "strong flour, yeast", "Knead the dough.", "Bake for 15 minutes."), []string{flour}},
		{"flour that thickens", dish("Gravy", "flour, stock", "Simmer for 3 minutes."), nil},
		{"cornflour", dish("Batter", "cornflour, water", "Whisk the batter."), nil},

		{"dried kidney beans", dish("Beans", "dried kidney beans", "Boil for 10 minutes, then simmer."), []string{beans}},
		{"tinned kidney beans", dish("Beans", "tinned kidney beans", "Simmer for 10 minutes."), nil},

		{"rice", dish("Pilaf", "basmati rice", "Cook for 12 minutes."), []string{rice}},
		{"rice vinegar", dish("Sauce", "rice vinegar", "Boil for 1 minute."), nil},
		{"cooked, then chilled", dish("Soup", "peas", "Boil for 3 minutes.", "Chill for 2 hours."), []string{cooling}},
		{"chilled, then baked", dish("Biscuits", "butter", "Chill for 2 hours.", "Bake for 12 minutes."), nil},

		{"fridge pickles", dish("Quick pickles", "cucumbers, vinegar", "Pour over the hot brine and close the jars."), []string{pickles}},
		{"pickles on top", dish("Sandwich", "pickles, bread", "Fill the bread."), nil},
		{"chutney", dish("Plum chutney", "plums, vinegar, sugar", "Simmer with the vinegar and sugar until it boils down."), []string{pickles}},
		{"garlic confit", dish("Garlic confit", "garlic, olive oil", "Cover with the oil and bake for 1 hour."), []string{garlic}},
		{"garlic fried", dish("Pasta", "garlic, olive oil", "Fry the garlic in the oil."), nil},

		{"deep-frying", dish("Doughnuts", "sunflower oil", "Heat the oil to 175 °C.", "Fry for 3 minutes."), []string{hotOil}},
		{"oil for deep frying", dish("Chips", "oil for deep frying, potatoes", "Fry twice."), []string{hotOil}},
		{"shallow frying", dish("Onions", "oil, onions", "Fry the onions in the oil for 10 minutes."), nil},
		{"an oven at 180 °C and oil", dish("Potatoes", "oil, potatoes", "Toss in the oil. Roast at 180 °C."), nil},
		{"caramel", dish("Burnt sugar", "sugar, water", "Melt the sugar with the water over a medium heat without stirring, then boil for 6 minutes."), []string{hotSugar}},
		{"caramelised onions", dish("Onions", "onions, sugar", "Caramelise the onions."), nil},
		{"a sweet brine", dish("Brine", "vinegar, sugar", "Bring the vinegar and sugar to the boil."), nil},
		{"honey", dish("Butter", "runny honey, butter", "Stir."), []string{honey}},
		{"honeydew", dish("Salad", "honeydew melon", "Slice."), nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) { checkCautions(t, safety.Cautions(test.recipe, nil), test.want) })
	}
}

// checkCautions holds that the cautions begin with the words wanted, in that
// order, and that the last one defers to the local authority.
func checkCautions(t *testing.T, got []safety.Caution, want []string) {
	t.Helper()
	var texts []string
	for _, caution := range got {
		texts = append(texts, caution.Text)
	}
	if len(want) > 0 {
		want = append(slices.Clone(want), "These are common cautions")
	}
	if !slices.EqualFunc(texts, want, strings.HasPrefix) {
		t.Errorf("cautions are\n\t%s\nwant those that begin\n\t%s", strings.Join(texts, "\n\t"), strings.Join(want, "\n\t"))
	}
}

// TestCautionsKnowTheLarder: the larder's own name and aisle count beside the
// words as written.
func TestCautionsKnowTheLarder(t *testing.T) {
	larder := food.NewLarder([]food.Food{
		{ID: "pollo", Name: "chicken thighs", Aisle: "Meat and poultry"},
		{ID: "beans", Name: "kidney beans", Aisle: "Tins and jars"},
	})
	r := dish("Cena", "pollo, frijoles", "Roast for 40 minutes.")
	r.Components[0].Lines[0].FoodID = "pollo"
	r.Components[0].Lines[1].FoodID = "beans"
	checkCautions(t, safety.Cautions(r, larder), []string{poultry})
}

func TestCautionsReadUnreadLinesAndStations(t *testing.T) {
	r := recipe.Recipe{Components: []recipe.Component{{
		Lines: []recipe.Line{{Text: "a good lump of honey"}, {Text: "2 tins kidney beans", Read: true, Food: "kidney beans", Amount: measure.Of(measure.Whole(2), measure.Tin)}},
		Steps: []recipe.Step{{Text: "Lower them in.", Station: "fryer"}},
	}}}
	checkCautions(t, safety.Cautions(r, nil), []string{hotOil, honey})
}

// TestCautionsOfTheDemoShow reads the demo show's recipes as pasted.
func TestCautionsOfTheDemoShow(t *testing.T) {
	want := map[string][]string{
		"beans-v1.txt":   {flour, cooling},
		"custard-v3.txt": {custard, cooling, hotSugar},
		"fish-v1.txt":    {fish, flour, hotOil},
		"knots-v3.txt":   {flour, honey},
		"pickles-v1.txt": {pickles},
		"soup-v1.txt":    nil,
		"stew-v1.txt":    {cooling},
		"tart-v2.txt":    {custard, flour, cooling},
	}
	for name, cautions := range want {
		t.Run(name, func(t *testing.T) {
			text, err := os.ReadFile(filepath.Join("..", "..", "seed", "demo", "recipes", name))
			if err != nil {
				t.Fatal(err)
			}
			checkCautions(t, safety.Cautions(recipe.Reader{}.Read(string(text)), nil), cautions)
		})
	}
}

// Every caution that states a figure of the published limits states it as the
// limit does, and none promises safety.
func TestCautionsDefer(t *testing.T) {
	r := dish("Chicken custard with mayonnaise", "chicken, sausages, cod, eggs, rice, honey, flour, garlic, kidney beans", "Bake the dough until 175 °C. Chill.")
	got := safety.Cautions(r, nil)
	if len(got) < 8 || got[len(got)-1].Text != safety.Deferral {
		t.Fatalf("%d cautions, the last %q", len(got), got[len(got)-1].Text)
	}
	for _, caution := range got {
		for _, promise := range []string{"is safe", "guaranteed", "no risk"} {
			if strings.Contains(caution.Text, promise) {
				t.Errorf("%q promises", caution.Text)
			}
		}
	}
}
