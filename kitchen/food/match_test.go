package food_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/food"
	"benchproof/seed"
)

// larder gives the built-in larder.
func larder(tb testing.TB) *food.Larder {
	tb.Helper()
	l, err := seed.Larder()
	if err != nil {
		tb.Fatal(err)
	}
	return l
}

// found words a match as names.txt does.
func found(m food.Match) string {
	switch {
	case m.How == food.Ask:
		ids := []string{"ask"}
		for _, f := range m.Choices {
			ids = append(ids, f.ID)
		}
		return strings.Join(ids, " ")
	case m.Food == nil:
		return "none"
	}
	return m.Food.ID
}

// agree tells whether what was found is what a table wants, where " +" at the
// end stands for more choices.
func agree(got, want string) bool {
	first, more := strings.CutSuffix(want, " +")
	return got == want || more && strings.HasPrefix(got, first+" ")
}

func TestMatchFindsWhatCooksMean(t *testing.T) {
	l := larder(t)
	rows := readRows(t, "testdata/names.txt", 3)
	if len(rows) < 250 {
		t.Fatalf("%d names, want 250 or more", len(rows))
	}
	for _, row := range rows {
		written, want, form := row[0], row[1], row[2]
		t.Run(written, func(t *testing.T) {
			m := l.Match(written)
			if got := found(m); !agree(got, want) {
				t.Errorf("Match(%q) = %s (%s, left %q), want %s", written, got, m.How, m.Left, want)
			}
			if m.Food != nil && m.Form != form {
				t.Errorf("Match(%q).Form = %q, want %q", written, m.Form, form)
			}
		})
	}
}

func TestMatchKnowsThePantriesOfFiveKitchens(t *testing.T) {
	l := larder(t)
	for _, row := range readRows(t, "testdata/pantry.txt", 2) {
		t.Run(row[0], func(t *testing.T) {
			if m := l.Match(row[0]); !agree(found(m), row[1]) {
				t.Errorf("Match(%q) = %s (%s, left %q), want %s", row[0], found(m), m.How, m.Left, row[1])
			}
		})
	}
}
