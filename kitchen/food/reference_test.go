package food_test

import (
	"bufio"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"
)

// databaseWords gives the words of the names of USDA SR 26 that no maker's name
// stands with, without baby, fast and restaurant foods. It skips the test where
// the tables are not beside or above the repository.
func databaseWords(tb testing.TB) map[string]bool {
	tb.Helper()
	file := openReference(tb, "usda-sr/FOOD_DES.txt")
	defer func() { _ = file.Close() }()
	words := map[string]bool{}
	for lines := bufio.NewScanner(file); lines.Scan(); {
		fields := strings.Split(lines.Text(), "^")
		group, maker := strings.Trim(fields[1], "~"), strings.Trim(fields[5], "~")
		if maker != "" || group == "0300" || group == "2100" || group == "3600" {
			continue
		}
		for _, word := range strings.FieldsFunc(strings.ToLower(fields[2]), func(r rune) bool { return !unicode.IsLetter(r) }) {
			words[word] = true
		}
	}
	return words
}

func openReference(tb testing.TB, name string) *os.File {
	tb.Helper()
	dir, err := os.Getwd()
	if err != nil {
		tb.Fatal(err)
	}
	for {
		if file, err := os.Open(filepath.Join(dir, "shared", "reference", name)); err == nil {
			return file
		}
		parent := filepath.Dir(dir)
		if parent == dir {
			tb.Skip("the reference is not at hand: " + name)
		}
		dir = parent
	}
}
