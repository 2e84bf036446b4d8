package recipe_test

import (
	"bufio"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// corpusCase is one pair of "<" and ">" in testdata/lines.
type corpusCase struct {
	file, line, want string
	number           int
	miss             bool // a known miss: the wanted reading is right, ours is not
}

func readCorpus(t testing.TB) []corpusCase {
	t.Helper()
	files, err := filepath.Glob("testdata/lines/*.txt")
	if err != nil || len(files) == 0 {
		t.Fatalf("no corpus: %v", err)
	}
	var cases []corpusCase
	for _, name := range files {
		f, err := os.Open(name)
		if err != nil {
			t.Fatal(err)
		}
		scan := bufio.NewScanner(f)
		for n := 1; scan.Scan(); n++ {
			text := scan.Text()
			switch {
			case strings.HasPrefix(text, "< "):
				cases = append(cases, corpusCase{file: filepath.Base(name), number: n, line: text[2:]})
			case strings.HasPrefix(text, "> "):
				want, miss := strings.CutSuffix(text[2:], " | miss")
				cases[len(cases)-1].want, cases[len(cases)-1].miss = want, miss
			}
		}
		if err := scan.Err(); err != nil {
			t.Fatal(err)
		}
		_ = f.Close()
	}
	return cases
}

// reading writes a line as the corpus does.
func reading(l recipe.Line) string {
	if !l.Read {
		return "not read"
	}
	parts := []string{"-", l.Food}
	if l.HasAmount {
		parts[0] = exact(l.Amount)
	}
	add := func(key, value string) {
		if value != "" {
			parts = append(parts, strings.TrimSpace(key+" "+value))
		}
	}
	flag := func(key string, on bool) {
		if on {
			parts = append(parts, key)
		}
	}
	add("size", l.Size)
	if !l.Packs.Count.IsZero() {
		add("packs", strings.TrimSpace(exact(measure.Amount{Range: l.Packs.Count})+" × "+exact(l.Packs.Size)+" "+string(l.Packs.Unit)))
	}
	for _, a := range l.Plus {
		add("plus", exact(a))
	}
	for _, a := range l.Equals {
		add("equals", exact(a))
	}
	add("prep", l.Preparation)
	flag("about", l.About)
	flag("taste", l.ToTaste)
	flag("optional", l.Optional)
	flag("divided", l.Divided)
	add("note", l.Note)
	add("system", string(l.System))
	flag("look", l.Reason != "")
	return strings.Join(parts, " | ")
}

func exact(a measure.Amount) string {
	text := a.From.String()
	if !a.IsSingle() {
		text += "–" + a.To.String()
	}
	return strings.TrimSpace(text + " " + string(a.Unit))
}

// canonical puts the keyed fields of an expectation in the order reading uses.
func canonical(want string) string {
	fields := strings.Split(want, " | ")
	if len(fields) < 2 {
		return want
	}
	out := fields[:2:2]
	for _, key := range []string{"size", "packs", "plus", "equals", "prep", "about", "taste", "optional", "divided", "note", "system", "look"} {
		for _, f := range fields[2:] {
			if word, _, _ := strings.Cut(f, " "); word == key {
				out = append(out, f)
			}
		}
	}
	if len(out) != len(fields) {
		return "unknown key in: " + want
	}
	return strings.Join(out, " | ")
}

// TestLineCorpus reads every line of testdata/lines. The lines and what they
// mean were written by hand for this project: common practice, no source.
func TestLineCorpus(t *testing.T) {
	r := recipe.Reader{Larder: larder(t)}
	right, total := 0, 0
	for _, c := range readCorpus(t) {
		total++
		got, want := reading(r.ReadLine(c.line)), canonical(c.want)
		switch {
		case got == want && c.miss:
			t.Errorf("%s:%d: %q is read now; take it off the known misses", c.file, c.number, c.line)
		case got == want:
			right++
		case !c.miss:
			t.Errorf("%s:%d: %q\n got %s\nwant %s", c.file, c.number, c.line, got, want)
		}
	}
	if total < 300 {
		t.Errorf("the corpus has %d lines, want at least 300", total)
	}
	if share := 100 * float64(right) / float64(total); share < 98 {
		t.Errorf("%d of %d lines are read right, %.1f %%: want at least 98 %%", right, total, share)
	} else {
		t.Logf("%d of %d lines are read right, %.1f %%", right, total, share)
	}
}
