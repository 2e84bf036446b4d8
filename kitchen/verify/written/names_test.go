package written_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

func cut(text string) speech.Text { return speech.Cut([]speech.Cue{{Text: text}}) }

// lined makes the book of a recipe with these ingredients.
func lined(lines ...string) *written.Book {
	return book("Test\n\n" + strings.Join(lines, "\n") + "\n\nMethod\n1. Mix.\n")
}

func TestMentions(t *testing.T) {
	baking := []string{"250 g plain flour", "50 g wholemeal flour", "200 g caster sugar", "100 g icing sugar", "225 g butter", "3 egg yolks", "2 lemons", "1 tbsp lemon juice"}
	curry := []string{"400 ml coconut milk", "1 tbsp fish sauce", "2 tbsp chilli powder", "3 tbsp olive oil", "1 tsp coarse salt", "1 tsp black pepper", "12 lime leaves", "500 g chicken thighs", "300 ml chicken stock", "100 g black treacle", "100 g golden syrup"}
	tests := []struct {
		name  string
		lines []string
		said  string
		want  []string
	}{
		{
			"by its whole name",
			baking,
			"the plain flour",
			[]string{"plain flour = 250 g plain flour"},
		},
		{
			"by its noun",
			baking,
			"some flour",
			[]string{"flour = 250 g plain flour | 50 g wholemeal flour"},
		},
		{
			"by a word before the noun",
			baking,
			"and the wholemeal",
			[]string{"wholemeal = 50 g wholemeal flour"},
		},
		{
			"two sugars",
			baking,
			"caster sugar and icing sugar",
			[]string{"caster sugar = 200 g caster sugar", "icing sugar = 100 g icing sugar"},
		},
		{
			"in the plural",
			baking,
			"one egg yolk",
			[]string{"egg yolk = 3 egg yolks"},
		},
		{
			"the yolks alone",
			baking,
			"the yolks",
			[]string{"yolks = 3 egg yolks"},
		},
		{
			"a part of another food's name",
			baking,
			"lemon juice",
			[]string{"lemon juice = 1 tbsp lemon juice"},
		},
		{
			"a tool",
			baking,
			"a butter dish and a flour bin",
			nil,
		},
		{
			"another food of its noun",
			baking,
			"peanut butter",
			[]string{"other: peanut butter = 225 g butter"},
		},
		{
			"described",
			baking,
			"soft butter",
			[]string{"butter = 225 g butter"},
		},
		{
			"an alias",
			baking,
			"all purpose flour",
			[]string{"all purpose flour = 250 g plain flour"},
		},
		{
			"parted by a stop",
			baking,
			"the icing, sugar",
			[]string{"icing = 100 g icing sugar", "sugar = 200 g caster sugar | 100 g icing sugar"},
		},
		{
			"coconut milk",
			curry,
			"the coconut milk",
			[]string{"coconut milk = 400 ml coconut milk"},
		},
		{
			"chicken is not its stock",
			curry,
			"chicken stock",
			[]string{"chicken stock = 300 ml chicken stock"},
		},
		{
			"olives are no oil",
			curry,
			"twenty olives",
			nil,
		},
		{
			"coarse pepper is no salt",
			curry,
			"coarse black pepper",
			[]string{"black pepper = 1 tsp black pepper"},
		},
		{
			"cocoa powder is no chilli powder",
			curry,
			"cocoa powder",
			[]string{"other: cocoa powder = 2 tbsp chilli powder"},
		},
		{
			"as the recipe calls it",
			curry,
			"treacle",
			[]string{"treacle = 100 g black treacle"},
		},
		{
			"nothing",
			curry,
			"I was born in a lighthouse",
			nil,
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			b, text := lined(test.lines...), cut(test.said)
			var got []string
			for _, m := range b.Mentions(text) {
				var lines []string
				for _, n := range m.Items {
					lines = append(lines, b.Items[n].Line.Text)
				}
				other := ""
				if m.Foreign {
					other = "other: "
				}
				got = append(got, fmt.Sprintf("%s%s = %s", other, text.Quote(m.From, m.To), strings.Join(lines, " | ")))
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("%s (-want +got):\n%s", test.said, diff)
			}
		})
	}
}

func TestIsOther(t *testing.T) {
	b := lined("250 g plain flour", "225 g butter")
	tests := []struct {
		name  string
		other bool
	}{
		{"butter", false},
		{"plain flour", false},
		{"all-purpose flour", false},
		{"garam masala", true},
		{"honey", true},
		{"whatsit", false},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if got := b.Names.IsOther(test.name); got != test.other {
				t.Errorf("got %v", got)
			}
		})
	}
	if !b.Names.IsOtherAmong("rosemary") {
		t.Error("rosemary, fresh or dried, is another food")
	}
	if b.Names.Aisle("honey") == "" || b.Names.Aisle("whatsit") != "" {
		t.Error("only what the larder has stands in an aisle")
	}
	if !b.Names.HasHead("flour") || b.Names.HasHead("honey") {
		t.Error("flour is a noun of a line, honey is none")
	}
}

