package measure_test

import (
	"strings"
	"testing"
	"unicode/utf8"

	"benchproof/kitchen/measure"
)

// FuzzReadAmount holds the reader's laws on any text: the rest ends the text,
// the reading's own text precedes it, nothing read means nothing taken, numbers
// are in order and positive, and writing what was read never fails.
func FuzzReadAmount(f *testing.F) {
	for _, row := range table(f, "readings.txt", 4) {
		f.Add(row[0])
	}
	for _, row := range table(f, "fractions.txt", 3) {
		f.Add(row[0] + " cup")
	}
	f.Fuzz(func(t *testing.T, text string) {
		r, rest, ok := measure.ReadAmount(text)
		if !strings.HasSuffix(text, rest) {
			t.Fatalf("rest %q does not end %q", rest, text)
		}
		if !ok {
			if rest != text || r != (measure.Reading{}) {
				t.Fatalf("%q: not read, but %v and %q", text, r, rest)
			}
			return
		}
		taken := text[:len(text)-len(rest)]
		if r.Text == "" || !strings.Contains(taken, r.Text) {
			t.Fatalf("%q: text %q is not in what was taken, %q", text, r.Text, taken)
		}
		if utf8.ValidString(text) && !utf8.ValidString(r.Text) {
			t.Fatalf("%q: text %q cuts a character", text, r.Text)
		}
		if r.Amount.From.Cmp(r.Amount.To) > 0 || r.Amount.From.Sign() < 0 {
			t.Fatalf("%q: %v", text, r.Amount)
		}
		if !r.HasAmount() && r.Note == "" {
			t.Fatalf("%q: no number and no word instead: %+v", text, r)
		}
		shown := measure.Hand{System: r.System}.Write(r.Amount)
		if r.HasAmount() && (shown.Text == "" || shown.Amount.To.Sign() <= 0) {
			t.Fatalf("%q: %v is written %q", text, r.Amount, shown.Text)
		}
		measure.Hand{System: measure.US}.InVolume(r.Amount.Range)
		measure.Hand{System: measure.Imperial}.InMass(r.Amount.Range)
	})
}

// FuzzFinders holds the laws of Durations and Heats: each stands where it says,
// in order, none inside another; and no text upsets CheckOvens.
func FuzzFinders(f *testing.F) {
	for _, row := range table(f, "durations.txt", 2) {
		f.Add(row[0])
	}
	for _, text := range []string{"180°C/160°C fan/350°F/gas 4", "Preheat oven to 180 (160 fan)", "−18 °C", "gas mark ½", "turn 90 degrees", "three hundred degrees"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		end := 0
		for _, d := range measure.Durations(text) {
			if d.At < end || d.At+len(d.Text) > len(text) || text[d.At:d.At+len(d.Text)] != d.Text {
				t.Fatalf("%q: %+v", text, d)
			}
			if d.Minutes.From.Sign() <= 0 || d.Minutes.From.Cmp(d.Minutes.To) > 0 {
				t.Fatalf("%q: %v minutes", text, d.Minutes)
			}
			end = d.At + len(d.Text)
		}
		end = 0
		heats := measure.Heats(text)
		for _, h := range heats {
			if h.At < end || h.At+len(h.Text) > len(text) || text[h.At:h.At+len(h.Text)] != h.Text {
				t.Fatalf("%q: %+v", text, h)
			}
			if h.Degrees.From.Cmp(h.Degrees.To) > 0 {
				t.Fatalf("%q: %v", text, h)
			}
			end = h.At + len(h.Text)
		}
		for _, q := range measure.CheckOvens(heats) {
			if q.Text == "" {
				t.Fatalf("%q: an empty question", text)
			}
		}
	})
}
