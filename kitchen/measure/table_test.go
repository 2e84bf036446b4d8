package measure_test

import (
	"bufio"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/kitchen/measure"
)

// table reads a file of testdata: rows of columns parted by bars, comments
// after "#".
func table(t testing.TB, name string, columns int) [][]string {
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

// num makes a number from its exact text.
func num(t testing.TB, text string) measure.Number {
	t.Helper()
	n, err := measure.ParseNumber(text)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// span makes a range from "3/2" or "2..3".
func span(t testing.TB, text string) measure.Range {
	t.Helper()
	from, to, two := strings.Cut(text, "..")
	if !two {
		return measure.One(num(t, from))
	}
	return measure.Range{From: num(t, from), To: num(t, to)}
}

// amount makes an amount from "3/2 cup", "2..3 tbsp", "4".
func amount(t testing.TB, text string) measure.Amount {
	t.Helper()
	n, unit, _ := strings.Cut(text, " ")
	return measure.Amount{Range: span(t, n), Unit: measure.Unit(unit)}
}

// show gives a range as span reads it.
func show(r measure.Range) string {
	if r.IsSingle() {
		return r.From.String()
	}
	return r.From.String() + ".." + r.To.String()
}

// spaced makes no-break spaces plain, for tables that people read.
func spaced(text string) string { return strings.ReplaceAll(text, "\u00a0", " ") }
