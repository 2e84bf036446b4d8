package recipe_test

import (
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

func TestScaleLines(t *testing.T) {
	w := recipe.Writer{Larder: larder(t), House: measure.US}
	for _, tt := range []struct {
		line, by string
		want     string // measure | words | exact
	}{
		{"1½ cups rolled oats", "3/2", "2¼ cups | rolled oats | 9/4"},
		{"1 egg", "2", "2 | eggs | 2"},
		{"2 eggs", "1/2", "1 | egg | 1"},
		{"1 lemon, sliced", "3", "3 | lemons, sliced | 3"},
		{"1 tomato", "2", "2 | tomatoes | 2"},
		{"2–3 tbsp milk", "2", "4–6 tbsp | milk | 4–6"},
		{"200 g flour", "1/3", "67 g | flour | 200/3"},
		{"2 x 400 g tins tomatoes", "2", "4 × 400 g | tins tomatoes | 1600"},
		{"1 x 400 g tin tomatoes", "3", "3 × 400 g | tins tomatoes | 1200"},
		{"1 x 400 g tin tomatoes", "1/2", "200 g | tomatoes | 200"},
		{"salt, to taste", "3", " | salt, to taste | "},
		{"16 tbsp sugar", "1", "1 cup | sugar | 16"},
		{"1 tsp salt", "3", "1 tbsp | salt | 3"},
	} {
		t.Run(tt.line+" × "+tt.by, func(t *testing.T) {
			s := recipe.Scale(read(t, "Dish\n\nIngredients\n- "+tt.line+"\n"), measure.MustNumber(tt.by), w)
			if len(s.Lines) != 1 {
				t.Fatalf("%d lines", len(s.Lines))
			}
			l := s.Lines[0]
			if got := plain(l.Measure + " | " + l.Words + " | " + l.Exact); got != tt.want {
				t.Errorf("scaled to %q, want %q", got, tt.want)
			}
		})
	}
}

// Part of an egg is written by count and by weight: a large US egg is 50 g
// without its shell, USDA SR 26, 01123.
func TestScaleEggs(t *testing.T) {
	w := recipe.Writer{Larder: larder(t), House: measure.US}
	l := recipe.Scale(read(t, "Cake\n\n3 large eggs\n200 g flour\n"), measure.Ratio(1, 2), w).Lines[0]
	if plain(l.Measure) != "1½" || l.Words != "large eggs" || plain(l.Other) != "75 g beaten" {
		t.Errorf("half of 3 large eggs: %q, %q, %q", l.Measure, l.Words, l.Other)
	}
	l = recipe.Scale(read(t, "Cake\n\n3 large eggs\n200 g flour\n"), measure.Ratio(7, 10), w).Lines[0]
	if l.ErrorPercent < 4 || l.Exact != "21/10" || plain(l.Other) != "105 g beaten" {
		t.Errorf("2.1 eggs: %q, %.1f %% off, exact %q, %q", l.Measure, l.ErrorPercent, l.Exact, l.Other)
	}
}

// What does not scale is said: common practice, no source.
func TestScaleNotes(t *testing.T) {
	bread := read(t, `Buns
Makes 16

500 g flour
7 g instant yeast
300 g water
50 g sugar
salt, to taste

Mix the flour with 250 g of the water and knead for 10 minutes.
Divide into 16 pieces and prove for 1 hour.
Bake in a 30 cm tin at 200 °C for 20 minutes until golden.
`)
	w := recipe.Writer{Larder: larder(t), House: measure.Metric}
	for _, tt := range []struct {
		by   string
		says []string
		not  []string
	}{
		{"1", nil, []string{"Baking", "yeast", "not scaled"}},
		{"2", []string{"Baking minutes are not scaled", "until golden", "“250 g of the water”: take 500 g", "divide into 32", "not scaled: salt", "times the area"}, []string{"yeast"}},
		{"4", []string{"instant yeast is scaled in proportion"}, nil},
		{"1/4", []string{"instant yeast is scaled in proportion", "divide into 4"}, nil},
	} {
		t.Run("× "+tt.by, func(t *testing.T) {
			notes := plain(strings.Join(recipe.Scale(bread, measure.MustNumber(tt.by), w).Notes, "\n"))
			for _, want := range tt.says {
				if !strings.Contains(notes, want) {
					t.Errorf("notes do not say %q:\n%s", want, notes)
				}
			}
			for _, no := range tt.not {
				if strings.Contains(notes, no) {
					t.Errorf("notes say %q:\n%s", no, notes)
				}
			}
		})
	}
	stew := read(t, "Stew\n\n2 onions\n1 l stock\n\nFry the onions for 10 minutes.\nAdd the stock and simmer for 1 hour until thick.\n")
	notes := strings.Join(recipe.Scale(stew, measure.Whole(3), w).Notes, "\n")
	if !strings.Contains(notes, "boils away") || !strings.Contains(notes, "fry in batches") {
		t.Errorf("a stew's notes:\n%s", notes)
	}
}

func TestScaleLeavesTheRecipeAlone(t *testing.T) {
	text, err := os.ReadFile("testdata/recipes/13-sourdough.txt")
	if err != nil {
		t.Fatal(err)
	}
	r, untouched := read(t, string(text)), read(t, string(text))
	s := recipe.Scale(r, measure.Whole(3), recipe.Writer{})
	if diff := cmp.Diff(untouched, r); diff != "" {
		t.Errorf("scaling changed the recipe:\n%s", diff)
	}
	if s.Yield != "makes 6 loaves of about 900 g" {
		t.Errorf("yield %q", s.Yield)
	}
	for _, by := range []measure.Number{{}, measure.Whole(-2)} {
		if got := recipe.Scale(r, by, recipe.Writer{}); !got.By.Equal(measure.Whole(1)) {
			t.Errorf("a factor of %v scales by %v", by, got.By)
		}
	}
}
