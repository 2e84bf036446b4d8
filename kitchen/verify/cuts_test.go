package verify_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/asticode/go-astisub"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify"
	"benchproof/seed"
)

// cut is one invented cut of testdata/cuts with its recipe and with what is
// known about every number in it: see the README there.
type cut struct {
	name   string
	recipe recipe.Recipe
	cues   []verify.Cue
	marks  []mark
}

// mark says what a number of the cut is.
type mark struct {
	kind  string        // differs, not written, pair, not said; agrees, other
	at    time.Duration // start of its cue
	words string        // as said; for not said the line
}

func (m mark) isPlanted() bool { return m.kind != "agrees" && m.kind != "other" }

// heldOut tells the cuts that the rules are not tuned to: 17–18, za, and those from zz on.
// Nobody looks into them. The README beside them tells when each set was written and
// first tried.
func (c cut) heldOut() bool {
	n, _, _ := strings.Cut(c.name, "-")
	return n >= "17" && n <= "18" || n >= "za" && n < "zb" || n >= "zz"
}

var checker = func() verify.Checker {
	larder, err := seed.Larder()
	if err != nil {
		panic(err)
	}
	return verify.Checker{Larder: larder}
}()

func readCuts(t testing.TB) []cut {
	t.Helper()
	files, err := filepath.Glob("testdata/cuts/*.marks")
	if err != nil || len(files) == 0 {
		t.Fatalf("no cuts: %v", err)
	}
	var all []cut
	for _, file := range files {
		base := strings.TrimSuffix(file, ".marks")
		c := cut{name: filepath.Base(base)}
		c.recipe = recipe.Reader{Larder: checker.Larder}.Read(readFile(t, base+".recipe.txt"))
		c.cues = readCues(t, base)
		c.marks = readMarks(t, readFile(t, file))
		all = append(all, c)
	}
	return all
}

