package about_test

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/food"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/learnt"
	"benchproof/kitchen/verify/same"
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

const tart = `Plum Tart

Serves 8

Pastry
200 g plain flour
100 g butter
1 egg yolk
2 tbsp cold water

Filling
600 g plums
120 g caster sugar
150 ml double cream
3 eggs
2 cloves
2 cm ginger
1 tbsp butter
1 tsp vanilla extract

Method
1. Rub the 100 g butter into the flour, bind with the yolk and water and chill for 45 minutes.
2. Heat the oven to 190 °C / 170 °C fan.
3. Roll out and line a 24 cm tin. Bake for 15 minutes.
4. Fry the plums in the butter with the ginger and cloves for 6 minutes.
5. Whisk the eggs, cream, sugar and vanilla, pour over the plums and bake for 35–40 minutes, until it reads 80 °C.
6. Cool for 1 hour and cut into 8 slices. Keeps for 2 days.
`

func heard(text string) *about.Reading {
	b := written.Read(recipe.Reader{Larder: larder}.Read(tart), larder)
	r := about.Read(speech.Cut([]speech.Cue{{End: 4 * time.Second, Text: text}}), b, same.Scale{Larder: larder}, learnt.Own().Topic)
	r.Reconcile()
	return r
}

// ties writes what each number is about: "100 g = 100 g butter".
func ties(r *about.Reading) []string {
	var all []string
	for i, t := range r.Ties {
		s := r.Said[i]
		line := r.Text.Quote(s.From, s.To) + " = "
		switch {
		case t.Item >= 0:
			line += r.Book.Items[t.Item].Line.Text
		case t.Fact >= 0:
			line += r.Book.Facts[t.Fact].Text
		case t.Foreign != "":
			line += "other: " + t.Foreign
		case t.Portion != "":
			line += "of a step: " + t.Portion
		default:
			line += "nothing"
		}
		if t.Aside {
			line += " (aside)"
		}
		all = append(all, line)
	}
	return all
}

