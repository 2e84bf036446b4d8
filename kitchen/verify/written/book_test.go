package written_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/food"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
	"benchproof/seed"
)

var larder = func() *food.Larder {
	l, err := seed.Larder()
	if err != nil {
		panic(err)
	}
	return l
}()

func book(text string) *written.Book {
	return written.Read(recipe.Reader{Larder: larder}.Read(text), larder)
}

// method makes the book of a recipe with one line and the steps given.
func method(steps ...string) *written.Book {
	text := "Test\n\n500 g flour\n\nMethod\n"
	for i, s := range steps {
		text += fmt.Sprintf("%d. %s\n", i+1, s)
	}
	return book(text)
}

// shown writes a fact in one line.
func shown(f written.Fact) string {
	text := string(f.Kind) + " " + f.Text
	for _, mark := range []struct {
		on   bool
		word string
	}{{f.IsOven, "oven"}, {f.Part, "part"}, {f.Total, "total"}, {f.More, "more"}, {f.AtLeast, "at least"}, {len(f.Or) > 0, "or"}} {
		if mark.on {
			text += ", " + mark.word
		}
	}
	if f.Verb != "" && f.Kind == speech.Time {
		text += ", " + f.Verb
	}
	return text
}

func TestFacts(t *testing.T) {
	tests := []struct {
		name, step string
		want       []string
	}{
		{
			"a time",
			"Knead for 10 minutes.",
			[]string{"time 10 minutes, knead"},
		},
		{
			"a range",
			"Bake for 25–30 minutes, until brown.",
			[]string{"time 25–30 minutes, bake"},
		},
		{
			"an hour and a half",
			"Prove for 1½ hours.",
			[]string{"time 1½ hours, prove"},
		},
		{
			"a night",
			"Chill overnight.",
			[]string{"time overnight, chill"},
		},
		{
			"one or the other",
			"Chill for 4 hours or overnight.",
			[]string{"time 4 hours or overnight, or, chill"},
		},
		{
			"at least",
			"Freeze for at least 4 hours.",
			[]string{"time 4 hours, at least, freeze"},
		},
		{
			"some more",
			"Knead for 5 minutes more.",
			[]string{"time 5 minutes, more, knead"},
		},
		{
			"a verb carried on",
			"Cool in the tin for 10 minutes, then on a rack for 1 hour.",
			[]string{"time 10 minutes, cool", "time 1 hour, cool", "time 1\u00a0h 10\u00a0min, total"},
		},
		{
			"before is no time of baking",
			"Take it out 3 hours before baking.",
			[]string{"time 3 hours"},
		},
		{
			"a part of a time",
			"Bake for 40 minutes, turning it after 20 minutes.",
			[]string{"time 40 minutes, bake", "time 20 minutes, part, bake"},
		},
		{
			"every so often",
			"Stir every 10 minutes.",
			[]string{"time 10 minutes, part, mix"},
		},
		{
			"a cue",
			"Boil until a spoon leaves a trail for 3 seconds.",
			[]string{"time 3 seconds, part, boil"},
		},
		{
			"an oven",
			"Heat the oven to 200 °C.",
			[]string{"heat 200 °C, oven"},
		},
		{
			"an oven in three ways",
			"Heat the oven to 200 °C / 180 °C fan / gas 6.",
			[]string{"heat 200 °C / 180 °C fan / gas 6, oven"},
		},
		{
			"with brackets",
			"Heat the oven to 200 °C (180 °C fan).",
			[]string{"heat 200 °C (180 °C fan), oven"},
		},
		{
			"without a degree sign",
			"Heat the oven to 180C/160C fan/gas 4.",
			[]string{"heat 180C/160C fan/gas 4, oven"},
		},
		{
			"in Fahrenheit",
			"Preheat the oven to 375°F.",
			[]string{"heat 375°F, oven"},
		},
		{
			"a food's heat",
			"Heat the oil to 180 °C.",
			[]string{"heat 180 °C"},
		},
		{
			"a core",
			"Bake for 1 hour, until the middle reads 97 °C.",
			[]string{"time 1 hour, bake", "heat 97 °C"},
		},
		{
			"a smoker",
			"Heat the smoker to 250 °F.",
			[]string{"heat 250 °F, oven"},
		},
		{
			"pieces",
			"Divide into 12 pieces.",
			[]string{"count 12 pieces"},
		},
		{
			"pieces of a size",
			"Divide into 8 pieces of 100 g each.",
			[]string{"count 8 pieces", "piece 100 g"},
		},
		{
			"pieces without a name",
			"Divide into 12, and shape.",
			[]string{"count 12"},
		},
		{
			"tins of a size",
			"Line two 20 cm tins.",
			[]string{"count two 20 cm tins", "length 20 cm"},
		},
		{
			"times",
			"Fold it 4 times.",
			[]string{"count 4 times"},
		},
		{
			"a thickness",
			"Roll out 5 mm thick.",
			[]string{"length 5 mm"},
		},
		{
			"a thickness written close",
			"Roll the dough to 1mm.",
			[]string{"length 1mm"},
		},
		{
			"a size both ways",
			"Use a 20 x 30cm tin.",
			[]string{"length 20", "length 30cm"},
		},
		{
			"both ways with a sign",
			"Use a 30 × 20 cm dish.",
			[]string{"length 30", "length 20 cm"},
		},
		{
			"a food's amount is no fact",
			"Add the 500 g flour.",
			nil,
		},
		{
			"nothing",
			"Serve at once.",
			nil,
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			var got []string
			for _, f := range method(test.step).Facts {
				got = append(got, shown(f))
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("%s (-want +got):\n%s", test.step, diff)
			}
		})
	}
}

