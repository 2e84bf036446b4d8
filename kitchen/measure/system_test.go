package measure_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

// size gives one u in its kind's base unit.
func size(s measure.System, u measure.Unit) (measure.Number, bool) {
	switch u.Kind() {
	case measure.Mass:
		return s.Grams(u)
	case measure.Length:
		return measure.Millimetres(u)
	}
	return s.Millilitres(u)
}

func TestMeasuresAreAsPublished(t *testing.T) {
	for _, row := range tables.Read(t, "measures.txt", 4) {
		t.Run(row[0]+" "+row[1], func(t *testing.T) {
			u, ok := measure.ParseUnit(row[1])
			if !ok {
				t.Fatalf("ParseUnit(%q) knows no such unit", row[1])
			}
			systems := []measure.System{measure.System(row[0])}
			if row[0] == "any" {
				systems = []measure.System{"", measure.US, measure.Imperial, measure.Metric, measure.Australian, measure.Japanese}
			}
			for _, s := range systems {
				if got, ok := size(s, u); !ok || !got.Equal(num(t, row[2])) {
					t.Errorf("%q: one %s = %v (%v), want %s: %s", s, u, got, ok, row[2], row[3])
				}
			}
		})
	}
}

func TestLaddersAreAsPublished(t *testing.T) {
	for _, row := range tables.Read(t, "ladders.txt", 5) {
		s := measure.System(row[0])
		got, err := measure.Convert(amount(t, "1 "+row[1]), measure.Unit(row[3]), s, s)
		if err != nil {
			t.Errorf("%s: 1 %s in %s: %v", s, row[1], row[3], err)
			continue
		}
		if want := amount(t, row[2]+" "+row[3]); !cmp.Equal(got, want) {
			t.Errorf("%s: 1 %s = %v, want %v: %s", s, row[1], got, want, row[4])
		}
	}
}

func TestHouseholdCardRoundsTheExactMeasures(t *testing.T) {
	for _, row := range tables.Read(t, "household.txt", 3) {
		ml, ok := measure.US.Millilitres(measure.Unit(row[0]))
		if got := ml.Round(num(t, row[2])); !ok || !got.Equal(num(t, row[1])) {
			t.Errorf("US %s rounds to %v mL, want %s (NIST SP 430)", row[0], got, row[1])
		}
	}
}

func TestSystemsBorrowWhatTheyLack(t *testing.T) {
	for _, test := range []struct {
		name   string
		system measure.System
		unit   measure.Unit
		want   string // in mL; "" if it must not be known
		says   string
	}{
		{"own", measure.US, measure.Cup, "236.5882365", "cup = 236.588 mL (US customary)"},
		{"own whole", measure.Australian, measure.Tablespoon, "20", "tbsp = 20 mL (Australian)"},
		{"Australian cup", measure.Australian, measure.Cup, "250", "cup = 250 mL (metric; Australian has none of its own)"},
		{"metric pint", measure.Metric, measure.Pint, "568.26125", "pint = 568.261 mL (imperial; metric has none of its own)"},
		{"metric fluid ounce", measure.Metric, measure.FluidOunce, "28.4130625", "fl oz = 28.413 mL (imperial; metric has none of its own)"},
		{"imperial spoon", measure.Imperial, measure.Tablespoon, "15", "tbsp = 15 mL (metric; imperial has none of its own)"},
		{"imperial cup, half a pint, common practice", measure.Imperial, measure.Cup, "284.130625", "cup = 284.131 mL (imperial)"},
		{"Japanese pint, over metric", measure.Japanese, measure.Pint, "568.26125", "pint = 568.261 mL (imperial; Japanese has none of its own)"},
		{"label pint", measure.USLabel, measure.Pint, "473.176473", "pint = 473.176 mL (US customary; US nutrition label has none of its own)"},
		{"US dessertspoon", measure.US, measure.Dessertspn, "10", "dessertspoon = 10 mL (metric; US customary has none of its own)"},
		{"pinch", measure.Metric, measure.Pinch, "5/16", "pinch = 0.313 mL (metric)"},
		{"gō is the same everywhere", measure.US, measure.Go, "2401000/13310", "gō = 180.391 mL"},
		{"drop, from memory", "", measure.Drop, "1/20", "drop = 0.05 mL"},
		{"not said", "", measure.Cup, "", ""},
		{"not said, pinch", "", measure.Pinch, "", ""},
		{"millilitres need no system", "", measure.Millilitre, "1", ""},
		{"no volume", measure.US, measure.Clove, "", ""},
		{"no such system", "martian", measure.Cup, "", ""},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, ok := test.system.Millilitres(test.unit)
			if ok != (test.want != "") || ok && !got.Equal(num(t, test.want)) {
				t.Errorf("%q.Millilitres(%q) = %v, %v, want %q", test.system, test.unit, got, ok, test.want)
			}
			if says := test.system.Describe(test.unit); says != test.says {
				t.Errorf("Describe = %q, want %q", says, test.says)
			}
		})
	}
	if got := measure.US.Describe(measure.Gram); got != "" {
		t.Errorf("Describe grams = %q, want nothing: nothing is assumed", got)
	}
}

func TestParseSystem(t *testing.T) {
	for word, want := range map[string]measure.System{
		"us": measure.US, "US": measure.US, "U.S.": measure.US, "American": measure.US, "US customary": measure.US,
		"imperial": measure.Imperial, "UK": measure.Imperial, "British": measure.Imperial,
		"metric": measure.Metric, "New Zealand": measure.Metric, "NZ": measure.Metric, "Canadian": measure.Metric,
		"Australian": measure.Australian, "Aussie": measure.Australian, "japanese": measure.Japanese,
		"us-label": measure.USLabel, "US label": measure.USLabel,
	} {
		if got, ok := measure.ParseSystem(word); !ok || got != want {
			t.Errorf("ParseSystem(%q) = %q, %v, want %q", word, got, ok, want)
		}
	}
	for _, word := range []string{"", " ", "troy", "cup"} {
		if got, ok := measure.ParseSystem(word); ok {
			t.Errorf("ParseSystem(%q) = %q, want none", word, got)
		}
	}
	for _, s := range measure.Systems() {
		if got, ok := measure.ParseSystem(s.Name()); !ok || got != s {
			t.Errorf("ParseSystem(%q) = %q, %v, want %q: a name must read back", s.Name(), got, ok, s)
		}
	}
}

func TestOrTakesTheFirstSaid(t *testing.T) {
	var line, recipe measure.System
	show := measure.Metric
	if got := line.Or(recipe).Or(show); got != measure.Metric {
		t.Errorf("nothing said: %q, want the show's", got)
	}
	recipe = measure.US
	if got := line.Or(recipe).Or(show); got != measure.US {
		t.Errorf("recipe's: %q, want US", got)
	}
	line = measure.Australian
	if got := line.Or(recipe).Or(show); got != measure.Australian {
		t.Errorf("line's own: %q, want Australian", got)
	}
	if got := measure.System("").Name(); got != "not said" {
		t.Errorf("Name of the empty system = %q", got)
	}
}