func TestTies(t *testing.T) {
	tests := []struct {
		name, said string
		want       []string
	}{
		{
			"before its food",
			"two hundred grams of flour",
			[]string{"two hundred grams = 200 g plain flour"},
		},
		{
			"behind its food",
			"flour, two hundred grams",
			[]string{"two hundred grams = 200 g plain flour"},
		},
		{
			"behind its food without a stop",
			"flour two hundred grams butter one hundred grams",
			[]string{"two hundred grams = 200 g plain flour", "one hundred grams = 100 g butter"},
		},
		{
			"behind its food, and wrong",
			"flour three hundred grams sugar one hundred and twenty grams cream one hundred and fifty mil",
			[]string{"three hundred grams = 200 g plain flour", "one hundred and twenty grams = 120 g caster sugar", "one hundred and fifty mil = 150 ml double cream"},
		},
		{
			"before its food without of, and wrong",
			"three hundred grams flour one hundred and twenty grams sugar",
			[]string{"three hundred grams = 200 g plain flour", "one hundred and twenty grams = 120 g caster sugar"},
		},
		{
			"of it",
			"the plums, and you want six hundred grams of them",
			[]string{"six hundred grams = 600 g plums"},
		},
		{
			"in the next sentence",
			"Plums next. Six hundred grams.",
			[]string{"Six hundred grams = 600 g plums"},
		},
		{
			"asked for",
			"Then the sugar. How much? A hundred and twenty grams.",
			[]string{"A hundred and twenty grams = 120 g caster sugar"},
		},
		{
			"pointing back",
			"the cream and I always buy the good stuff from the farm it's a hundred and fifty mil",
			[]string{"a hundred and fifty mil = 150 ml double cream"},
		},
		{
			"eggs, three",
			"eggs, three",
			[]string{"three = 3 eggs"},
		},
		{
			"eggs, three of them",
			"eggs and I use three of them",
			[]string{"three = 3 eggs"},
		},
		{
			"elided",
			"a hundred grams of butter and two hundred of flour",
			[]string{"a hundred grams = 100 g butter", "two hundred = 200 g plain flour"},
		},
		{
			"by its unit",
			"a spoon of butter, one tablespoon",
			[]string{"one tablespoon = 1 tbsp butter"},
		},
		{
			"a length of ginger",
			"two centimetres of ginger",
			[]string{"two centimetres = 2 cm ginger"},
		},
		{
			"said again in other units",
			"a hundred grams of butter, that's three and a half ounces",
			[]string{"a hundred grams = 100 g butter", "three and a half ounces = 100 g butter"},
		},
		{
			"the rest of it",
			"sixty grams of the sugar now, and another sixty later",
			[]string{"sixty grams = 120 g caster sugar", "another sixty = 120 g caster sugar"},
		},
		{
			"the same of another",
			"two hundred grams of flour and the same of plums",
			[]string{"two hundred grams = 200 g plain flour", "same = 600 g plums"},
		},
		{
			"not there",
			"cream with no sugar in it, a hundred and fifty mil",
			[]string{"a hundred and fifty mil = 150 ml double cream"},
		},
		{
			"a food that is not in the recipe",
			"fifty grams of raisins",
			[]string{"fifty grams = other: raisins"},
		},
		{
			"one that nobody knows",
			"add a tablespoon of zaatar",
			[]string{"a tablespoon = other: zaatar"},
		},
		{
			"named before",
			"then I spread some apricot jam, three tablespoons",
			[]string{"three tablespoons = other: apricot jam"},
		},
		{
			"its noun alone is in the recipe",
			"fifty grams of peanut butter",
			[]string{"fifty grams = other: peanut butter"},
		},
		{
			"a time by its verb",
			"chill it for forty five minutes",
			[]string{"forty five minutes = 45 minutes"},
		},
		{
			"a time that is wrong",
			"chill the pastry for twenty minutes",
			[]string{"twenty minutes = 45 minutes"},
		},
		{
			"two times of baking",
			"bake it for fifteen minutes, then bake the filled tart for thirty five minutes",
			[]string{"fifteen minutes = 15 minutes", "thirty five minutes = 35–40 minutes"},
		},
		{
			"a time by its food",
			"the plums get six minutes",
			[]string{"six minutes = 6 minutes"},
		},
		{
			"a time of another life",
			"I worked there for six years and walked for ten minutes every day",
			[]string{"ten minutes = nothing (aside)"},
		},
		{
			"a window is no length of work",
			"you have a window of forty seconds to fry the plums",
			[]string{"forty seconds = nothing"},
		},
		{
			"an oven",
			"oven at one ninety, one seventy fan",
			[]string{"one ninety = 190 °C / 170 °C fan", "one seventy fan = 190 °C / 170 °C fan"},
		},
		{
			"a core",
			"when the thermometer in the middle reads eighty degrees",
			[]string{"eighty degrees = 80 °C"},
		},
		{
			"the weather",
			"it was thirty degrees outside",
			[]string{"thirty degrees = nothing"},
		},
		{
			"a tin",
			"a twenty four centimetre tin",
			[]string{"twenty four centimetre = 24 cm"},
		},
		{
			"slices",
			"cut it into eight slices",
			[]string{"eight slices = 8 slices"},
		},
		{
			"people",
			"it serves eight",
			[]string{"eight = Serves 8"},
		},
		{
			"cats",
			"I have three cats",
			[]string{"three = nothing"},
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, ties(heard(test.said))); diff != "" {
				t.Errorf("%s (-want +got):\n%s", test.said, diff)
			}
		})
	}
}

