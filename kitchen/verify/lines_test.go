package verify_test

import (
	"path/filepath"
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify"
)

// Single sentences in which something is wrong, or nothing is: a recipe, a rule, and a
// sentence a line. A question mark before one says that it is not understood yet; then
// it must not be, so that whoever mends it takes the mark away. All are inventions; the
// ways of speaking are common practice, no source.

func TestSlipsInSingleSentences(t *testing.T) {
	eachLine(t, "testdata/lines/slips-*.txt", func(findings int) bool { return findings > 0 })
}

func TestNothingInSingleSentences(t *testing.T) {
	eachLine(t, "testdata/lines/nothing-*.txt", func(findings int) bool { return findings == 0 })
}

// eachLine checks every sentence of the files; isRight tells of how many findings of
// what is said are right.
func eachLine(t *testing.T, pattern string, isRight func(findings int) bool) {
	files, err := filepath.Glob(pattern)
	if err != nil || len(files) == 0 {
		t.Fatalf("no %s: %v", pattern, err)
	}
	for _, file := range files {
		written, lines, found := strings.Cut(readFile(t, file), "\n----\n")
		if !found {
			t.Fatalf("%s has no rule", file)
		}
		r := recipe.Reader{Larder: checker.Larder}.Read(written)
		for line := range strings.Lines(lines) {
			said, isOpen := strings.CutPrefix(strings.TrimSpace(line), "? ")
			t.Run(filepath.Base(file)+"/"+said, func(t *testing.T) {
				if got := spokenFindings(r, said); isRight(len(got)) == isOpen {
					t.Errorf("%d findings, not understood yet: %v: %v", len(got), isOpen, got)
				}
			})
		}
	}
}

// spokenFindings are those of what is said, in words.
func spokenFindings(r recipe.Recipe, said string) []string {
	var got []string
	for _, f := range checker.Check(r, []verify.Cue{{End: 8 * time.Second, Text: said}}).Findings {
		if f.Kind != verify.NotSaid {
			got = append(got, worded(f))
		}
	}
	return got
}
