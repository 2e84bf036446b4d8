package scan_test

import (
	"fmt"
	"testing"

	"benchproof/kitchen/measure/exact"
	"benchproof/kitchen/measure/internal/tables"
	"benchproof/kitchen/measure/scan"
)

func TestNumber(t *testing.T) {
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
		got, rest, ok := scan.Number(test.text)
		if !ok || !got.Equal(exact.MustNumber(test.want)) || rest != test.rest {
			t.Errorf("Number(%q) = %v, %q, %v, want %s, %q", test.text, got, rest, ok, test.want, test.rest)
		}
	}
}

func TestNumberLeavesWhatIsNone(t *testing.T) {
	for _, text := range []string{"", " ", "cups", "a cup", "an egg", "third", "-", "/2", "½½½x"[6:], "1234567890123", "point five", "hundred", "couple"} {
		if got, rest, ok := scan.Number(text); ok || rest != text {
			t.Errorf("Number(%q) = %v, %q, %v, want nothing read", text, got, rest, ok)
		}
	}
}

// Source: Unicode Character Database (see the table).
func TestVulgarFractionsRead(t *testing.T) {
	for _, row := range tables.Read(t, "fractions.txt", 3) {
		if code := fmt.Sprintf("%04X", []rune(row[0])[0]); code != row[1] {
			t.Errorf("%s is U+%s, the table says %s", row[0], code, row[1])
		}
		for _, lead := range []string{"", "3", "3 "} {
			want := exact.MustNumber(row[2])
			if lead != "" {
				want = want.Add(exact.Whole(3))
			}
			if got, rest, ok := scan.Number(lead + row[0] + " cup"); !ok || rest != "cup" || !got.Equal(want) {
				t.Errorf("Number(%q) = %v, %q, %v, want %v", lead+row[0], got, rest, ok, want)
			}
		}
	}
	if got, _, ok := scan.Number("⅟16"); !ok || !got.Equal(exact.Ratio(1, 16)) {
		t.Errorf("⅟16 (numerator one, U+215F) = %v, %v", got, ok)
	}
	if got, _, ok := scan.Number("↉"); !ok || !got.IsZero() {
		t.Errorf("↉ (U+2189, zero thirds) = %v, %v", got, ok)
	}
}
