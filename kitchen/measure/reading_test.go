package measure_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

// readingOf makes the reading a row of readings.txt expects, without its text.
func readingOf(t testing.TB, want, extras string) measure.Reading {
	r := measure.Reading{Amount: amount(t, want)}
	for extra := range strings.SplitSeq(extras, ",") {
		switch key, value, _ := strings.Cut(strings.TrimSpace(extra), "="); key {
		case "":
		case "approx":
			r.Approximate = true
		case "system":
			r.System = measure.System(value)
		case "note":
			r.Note = value
		default:
			t.Fatalf("%q is no extra", key)
		}
	}
	return r
}

func TestReadAmount(t *testing.T) {
	for _, row := range tables.Read(t, "readings.txt", 4) {
		t.Run(row[0], func(t *testing.T) {
			got, rest, ok := measure.ReadAmount(row[0])
			if rest != row[2] {
				t.Errorf("rest = %q, want %q", rest, row[2])
			}
			if row[1] == "none" {
				if ok {
					t.Errorf("read %v, want nothing", got)
				}
				return
			}
			if !ok {
				t.Fatal("not read")
			}
			if !strings.HasPrefix(row[0], got.Text) || got.Text == "" {
				t.Errorf("Text = %q does not begin the text", got.Text)
			}
			want := readingOf(t, row[1], row[3])
			want.Text = got.Text
			if diff := cmp.Diff(want, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// Spaces of other kinds, and pasted no-break ones, change nothing.
func TestReadAmountTakesAnySpace(t *testing.T) {
	for _, space := range []string{"\u00a0", "\u2009", "\u202f", "\t", "  ", "\u3000"} {
		for _, text := range []string{"1 1/2 cups flour", "200 g flour", "2 to 3 tbsp flour", " 2 heaped tsp of flour"} {
			got, rest, ok := measure.ReadAmount(strings.ReplaceAll(text, " ", space))
			want, _, _ := measure.ReadAmount(text)
			if !ok || rest != "flour" || !cmp.Equal(got.Amount, want.Amount) {
				t.Errorf("%q with %q for spaces: %v, %q, %v", text, space, got.Amount, rest, ok)
			}
		}
	}
}

func TestReadingTextIsTheAmountAlone(t *testing.T) {
	for text, want := range map[string]string{
		"1½ cups of sugar": "1½ cups", " 200g flour": "200g", "about 2 cups flour": "about 2 cups", "1 cup (US) flour": "1 cup (US)",
		"2 to 3 sprigs thyme": "2 to 3 sprigs", "200 g or so of flour": "200 g or so", "half a lemon": "half a", "3 eggs": "3",
		"1 lb 4 oz beef": "1 lb 4 oz", "a few sprigs of thyme": "a few sprigs",
	} {
		if got, _, _ := measure.ReadAmount(text); got.Text != want {
			t.Errorf("ReadAmount(%q).Text = %q, want %q", text, got.Text, want)
		}
	}
}

func TestHasAmount(t *testing.T) {
	few, _, ok := measure.ReadAmount("a few sprigs thyme")
	if !ok || few.HasAmount() || few.Amount.Unit != measure.Sprig {
		t.Errorf("a few sprigs: %+v, %v", few, ok)
	}
	one, _, _ := measure.ReadAmount("1 sprig thyme")
	if !one.HasAmount() {
		t.Error("1 sprig has an amount")
	}
}