func TestMeaning(t *testing.T) {
	same := [][]string{
		{"bake", "bakes", "baked", "baking"},
		{"rub", "rubs", "rubbed", "rubbing"},
		{"marinate", "marinates", "marinated", "marinating"},
		{"chill", "chilled", "fridge", "refrigerator"},
		{"grate", "grated", "grating"},
		{"mix", "stir", "combined", "stirring"},
		{"stand", "rested", "sit", "leave", "stays"},
		{"press", "pressed", "pressing"},
		{"pod", "pods"},
		{"chilli", "chillies"},
		{"loaf", "loaves"},
		{"ice", "iced"},
		{"turn", "flip", "flipped"},
		{"blend", "blender", "blitz"},
	}
	for _, words := range same {
		t.Run(words[0], func(t *testing.T) {
			want := meaning(words[0])
			for _, w := range words[1:] {
				if got := meaning(w); got != want {
					t.Errorf("%s means %q, %s %q", words[0], want, w, got)
				}
			}
		})
	}
	for _, w := range []string{"the", "and", "you", "minutes", "200", "it's", "of", "two"} {
		if got := meaning(w); got != "" {
			t.Errorf("%q says %q, want nothing", w, got)
		}
	}
}

func meaning(word string) string { return written.Meaning(cut(word).Words[0]) }

func TestVerb(t *testing.T) {
	tests := []struct{ said, want string }{
		{"bake it for ten minutes", "bake"},
		{"you knead that for ten minutes", "knead"},
		{"ten minutes in the fridge", "chill"},
		{"ten minutes to cool", "cool"},
		{"simmer it, and then ten minutes more", "simmer"},
		{"with dark brown sugar for ten minutes", ""},
		{"brown the onions for ten minutes", "brown"},
		{"ten minutes before baking", ""},
		{"ten minutes", ""},
		{"let it stand for ten minutes", "rests"},
	}
	for _, test := range tests {
		t.Run(test.said, func(t *testing.T) {
			text := cut(test.said)
			if got := written.Verb(text, speech.Find(text)[0]); got != test.want {
				t.Errorf("got %q, want %q", got, test.want)
			}
		})
	}
}

func TestNouns(t *testing.T) {
	tests := []struct {
		said string
		want []string
	}{
		{"twelve pieces", []string{"piece"}},
		{"sixteen equal squares", []string{"square"}},
		{"two lined trays", []string{"lined", "tray"}},
		{"two 20 cm tins", []string{"tin"}},
		{"two twenty centimetre tins", []string{"tin"}},
		{"serves four", []string{"serving"}},
		{"feeds six", []string{"serving"}},
		{"cut it into sixteen", []string{written.Pieces}},
		{"divide it into sixteen balls", []string{written.Pieces, "ball"}},
		{"eight times", []string{"time"}},
		{"four of those", nil},
		{"two hundred grams", nil},
		{"twelve and then", nil},
	}
	for _, test := range tests {
		t.Run(test.said, func(t *testing.T) {
			text := cut(test.said)
			got := written.Nouns(text, speech.Find(text)[0])
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func TestIsPartTime(t *testing.T) {
	tests := []struct {
		said string
		want bool
	}{
		{"for ten minutes", false},
		{"after ten minutes", true},
		{"every ten minutes", true},
		{"for the last ten minutes", true},
		{"ten minutes in, turn it", true},
		{"ten minutes in the oven", false},
		{"ten minutes later", true},
		{"with ten minutes left", true},
		{"ten minutes before the end", true},
		{"ten minutes apart", true},
		{"another ten minutes", false},
	}
	for _, test := range tests {
		t.Run(test.said, func(t *testing.T) {
			text := cut(test.said)
			if got := written.IsPartTime(text, speech.Find(text)[0]); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}

func TestStems(t *testing.T) {
	tests := []struct {
		name string
		want []string
	}{
		{"egg yolks", []string{"egg", "yolk"}},
		{"cod fillet, in strips", []string{"cod", "fillet"}},
		{"oil for frying", []string{"oil"}},
		{"juice of the lemon", []string{"juice", "lemon"}},
		{"beans (drained)", []string{"bean"}},
		{"", nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, written.Stems(test.name)); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

func TestIsThing(t *testing.T) {
	tests := []struct {
		said string
		want bool
	}{
		{"brush for pastry", true},
		{"brush it over", false},
		{"bowl of", true},
		{"flour", false},
	}
	for _, test := range tests {
		t.Run(test.said, func(t *testing.T) {
			if got := written.IsThing(cut(test.said), 0); got != test.want {
				t.Errorf("got %v", got)
			}
		})
	}
}
