package measure_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

// Times in the words of home recipes, written by us: what stands in the text,
// and how many minutes it is, worked out by hand.
func TestTimesAsCooksWriteThem(t *testing.T) {
	for _, test := range []struct {
		name, text string
		times      []string // as written
		minutes    string
	}{
		// hours and minutes
		{"to an hour and more", "simmer 1 hour 15 to 1 hour 30", []string{"1 hour 15 to 1 hour 30"}, "75..90"},
		{"hours and minutes at both ends", "1 hour 15 minutes to 1 hour 30 minutes", []string{"1 hour 15 minutes to 1 hour 30 minutes"}, "75..90"},
		{"short, with a dash", "1 hr 15 - 1 hr 30 min, covered", []string{"1 hr 15 - 1 hr 30 min"}, "75..90"},
		{"the hour twice", "1 hr–1 hr 15 min", []string{"1 hr–1 hr 15 min"}, "60..75"},
		{"glued", "1hr to 1hr 30mins", []string{"1hr to 1hr 30mins"}, "60..90"},
		{"to whole hours", "1 hour 15 to 2 hours", []string{"1 hour 15 to 2 hours"}, "75..120"},
		{"minutes that range", "bake 1 hour 20 to 25 minutes", []string{"1 hour 20 to 25 minutes"}, "80..85"},
		{"minutes that range, unsaid", "bake 1 hour 30 to 45", []string{"1 hour 30 to 45"}, "90..105"},
		{"two ways", "bake 1 hour or 1 hour 30", []string{"1 hour", "1 hour 30"}, "60, 90"},
		{"with an ampersand", "2 hrs & 30 mins", []string{"2 hrs & 30 mins"}, "150"},
		{"and three quarters", "an hour and three quarters", []string{"an hour and three quarters"}, "105"},
		{"three-quarters of an hour", "for three-quarters of an hour", []string{"three-quarters of an hour"}, "45"},
		{"one and three-quarter hours", "one and three-quarter hours", []string{"one and three-quarter hours"}, "105"},
		{"a French hour", "cook 1h15, turn", []string{"1h15"}, "75"},
		{"before a heat", "1 hour 10 at 180 °C", []string{"1 hour 10"}, "70"},
		{"the end of a sentence", "Prove 1 hr. 30 min. Knock back.", []string{"1 hr. 30 min"}, "90"},
		{"two sentences", "Prove 1 hr. 30 rolls rise at once.", []string{"1 hr."}, "60"},

		// the hyphen that waits for its unit
		{"15- to 20-minute", "a 15- to 20-minute rest", []string{"a 15- to 20-minute"}, "15..20"},
		{"15-to-20-minute", "a 15-to-20-minute rest", []string{"a 15-to-20-minute"}, "15..20"},

		// a word between the number and its unit
		{"more", "bake 10 more minutes", []string{"10 more minutes"}, "10"},
		{"a range and more", "bake 5–10 more minutes", []string{"5–10 more minutes"}, "5..10"},
		{"full", "boil a full 5 minutes, 2 full minutes off the heat", []string{"a full 5 minutes", "2 full minutes"}, "5, 2"},
		{"or so", "ten or so minutes", []string{"ten or so minutes"}, "10"},
		{"good", "knead 10 good minutes", []string{"10 good minutes"}, "10"},
		{"long", "simmer 3 long hours", []string{"3 long hours"}, "180"},
		{"no unit after it", "add 2 more eggs, 3 full spoons", nil, ""},

		// days and weeks
		{"a range of days", "keeps 3 or 4 days", []string{"3 or 4 days"}, "4320..5760"},
		{"a day and a half", "ferment a day and a half", []string{"a day and a half"}, "2160"},
		{"days to a week", "2 days to 1 week", []string{"2 days to 1 week"}, "2880..10080"},
		{"half a day", "soak for half a day", []string{"half a day"}, "720"},

		// seconds
		{"a range of seconds", "15-20 seconds", []string{"15-20 seconds"}, "1/4..1/3"},
		{"half a minute", "stir half a minute", []string{"half a minute"}, "1/2"},
		{"sixty", "sixty seconds", []string{"sixty seconds"}, "1"},

		// several in one step
		{"each side and in all", "5 min per side, 10 min in all", []string{"5 min", "10 min"}, "5, 10"},
		{"at least and at most", "at least 1 hour and up to 3 days", []string{"1 hour", "3 days"}, "60, 4320"},
		{"first and then", "10 minutes, then another 10 to 12 minutes", []string{"10 minutes", "another 10 to 12 minutes"}, "10, 10..12"},

		// none
		{"numbered days", "day 2: bake", nil, ""},
		{"vague", "several minutes, a few seconds, all day", nil, ""},
		{"months are of no fixed length", "freezes for 3 months", nil, ""},
	} {
		t.Run(test.name, func(t *testing.T) {
			var times, minutes []string
			for _, d := range measure.Durations(test.text) {
				times, minutes = append(times, d.Text), append(minutes, tables.Range(d.Minutes))
			}
			if diff := cmp.Diff(test.times, times); diff != "" {
				t.Errorf("%q (-want +got):\n%s", test.text, diff)
			}
			if got := strings.Join(minutes, ", "); got != test.minutes {
				t.Errorf("%q is %s minutes, want %s", test.text, got, test.minutes)
			}
		})
	}
}

// wholeMinutes draws a time as FormatMinutes writes it exactly: whole minutes
// up to two days.
func wholeMinutes(t *rapid.T, name string) measure.Number {
	return measure.Whole(rapid.OneOf(rapid.Int64Range(1, 120), rapid.Int64Range(1, 2879)).Draw(t, name))
}

// What FormatMinutes writes is found again in a step, as long as it was, from
// and to.
func TestWrittenTimesAreFoundAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := measure.One(wholeMinutes(t, "from"))
		if rapid.Bool().Draw(t, "range") {
			want = measure.Between(want.From, wholeMinutes(t, "to"))
		}
		text := "Leave it " + measure.FormatMinutes(want) + rapid.SampledFrom([]string{".", ", then bake.", " until golden.", " at 180 °C."}).Draw(t, "after")
		got := measure.Durations(text)
		if len(got) != 1 || !cmp.Equal(got[0].Minutes, want) {
			t.Fatalf("%q: found %v, want %s", text, got, tables.Range(want))
		}
	})
}
