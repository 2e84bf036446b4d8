package measure_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

// readable are the rows of readings.txt that are read and leave a food.
func readable(t *testing.T) [][]string {
	var rows [][]string
	for _, row := range tables.Read(t, "readings.txt", 4) {
		if row[1] != "none" && row[2] != "" {
			rows = append(rows, row)
		}
	}
	return rows
}

// same tells whether two readings agree in all but their text.
func same(a, b measure.Reading) bool {
	a.Text, b.Text = "", ""
	return cmp.Equal(a, b)
}

// What stands about a line changes nothing: spaces before it, and words, commas
// and brackets behind the food.
func TestReadingIgnoresWhatStandsAbout(t *testing.T) {
	for _, row := range readable(t) {
		want, _, _ := measure.ReadAmount(row[0])
		for _, about := range []struct{ before, after string }{
			{"", ", chopped"}, {"", " (see note)"}, {"  ", ""}, {"\u00a0", " "}, {"\t", ";"}, {"", ", 2 ways"}, {"", "\nnext line 3 cups"},
		} {
			text := about.before + row[0] + about.after
			got, rest, ok := measure.ReadAmount(text)
			if !ok || !same(got, want) || rest != strings.TrimLeft(row[2]+about.after, " ") {
				t.Errorf("%q reads as %+v, leaving %q; alone as %+v", text, got, rest, want)
			}
		}
	}
}

// Every kind of dash, hyphen and space between words reads the same.
func TestReadingTakesAnyDash(t *testing.T) {
	for _, row := range readable(t) {
		if !strings.Contains(row[0], "–") {
			continue
		}
		want, _, _ := measure.ReadAmount(row[0])
		for _, dash := range []string{"-", "—", "‒", "−", "‐", "‑", " - ", " – ", " to "} {
			if strings.Contains(row[0], "1–") && strings.ContainsAny(row[0], "/⁄") && dash != " to " {
				continue // a dash before a part makes a mixed number
			}
			text := strings.ReplaceAll(row[0], "–", dash)
			if dash == " to " {
				text = strings.Replace(row[0], "–", dash, 1)
				if strings.Contains(text, "–") || strings.Contains(row[0], "1–1/2") || strings.Contains(row[0], "inch") {
					continue
				}
			}
			if got, _, ok := measure.ReadAmount(text); !ok || !same(got, want) {
				t.Errorf("%q reads as %+v, %q as %+v", text, got, row[0], want)
			}
		}
	}
}

// Capitals change nothing but the lone T, and words that are names.
func TestReadingTakesCapitals(t *testing.T) {
	for _, row := range readable(t) {
		_, number, _ := strings.Cut(row[0], " ")
		unit, _, _ := strings.Cut(number, " ")
		if len(strings.Trim(unit, ".")) <= 1 || strings.Contains(row[0], "us") || strings.Contains(row[0], "c.") {
			continue
		}
		want, _, _ := measure.ReadAmount(row[0])
		got, rest, ok := measure.ReadAmount(strings.ToUpper(row[0]))
		got.Note = strings.ToLower(got.Note)
		want.Note = strings.ToLower(want.Note)
		if !ok || !same(got, want) || rest != strings.ToUpper(row[2]) {
			t.Errorf("%q in capitals reads as %+v, leaving %q; want %+v", row[0], got, rest, want)
		}
	}
}

// A number in words reads as in figures, before any unit.
func TestWordsAndFiguresAgreeBeforeUnits(t *testing.T) {
	spelled := strings.Fields("one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty twenty-one thirty-five")
	for i, word := range spelled {
		n := int64(i + 1)
		if word == "thirty-five" {
			n = 35
		}
		for _, unit := range []string{"g", "grams of", "cups", "tablespoons of", "large", "tins", "fl oz", "sprigs", "cloves"} {
			figures, rest, ok := measure.ReadAmount(measure.Whole(n).String() + " " + unit + " food")
			words, restToo, okToo := measure.ReadAmount(word + " " + unit + " food")
			lone := len(unit) == 1 // "three g": nobody spells the number and not the unit
			if !ok || !okToo || !lone && (!same(figures, words) || rest != restToo) {
				t.Errorf("%d %s: figures read as %+v, words as %+v", n, unit, figures, words)
			}
		}
	}
}

// Every spelling of every unit is read after a number, glued or not, with a
// full stop if it is an abbreviation.
func TestEverySpellingOfAUnitIsReadAfterANumber(t *testing.T) {
	guarded := map[string]bool{
		"go": true, "rib": true, "ribs": true, "in": true, "#": true, "\"": true, "″": true, "ea": true,
	}
	for want, words := range unitSpellings {
		if want.Kind() == measure.Time || want.Kind() == measure.Temperature {
			continue
		}
		for _, word := range words {
			if guarded[strings.TrimSuffix(strings.ToLower(word), ".")] {
				continue
			}
			for _, text := range []string{"2 " + word + " food", "2 " + word + " of food", "1½ " + word + " food", "2–3 " + word + " food"} {
				got, rest, ok := measure.ReadAmount(text)
				if !ok || got.Amount.Unit != want || strings.TrimPrefix(rest, ". ") != "food" {
					t.Errorf("%q reads as %+v, leaving %q, want unit %q", text, got.Amount, rest, want)
				}
			}
		}
	}
}
