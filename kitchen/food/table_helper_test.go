package food_test

import (
	"bufio"
	"os"
	"strings"
	"testing"

	"benchproof/kitchen/measure"
)

// readRows reads a testdata file of fields parted by bars; # begins a comment.
func readRows(tb testing.TB, path string, fields int) [][]string {
	tb.Helper()
	file, err := os.Open(path)
	if err != nil {
		tb.Fatal(err)
	}
	defer func() { _ = file.Close() }()
	var rows [][]string
	for lines := bufio.NewScanner(file); lines.Scan(); {
		line := lines.Text()
		if line == "" || line[0] == '#' {
			continue
		}
		row := strings.Split(line, "|")
		for i := range row {
			row[i] = strings.TrimSpace(row[i])
		}
		for len(row) < fields {
			row = append(row, "")
		}
		rows = append(rows, row)
	}
	return rows
}

// unitAndForm cuts "fl oz" or "cup sifted" into the unit and the rest.
func unitAndForm(tb testing.TB, text string) (measure.Unit, string) {
	tb.Helper()
	words := strings.Fields(text)
	for n := min(2, len(words)); n > 0; n-- {
		if u, ok := measure.ParseUnit(strings.Join(words[:n], " ")); ok {
			return u, strings.Join(words[n:], " ")
		}
	}
	tb.Fatalf("%q begins with no unit", text)
	return "", ""
}