func TestYieldAndNotes(t *testing.T) {
	tests := []struct {
		name, text string
		want       []string
	}{
		{
			"servings",
			"Stew\n\nServes 4\n\n500 g beef\n\n1. Stew.\n",
			[]string{"count Serves 4"},
		},
		{
			"pieces",
			"Buns\n\nMakes 12 buns\n\n500 g flour\n\n1. Mix.\n",
			[]string{"count Makes 12 buns"},
		},
		{
			"with a tin in brackets",
			"Cake\n\nServes 24 (one 13 x 18 inch pan)\n\n500 g flour\n\n1. Mix.\n",
			[]string{"count Serves 24 (one 13 x 18 inch pan)"},
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			var got []string
			for _, f := range book(test.text).Facts {
				if f.Place >= 0 {
					t.Errorf("%s has a place in the method", f.Text)
				}
				got = append(got, shown(f))
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func TestPortionsAndParts(t *testing.T) {
	b := book("Sauce\n\n2 limes\n100 g sugar\n\n1. Squeeze 1 lime and add 50 ml water.\n2. Stir in 60 g of the sugar.\n")
	if len(b.Portions) == 0 || b.Portions[0].Food != "water" || b.Portions[0].Text != "50 ml" || b.Portions[0].Number == 0 {
		t.Errorf("portions %+v", b.Portions)
	}
	if parts := b.Items[0].Parts; len(parts) != 1 || !parts[0].From.IsWhole() {
		t.Errorf("the limes' parts are %v", parts)
	}
}

// A method that follows all the lists belongs to the component whose foods a step
// uses.
func TestComponentsOfSteps(t *testing.T) {
	b := book("Tart\n\nPastry\n200 g flour\n100 g butter\n\nFilling\n300 ml cream\n4 egg yolks\n\nMethod\n1. Rub the butter into the flour.\n2. Chill for 30 minutes.\n3. Beat the yolks into the cream.\n4. Bake for 40 minutes.\n")
	var got []int
	for _, s := range b.States {
		if s.Step >= 0 {
			got = append(got, s.Component)
		}
	}
	if want := []int{0, 0, 1, 1}; !slices.Equal(got, want) {
		t.Errorf("components of the steps %v, want %v", got, want)
	}
}

func TestDistance(t *testing.T) {
	b := method("Mix.", "Knead for 10 minutes.", "Bake for 20 minutes.")
	last := len(b.States) - 1
	if got := b.Distance(last, last); got != 0 {
		t.Errorf("to itself %d", got)
	}
	if got := b.Distance(last, last-2); got != 2 {
		t.Errorf("two steps on %d", got)
	}
	if got := b.Distance(last, 0); got != 1 {
		t.Errorf("from the list of ingredients %d, want 1: it names everything", got)
	}
}

func TestWeights(t *testing.T) {
	b := method("Mix the flour.", "Knead the flour.", "Bake the flour with saffron.")
	if b.Weights["saffron"] <= b.Weights["flour"] {
		t.Errorf("a rare word weighs %v, one that is everywhere %v", b.Weights["saffron"], b.Weights["flour"])
	}
	if b.Weight("saffron") > 1.25 || b.Weight("nowhere") != 0 {
		t.Errorf("weights %v and %v", b.Weight("saffron"), b.Weight("nowhere"))
	}
	if !b.Writes("saffron") || b.Writes("thyme") {
		t.Error("the book knows what it writes")
	}
}

func TestUnreadLinesAreKnown(t *testing.T) {
	b := book("Roast\n\n1 chicken, 1.8 kg\n2 tbsp oil\n\n1. Roast.\n")
	if strings.Contains(fmt.Sprint(b.Items), "chicken") {
		t.Fatal("this line is read: take one here that is not")
	}
	if !b.Writes("chicken") {
		t.Error("a line that nobody could read is still there to be spoken of")
	}
}
