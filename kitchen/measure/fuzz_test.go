package measure_test

import (
	"strings"
	"testing"
	"unicode/utf8"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

// FuzzReadAmount holds the reader's laws on any text: the rest ends the text,
// the reading's own text precedes it, nothing read means nothing taken, numbers
// are in order and positive, and writing what was read never fails.
func FuzzReadAmount(f *testing.F) {
	for _, row := range tables.Read(f, "readings.txt", 4) {
		f.Add(row[0])
	}
	for _, glyph := range "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅟↉" {
		f.Add("1" + string(glyph) + " cup")
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
		checkReading(t, text, r)
	})
}

func checkReading(t *testing.T, text string, r measure.Reading) {
	t.Helper()
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
	for _, s := range measure.Systems() {
		h := measure.Hand{System: s}
		if v, m := h.InVolume(r.Amount.Range), h.InMass(r.Amount.Range); v.Text == "" || m.Text == "" {
			t.Fatalf("%q: %v is written %q and %q", text, r.Amount, v.Text, m.Text)
		}
	}
}

// FuzzDurations holds the finder's laws on any text: each time stands where it
// says, in order, none inside another, and is more than nothing.
func FuzzDurations(f *testing.F) {
	for _, row := range tables.Read(f, "durations.txt", 2) {
		f.Add(row[0])
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
	})
}

// Long texts of one kind end: nothing is read again from every place.
func TestLongTextsEnd(t *testing.T) {
	for _, part := range []string{
		"100/", "180 (", "1 hour and ", "1 hour to ", "half a ", "a good ", "between ", "about ", "1–", "1 1/2 ", "one hundred ", "twenty-",
		"one point ", "9", "a", "A", "é", "½", "\u00a0", "(", "°", "gas mark ", "fan ", "1,000,", "very ", "minutes", "up to ", "2 x ", "1 lb ",
	} {
		text := strings.Repeat(part, 50_000/len(part))
		measure.Heats(text)
		measure.Durations(text)
		measure.ReadAmount(text)
		measure.ReadNumber(text)
		measure.Heats("bake at " + text)
		measure.ReadAmount("1 " + text)
	}
}
