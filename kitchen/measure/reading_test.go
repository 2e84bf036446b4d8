package measure_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
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
	for _, row := range table(t, "readings.txt", 4) {
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

func TestReadNumber(t *testing.T) {
	for _, test := range []struct{ text, want, rest string }{
		{"1½ cups", "3/2", "cups"},
		{"1 1/2 cups", "3/2", "cups"},
		{"1-1/2", "3/2", ""},
		{"1⁄2", "1/2", ""},
		{"1.5", "3/2", ""},
		{"1,5", "3/2", ""},
		{"1,50", "3/2", ""},
		{"1,000", "1000", ""},
		{"1,234,567", "1234567", ""},
		{"1,234.5", "2469/2", ""},
		{"0,125", "1/8", ""},
		{"1.250", "5/4", ""},
		{"1234,567", "1234567/1000", ""},
		{"1\u202f500", "1500", ""},
		{"12 500", "12", "500"},
		{"1 400 g", "1", "400 g"},
		{"one and a half", "3/2", ""},
		{"a dozen", "12", ""},
		{"half", "1/2", ""},
		{"a quarter", "1/4", ""},
		{"three", "3", ""},
		{"a couple of", "2", ""},
		{"Twelve", "12", ""},
		{"ninety-nine", "99", ""},
		{"nine hundred and ninety-nine thousand nine hundred and ninety-nine", "999999", ""},
		{"a thousand and one nights", "1001", "nights"},
		{"two point two five", "9/4", ""},
		{"one point", "1", "point"},
		{"12 34", "12", "34"},
		{"1/2/3", "1/2", "/3"},
		{"3/2", "3/2", ""},
		{"1 3/2", "1", "3/2"},
		{"5.", "5", "."},
		{"1,2,3", "6/5", ",3"},
		{"7½-inch", "15/2", "-inch"},
	} {
		got, rest, ok := measure.ReadNumber(test.text)
		if !ok || !got.Equal(num(t, test.want)) || rest != test.rest {
			t.Errorf("ReadNumber(%q) = %v, %q, %v, want %s, %q", test.text, got, rest, ok, test.want, test.rest)
		}
	}
}

func TestReadNumberLeavesWhatIsNone(t *testing.T) {
	for _, text := range []string{"", " ", "cups", "a cup", "an egg", "third", "-", "/2", "½½½x"[6:], "1234567890123", "point five", "hundred", "couple"} {
		if got, rest, ok := measure.ReadNumber(text); ok || rest != text {
			t.Errorf("ReadNumber(%q) = %v, %q, %v, want nothing read", text, got, rest, ok)
		}
	}
}

// Source: Unicode Character Database (see the table).
func TestVulgarFractionsRead(t *testing.T) {
	for _, row := range table(t, "fractions.txt", 3) {
		if code := fmt.Sprintf("%04X", []rune(row[0])[0]); code != row[1] {
			t.Errorf("%s is U+%s, the table says %s", row[0], code, row[1])
		}
		for _, lead := range []string{"", "3", "3 "} {
			want := num(t, row[2])
			if lead != "" {
				want = want.Add(measure.Whole(3))
			}
			if got, rest, ok := measure.ReadNumber(lead + row[0] + " cup"); !ok || rest != "cup" || !got.Equal(want) {
				t.Errorf("ReadNumber(%q) = %v, %q, %v, want %v", lead+row[0], got, rest, ok, want)
			}
		}
	}
	if got, _, ok := measure.ReadNumber("⅟16"); !ok || !got.Equal(measure.Ratio(1, 16)) {
		t.Errorf("⅟16 (numerator one, U+215F) = %v, %v", got, ok)
	}
	if got, _, ok := measure.ReadNumber("↉"); !ok || !got.IsZero() {
		t.Errorf("↉ (U+2189, zero thirds) = %v, %v", got, ok)
	}
}

func TestFormatNumber(t *testing.T) {
	for n, want := range map[string]string{
		"0": "0", "3": "3", "1/2": "½", "3/2": "1½", "1/3": "⅓", "8/3": "2⅔", "7/8": "⅞", "-3/2": "−1½", "1000": "1000",
		"1/5": "1⁄5", "6/5": "1 1⁄5", "5/6": "5⁄6", "1/16": "1⁄16", "47/20": "2.35", "1/7": "0.14", "1/10": "0.1",
		"1/70": "0.014", "1/1000": "0.001", "100/7": "14.29", "-1/7": "−0.14", "999/1000": "1",
	} {
		if got := spaced(measure.FormatNumber(num(t, n))); got != want {
			t.Errorf("FormatNumber(%s) = %q, want %q", n, got, want)
		}
	}
	if got := measure.FormatDecimal(measure.Ratio(5, 2), 2); got != "2.5" {
		t.Errorf("FormatDecimal(5/2) = %q", got)
	}
	if got := measure.FormatDecimal(measure.Ratio(2, 3), 0); got != "1" {
		t.Errorf("FormatDecimal(2/3, 0) = %q", got)
	}
}

func ExampleReadAmount() {
	r, rest, ok := measure.ReadAmount("2 heaped Australian tablespoons of cocoa")
	fmt.Println(r.Amount.Unit, r.Amount.From, r.System, r.Note, rest, ok)
	// Output: tbsp 2 australian heaped cocoa true
}
