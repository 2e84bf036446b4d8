package speech_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/verify/speech"
)

// shown writes what was found in one line: "words = amount".
func shown(t speech.Text) []string {
	var lines []string
	for _, s := range speech.Find(t) {
		line := t.Quote(s.From, s.To) + " = "
		amount := s.Amount.Range.From.String()
		if !s.Amount.IsSingle() {
			amount += ".." + s.Amount.Range.To.String()
		}
		line += string(s.Kind) + " " + amount + " " + strings.TrimSpace(string(s.Unit)+s.Scale+" "+s.Oven)
		line = strings.TrimSpace(line)
		if s.Plus.Unit != "" {
			line += " + " + s.Plus.Range.From.String() + " " + string(s.Plus.Unit)
		}
		for _, mark := range []struct {
			on   bool
			word string
		}{{s.About, "about"}, {s.More, "more"}, {s.Struck, "struck"}, {s.Below, "below"}} {
			if mark.on {
				line += ", " + mark.word
			}
		}
		lines = append(lines, line)
	}
	return lines
}

func cues(texts ...string) []speech.Cue {
	var all []speech.Cue
	for _, text := range texts {
		all = append(all, speech.Cue{Text: text})
	}
	return all
}

func TestFind(t *testing.T) {
	tests := []struct {
		name string
		text string
		want []string
	}{
		{"words", "two hundred grams of flour", []string{"two hundred grams = measure 200 g"}},
		{"figures", "200g of flour and 200 g of sugar", []string{"200g = measure 200 g", "200 g = measure 200 g"}},
		{"half a cup", "half a cup of milk", []string{"half a cup = measure 1/2 cup"}},
		{"a cup and a half", "a cup and a half of milk", []string{"a cup and a half = measure 3/2 cup"}},
		{"one and a half teaspoons", "one and a half teaspoons salt", []string{"one and a half teaspoons = measure 3/2 tsp"}},
		{"a part of a unit", "three quarters of a teaspoon and 1/4 tsp and ½ tsp", []string{"three quarters of a teaspoon = measure 3/4 tsp", "1/4 tsp = measure 1/4 tsp", "½ tsp = measure 1/2 tsp"}},
		{"mixed figures", "1 1/2 cups, 1½ cups, 2 and a half cups", []string{"1 1/2 cups = measure 3/2 cup", "1½ cups = measure 3/2 cup", "2 and a half cups = measure 5/2 cup"}},
		{"counts", "three egg yolks", []string{"three = count 3"}},
		{"a range", "10 to 12 minutes or 10-12 minutes", []string{"10 to 12 minutes = time 10..12 min", "10-12 minutes = time 10..12 min"}},
		{"between", "between ten and twelve minutes", []string{"between ten and twelve minutes = time 10..12 min"}},
		{"a range without a word", "ten twelve minutes", []string{"ten twelve minutes = time 10..12 min"}},
		{"quarter of an hour", "a quarter of an hour, half an hour, three quarters of an hour", []string{"a quarter of an hour = time 15 h", "half an hour = time 30 h", "three quarters of an hour = time 45 h"}},
		{"hours and minutes", "an hour and a half, an hour and twenty minutes, two hours 20, 1 hour 15 minutes", []string{"an hour and a half = time 90 h", "an hour and twenty minutes = time 80 h", "two hours 20 = time 140 h", "1 hour 15 minutes = time 75 h"}},
		{"up to an hour", "forty five minutes to an hour", []string{"forty five minutes to an hour = time 45..60 min"}},
		{"a minute or two", "whisk for a minute or two", []string{"a minute or two = time 1..2 min, about"}},
		{"fan", "160 degrees fan", []string{"160 degrees fan = heat 160 fan"}},
		{"one eighty", "the oven goes on at one eighty", []string{"one eighty = heat 180"}},
		{"a pair", "190 degrees, 170 with a fan", []string{"190 degrees = heat 190", "170 with a fan = heat 170 fan"}},
		{"a spoken pair", "two hundred degrees or one eighty fan", []string{"two hundred degrees = heat 200", "one eighty fan = heat 180 fan"}},
		{"gas", "that's gas mark five", []string{"gas mark five = heat 5 gas"}},
		{"fahrenheit", "preheat to 350 or 375 Fahrenheit", []string{"350 or 375 Fahrenheit = heat 350..375 F"}},
		{"celsius sign", "180°C (160°C fan)", []string{"180°C = heat 180 C", "160°C fan = heat 160 C fan"}},
		{"a further", "a further 50 mil", []string{"a further 50 mil = measure 50 ml, more"}},
		{"another", "another two tablespoons", []string{"another two tablespoons = measure 2 tbsp, more"}},
		{"fillers", "two, um, hundred grams and about uh three cups", []string{"two, um, hundred grams = measure 200 g", "three cups = measure 3 cup, about"}},
		{"plus", "a cup and two tablespoons of flour", []string{"a cup and two tablespoons = measure 1 cup + 2 tbsp"}},
		{"two things", "a cup of flour and two tablespoons of oil", []string{"a cup = measure 1 cup", "two tablespoons = measure 2 tbsp"}},
		{"share", "a third of the sugar now another third and then the rest", []string{"a third of = share 1/3", "another third = share 1/3, more", "rest = share 0, more"}},
		{"taken back", "two cups sorry three cups of flour", []string{"two cups = measure 2 cup, struck", "three cups = measure 3 cup"}},
		{"years", "since 1987 and nineteen eighty seven", nil},
		{"prices", "it costs $5 and £3.50 and twelve dollars", nil},
		{"episodes", "episode thirty one of season 2", nil},
		{"percent", "seventy percent", nil},
		{"a difference", "turn it down by twenty degrees, or 20 degrees cooler", nil},
		{"an angle", "turn the tray ninety degrees", nil},
		{"idioms", "in a minute, a second, once a day", nil},
		{"length", "five millimetres thick, twelve inches across", []string{"five millimetres = length 5 mm", "twelve inches = length 12 in"}},
		{"sounds", "[applause 20 seconds] two eggs", []string{"two = count 2"}},
		{"half an onion", "half an onion", []string{"half an = count 1/2"}},
		{"decimal", "one point five litres, 0.5 l", []string{"one point five litres = measure 3/2 l", "0.5 l = measure 1/2 l"}},
		{"hundred and", "two hundred and fifty grams of butter and a hundred and twenty of sugar", []string{"two hundred and fifty grams = measure 250 g", "a hundred and twenty = count 120"}},
		{"dozen", "half a dozen eggs, a dozen, a couple of minutes", []string{"half a dozen = count 6", "a dozen = count 12", "a couple of minutes = time 2 min, about"}},
		{"pound", "a pound and a half of beef", []string{"a pound and a half = measure 3/2 lb"}},
		{"two fifty", "two fifty grams of flour", []string{"two fifty grams = measure 250 g"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, shown(speech.Cut(cues(test.text)))); diff != "" {
				t.Errorf("Find(%q) (-want +got):\n%s", test.text, diff)
			}
		})
	}
}

// An amount may be split over two captions anywhere.
func TestFindOverCues(t *testing.T) {
	words := strings.Fields("now two hundred and fifty grams of flour and one and a half teaspoons of salt for ten to twelve minutes at one hundred and eighty degrees fan")
	whole := shown(speech.Cut(cues(strings.Join(words, " "))))
	if len(whole) != 4 {
		t.Fatalf("found %d amounts, want 4: %q", len(whole), whole)
	}
	for cut := 1; cut < len(words); cut++ {
		t.Run(fmt.Sprintf("after %s", words[cut-1]), func(t *testing.T) {
			got := shown(speech.Cut(cues(strings.Join(words[:cut], " "), strings.Join(words[cut:], " "))))
			if diff := cmp.Diff(whole, got); diff != "" {
				t.Errorf("(-whole +cut):\n%s", diff)
			}
		})
	}
}
