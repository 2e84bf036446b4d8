package ingredient_test

import (
	"testing"

	"benchproof/kitchen/recipe/ingredient"
)

// Amounts behind the name, labels before it, parts of foods.
func TestAround(t *testing.T) {
	for _, tt := range []struct{ line, want string }{
		{"Flour: 200 g", "200 g | Flour | "},
		{"Flour:200 g", "200 g | Flour | "},
		{"Flour -- 200 g", "200 g | Flour | "},
		{"Flour .... 200 g", "200 g | Flour | "},
		{"Flour = 200 g", "200 g | Flour | "},
		{"Flour 200g", "200 g | Flour | "},
		{"Eggs x 3", "3 | Eggs | "},
		{"Eggs × 3", "3 | Eggs | "},
		{"Eggs 3", "3 | Eggs | "},
		{"Garlic: 2 cloves", "2 clove | Garlic | "},
		{"Garlic, 2 cloves", "2 clove | Garlic | "},
		{"Milk: 1 cup plus 2 tbsp", "1 cup | Milk | "},
		{"Milk: 200–250 ml", "200–250 ml | Milk | "},
		{"Milk: ½ cup (120 ml)", "1/2 cup | Milk | "},
		{"Leeks: 2, sliced", "2 | Leeks | sliced"},
		{"Salt: to taste", " | Salt | "},
		{"Salt: a pinch", "1 pinch | Salt | "},
		{"Butter, 50 g, melted", "50 g | Butter | melted"},
		{"Type 55 flour: 500 g", "500 g | Type 55 flour | "},
		{"Flour type 55, 500 g", "500 g | Flour type 55 | "},
		{"To serve: yoghurt", " | yoghurt | to serve"},
		{"For the tin: 10 g butter", "10 g | butter | for the tin"},
		{"Garnish: 4 lemon wedges", "4 | lemon wedges | garnish"},
		{"Optional: 1 tsp salt", "1 tsp | salt | "},
		{"Fruit: 400 g mixed berries", "400 g | mixed berries | fruit"},
		{"juice of 2 limes", "2 | limes | juice"},
		{"the juice of half a lime", "1/2 | lime | juice"},
		{"finely grated zest of 1 lime", "1 | lime | finely grated zest"},
		{"zest and juice of 1 lime", "1 | lime | zest and juice"},
		{"juice from 1 lime", "1 | lime | juice"},
		{"juice from the tray", " | juice from the tray | "},
		{"leaves of 1 bunch mint", "1 bunch | mint | leaves"},
		{"whites of 2 eggs", "2 | eggs | whites"},
		{"plenty of pepper", " | pepper | plenty"},
		{"lots of dill", " | dill | lots"},
		{"enough milk", " | milk | enough"},
		{"a thumb-sized piece of ginger", "1 piece | ginger | "},
		{"a lemon", "1 | lemon | "},
		{"an egg", "1 | egg | "},
		{"a little milk", " | milk | a little"},
		{"a few sprigs dill", " | dill | a few sprigs"},
		{"2 doz. oysters", "24 | oysters | "},
	} {
		t.Run(tt.line, func(t *testing.T) {
			r := ingredient.Read(tt.line, nil)
			amount := ""
			if r.HasAmount {
				amount = amountText(r.Amount)
			}
			said := r.Preparation
			if r.Note != "" {
				said += r.Note
			}
			if got := amount + " | " + r.Food + " | " + said; !r.Read || got != tt.want {
				t.Errorf("reads as %q (%s), want %q", got, r.Reason, tt.want)
			}
		})
	}
}

// Remarks find their places: preparation, note, or a flag.
func TestRemarks(t *testing.T) {
	for _, tt := range []struct{ line, want string }{
		{"1 onion, chopped", "chopped | "},
		{"1 onion, finely chopped", "finely chopped | "},
		{"1 onion, peeled and chopped", "peeled and chopped | "},
		{"1 onion, peeled, then chopped", "peeled, then chopped | "},
		{"1 onion (chopped)", "chopped | "},
		{"1 onion - chopped", "chopped | "},
		{"1 onion finely chopped", "finely chopped | "},
		{"1 finely chopped onion", "finely chopped | "},
		{"100 g butter at room temperature", "at room temperature | "},
		{"100 g butter, cold", "cold | "},
		{"100 g butter for the tin", " | for the tin"},
		{"100 g butter, for the tin", " | for the tin"},
		{"100 g butter (for the tin)", " | for the tin"},
		{"100 g butter, plus extra for the tin", " | plus extra for the tin"},
		{"100 g butter or lard", " | or lard"},
		{"100 g red or white onion", " | or white onion"},
		{"100 g butter, preferably Irish", " | preferably Irish"},
		{"100 g butter, from the fridge", " | from the fridge"},
		{"100 g butter (see note)", " | see note"},
		{"100 g butter (not margarine (ever))", " | not margarine (ever)"},
		{"100 g butter, optional", " | |optional"},
		{"100 g butter (optional, but good)", " | but good|optional"},
		{"100 g butter, divided", " | |divided"},
		{"100 g butter, divided in two", " | in two|divided"},
		{"salt to taste", " | |taste"},
		{"salt, or to taste", " | |taste"},
		{"1 tsp salt, plus more to taste", " | plus more to taste|taste"},
		{"oil, for frying", " | for frying|taste"},
		{"100 ml oil, for frying", " | for frying"},
		{"herbs to finish", " | to finish|taste"},
		{"1 cup packed herbs", "packed | "},
		{"1 heaped tbsp flour", " | heaped"},
		{"2 large eggs", " | "},
	} {
		t.Run(tt.line, func(t *testing.T) {
			r := ingredient.Read(tt.line, nil)
			got := r.Preparation + " | " + r.Note
			for _, flag := range []struct {
				on   bool
				name string
			}{{r.Optional, "optional"}, {r.Divided, "divided"}, {r.ToTaste, "taste"}} {
				if flag.on {
					got += "|" + flag.name
				}
			}
			if !r.Read || got != tt.want {
				t.Errorf("remarks %q (%s), want %q", got, r.Reason, tt.want)
			}
		})
	}
}
