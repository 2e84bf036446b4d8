// Package tables is for the tests of this room: it reads the tables they check
// against, rows of columns parted by bars with comments after "#", and writes
// ranges and texts as those tables have them.
package tables

import (
	"bufio"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/kitchen/measure/exact"
)

// Read gives the rows of testdata/name, each of so many columns without the
// spaces about them. A file that cannot be read, a row of another length or no
// row at all ends the test.
func Read(t testing.TB, name string, columns int) [][]string {
	t.Helper()
	f, err := os.Open(filepath.Join("testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var rows [][]string
	scan := bufio.NewScanner(f)
	for scan.Scan() {
		line := strings.TrimSpace(scan.Text())
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		row := strings.Split(line, "|")
		for i := range row {
			row[i] = strings.TrimSpace(row[i])
		}
		if len(row) != columns {
			t.Fatalf("%s: %q has %d columns, want %d", name, line, len(row), columns)
		}
		rows = append(rows, row)
	}
	if err := scan.Err(); err != nil {
		t.Fatal(err)
	}
	if len(rows) == 0 {
		t.Fatalf("%s has no rows", name)
	}
	return rows
}

// Range writes r as the tables do: "3/2", "2..3".
func Range(r exact.Range) string {
	if r.IsSingle() {
		return r.From.String()
	}
	return r.From.String() + ".." + r.To.String()
}

// Plain makes no-break spaces plain ones, for tables that people read.
func Plain(text string) string { return strings.ReplaceAll(text, exact.NoBreak, " ") }