func TestAsides(t *testing.T) {
	tests := []struct {
		name, said string
		aside      bool
	}{
		{"now", "add two hundred grams of flour", false},
		{"you", "you want two hundred grams of flour", false},
		{"weighed", "I've weighed two hundred grams of flour", false},
		{"last time", "last time I used three hundred grams of flour", true},
		{"used to", "I used to put three hundred grams of flour in", true},
		{"her", "she used three hundred grams of flour", true},
		{"my gran", "my gran put three hundred grams of flour in hers", true},
		{"her version", "my grandmother's version had three hundred grams of flour", true},
		{"some people", "some people use three hundred grams of flour", true},
		{"most tarts", "most tarts take three hundred grams of flour", true},
		{"in Rome", "they use three hundred grams of flour", true},
		{"what bakes", "they bake for fifty minutes", false},
		{"a dish that is she", "she goes in for fifty minutes", false},
		{"another size", "for a crowd you'd need a kilo of plums", true},
		{"doubled", "if you double it that's four hundred grams of flour", true},
		{"would", "a bigger tin would take three hundred grams of flour", true},
		{"instead", "you could use two hundred grams of rye instead", true},
		{"bought", "I bought a kilo of plums", true},
		{"sold", "they sell it by the two kilo bag of flour", true},
		{"cost", "a kilo of plums costs five euros", true},
		{"the packet", "the packet says three hundred grams of flour", true},
		{"not so much", "not three hundred grams of flour", true},
		{"never more", "never more than three hundred grams of flour", true},
		{"denied", "don't use three hundred grams of flour", true},
		{"after a turn", "my gran used two hundred. I use three hundred grams of flour", false},
		{"behind another subject", "three hundred grams of flour you can buy it anywhere", false},
		{"if there is a fan", "or one seventy if you've got a fan", false},
		{"kept", "leftovers keep for three days", false},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			r := heard(test.said)
			last := len(r.Ties) - 1
			if last < 0 {
				t.Fatalf("no number in %q", test.said)
			}
			if got := r.Ties[last].Aside; got != test.aside {
				t.Errorf("%s: aside %v", test.said, got)
			}
		})
	}
}

// The talk is followed through the method.
func TestPlaces(t *testing.T) {
	r := heard("so rub the butter into the flour and bind it with the yolk and then into the oven we fry the plums with the ginger and the cloves and now whisk the eggs and the cream and let it cool")
	steps := map[string]string{"rub": "Rub the", "plums": "Fry the", "whisk": "Whisk the", "cool": "Cool for"}
	for i, w := range r.Text.Words {
		want, ok := steps[w.Text]
		if !ok {
			continue
		}
		state := r.Book.States[r.Places[i]]
		if state.Step < 0 {
			t.Errorf("%s is placed in a list", w.Text)
			continue
		}
		got := r.Book.Recipe.Components[len(r.Book.Recipe.Components)-1].Steps[state.Step].Text
		if len(got) < len(want) || got[:len(want)] != want {
			t.Errorf("%s is placed at %q", w.Text, got)
		}
	}
}

func TestIsUnitSlip(t *testing.T) {
	tests := []struct {
		said, written string
		want          bool
	}{
		{"ten hours", "10 minutes", true},
		{"ten seconds", "10 minutes", true},
		{"two days", "2 hours", true},
		{"ten minutes", "10 minutes", false},
		{"twenty minutes", "10 minutes", false},
		{"an hour", "60 minutes", false},
	}
	find := func(text string) speech.Said { return speech.Find(speech.Cut([]speech.Cue{{Text: text}}))[0] }
	for _, test := range tests {
		t.Run(test.said+" for "+test.written, func(t *testing.T) {
			if got := about.IsUnitSlip(find(test.said), find(test.written)); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

func TestNothingToRead(t *testing.T) {
	b := written.Read(recipe.Recipe{}, nil)
	r := about.Read(speech.Cut([]speech.Cue{{Text: "two hundred grams of flour for ten minutes at 180 degrees"}}), b, same.Scale{}, learnt.Own().Topic)
	for _, tie := range r.Ties {
		if tie.Item >= 0 || tie.Fact >= 0 {
			t.Errorf("tied to nothing: %+v", tie)
		}
	}
	if empty := heard(""); len(empty.Ties) != 0 {
		t.Errorf("nothing said, %d ties", len(empty.Ties))
	}
}
