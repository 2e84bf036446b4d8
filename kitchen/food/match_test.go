package food_test

import (
	"bufio"
	"os"
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

// nameRow is one line of testdata/names.txt.
type nameRow struct{ written, want, form string }

func readNames(tb testing.TB) []nameRow {
	tb.Helper()
	file, err := os.Open("testdata/names.txt")
	if err != nil {
		tb.Fatal(err)
	}
	defer func() { _ = file.Close() }()
	var rows []nameRow
	for lines := bufio.NewScanner(file); lines.Scan(); {
		if line := lines.Text(); line != "" && line[0] != '#' {
			fields := strings.Split(line+" | | ", "|")
			rows = append(rows, nameRow{strings.TrimSpace(fields[0]), strings.TrimSpace(fields[1]), strings.TrimSpace(fields[2])})
		}
	}
	return rows
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

func TestMatchFindsWhatCooksMean(t *testing.T) {
	l := larder(t)
	rows := readNames(t)
	if len(rows) < 250 {
		t.Fatalf("%d names, want 250 or more", len(rows))
	}
	for _, row := range rows {
		t.Run(row.written, func(t *testing.T) {
			m := l.Match(row.written)
			got, want := found(m), row.want
			if first, more := strings.CutSuffix(want, " +"); more && strings.HasPrefix(got, first+" ") {
				got = want
			}
			if got != want {
				t.Errorf("Match(%q) = %s (%s, left %q), want %s", row.written, got, m.How, m.Left, row.want)
			}
			if m.Food != nil && m.Form != row.form {
				t.Errorf("Match(%q).Form = %q, want %q", row.written, m.Form, row.form)
			}
		})
	}
}