func readFile(t testing.TB, name string) string {
	t.Helper()
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// readCues reads captions with a reader that is not ours.
func readCues(t testing.TB, base string) []verify.Cue {
	t.Helper()
	name := base + ".vtt"
	if _, err := os.Stat(name); err != nil {
		name = base + ".srt"
	}
	subtitles, err := astisub.OpenFile(name)
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	var cues []verify.Cue
	for _, item := range subtitles.Items {
		var lines []string
		for _, line := range item.Lines {
			lines = append(lines, line.String())
		}
		cues = append(cues, verify.Cue{Start: item.StartAt, End: item.EndAt, Text: strings.Join(lines, "\n")})
	}
	return cues
}

func readMarks(t testing.TB, text string) []mark {
	t.Helper()
	var marks []mark
	for line := range strings.Lines(text) {
		parts := strings.Split(strings.TrimSuffix(line, "\n"), "\t")
		if strings.HasPrefix(line, "#") || parts[0] == "segment" {
			continue
		}
		m := mark{kind: parts[0], words: parts[2]}
		if parts[1] != "-" {
			var h, min, s, ms int
			if _, err := fmt.Sscanf(parts[1], "%d:%d:%d.%d", &h, &min, &s, &ms); err != nil {
				t.Fatalf("mark %q: %v", line, err)
			}
			m.at = time.Duration(((h*60+min)*60+s)*1000+ms) * time.Millisecond
		}
		marks = append(marks, m)
	}
	return marks
}

// is tells whether a finding is the one that a mark plants.
func (m mark) is(f verify.Finding) bool {
	if m.kind == "not said" {
		return f.Kind == verify.NotSaid && (folded(f.Line) == folded(m.words) || folded(f.Written+" "+f.Line) == folded(m.words))
	}
	near := 4 * time.Second
	if f.Kind == verify.Pair {
		near *= 2 // it begins at the first of two settings
	}
	if f.Kind == verify.NotSaid || (f.At-m.at).Abs() > near {
		return false
	}
	return sameWords(folded(f.Said), folded(m.words))
}

func folded(text string) string {
	return strings.Join(strings.Fields(strings.Map(func(c rune) rune {
		if strings.ContainsRune(".,;:!?()“”\"", c) {
			return -1
		}
		return c
	}, strings.ToLower(text))), " ")
}

// tally counts what was found.
type tally struct{ planted, found, findings, wrong, harmless int }

func (a *tally) add(b tally) {
	a.planted += b.planted
	a.found += b.found
	a.findings += b.findings
	a.wrong += b.wrong
	a.harmless += b.harmless
}

func (a tally) String() string {
	return fmt.Sprintf("%d of %d planted found (%.1f %%), %d of %d findings false (%.1f %%), %d harmless numbers",
		a.found, a.planted, 100*float64(a.found)/float64(max(a.planted, 1)), a.wrong, a.findings, 100*float64(a.wrong)/float64(max(a.findings, 1)), a.harmless)
}

// judged compares the findings with the marks and tells of what is wrong.
func (c cut) judged(tell func(format string, args ...any)) tally {
	report := checker.Check(c.recipe, c.cues)
	var sum tally
	sum.findings = len(report.Findings)
	for _, m := range c.marks {
		switch {
		case !m.isPlanted():
			sum.harmless++
		case slices.ContainsFunc(report.Findings, m.is):
			sum.planted++
			sum.found++
		default:
			sum.planted++
			tell("%s: missed at %s: %s “%s”", c.name, verify.Clock(m.at), m.kind, m.words)
		}
	}
	for _, f := range report.Findings {
		if !slices.ContainsFunc(c.marks, func(m mark) bool { return m.isPlanted() && m.is(f) }) {
			sum.wrong++
			tell("%s: false at %s: %s “%s”, written “%s” in “%s”: … %s …", c.name, verify.Clock(f.At), f.Kind, f.Said, f.Written, f.Line, f.Words)
		}
	}
	return sum
}

// The bar: at least 97 % of the planted disagreements are found and at most 3 %
// of the findings are false.
const (
	barFound = 97
	barFalse = 3
)

func (a tally) meets(found, wrong int) bool {
	return a.found*100 >= a.planted*found && a.wrong*100 <= a.findings*wrong
}

func TestTheBar(t *testing.T) {
	var sum tally
	for _, c := range readCuts(t) {
		if c.heldOut() {
			continue
		}
		one := c.judged(t.Logf)
		t.Logf("%s: %v", c.name, one)
		sum.add(one)
	}
	t.Logf("tuned on: %v", sum)
	if !sum.meets(barFound, barFalse) {
		t.Errorf("tuned on: %v", sum)
	}
}

// heldOutSets are the sets of cuts that nobody looks into, by their first numbers.
var heldOutSets = []string{"17", "za", "zz"}

// setOf gives the held-out set of a cut.
func (c cut) setOf() string {
	set := ""
	for _, first := range heldOutSets {
		if c.name >= first {
			set = first
		}
	}
	return set
}

// What is reached on cuts that nobody looks into: 846 of 897 (94.3 %), and 33 of
// 881 findings false (3.7 %). The aim is the same bar, and it is not met yet. Only
// the figures are told, lest anybody tune.
const (
	heldOutFound = 93
	heldOutFalse = 5
)

func TestTheBarHeldOut(t *testing.T) {
	var sum tally
	sets := map[string]tally{}
	for _, c := range readCuts(t) {
		if c.heldOut() {
			one := c.judged(func(string, ...any) {})
			sum.add(one)
			set := sets[c.setOf()]
			set.add(one)
			sets[c.setOf()] = set
		}
	}
	for _, set := range heldOutSets {
		t.Logf("held out, from %s on: %v", set, sets[set])
	}
	t.Logf("held out: %v", sum)
	if !sum.meets(heldOutFound, heldOutFalse) {
		t.Errorf("held out: %v", sum)
	}
}
