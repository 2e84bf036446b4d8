package recipe_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"

	"benchproof/kitchen/recipe"
)

// lost tells what of text the reading lacks: the law is that every line that is
// not blank has one place, and its words stand there. Bullets, numbers and
// labels may go.
func lost(text string, r recipe.Recipe) []string {
	var faults []string
	want := map[int]string{}
	for i, line := range lines(text) {
		if line != "" {
			want[i+1] = line
		}
	}
	placed := map[int]bool{}
	for _, p := range r.Placed {
		if placed[p.Number] || want[p.Number] != p.Text {
			faults = append(faults, "misplaced: "+p.Text)
		}
		placed[p.Number] = true
	}
	for n, line := range want {
		if !placed[n] {
			faults = append(faults, "no place: "+line)
		}
	}
	return append(faults, lostWords(r)...)
}

// lines cuts text as the reader must: at every kind of line end.
func lines(text string) []string {
	all := strings.Split(strings.NewReplacer("\r\n", "\n", "\r", "\n", "\u2028", "\n", "\u2029", "\n", "\v", "\n", "\f", "\n", "\u0085", "\n").
		Replace(strings.ToValidUTF8(text, "\ufffd")), "\n")
	for i := range all {
		all[i] = strings.TrimFunc(all[i], func(c rune) bool {
			return unicode.IsSpace(c) || strings.ContainsRune("\u200b\u200c\u200d\u2060\ufeff\x00", c)
		})
	}
	return all
}

// lostWords goes through the places and looks for each line's words where it
// was put.
func lostWords(r recipe.Recipe) []string {
	content := map[recipe.Part][]string{
		recipe.InTitle: {r.Title}, recipe.InYield: {r.Yield.Text}, recipe.InIntro: r.Intro, recipe.InNotes: r.Notes,
		recipe.InCredits: r.Credits, recipe.InEquipment: r.Equipment,
	}
	for _, u := range r.Unread {
		content[recipe.InUnread] = append(content[recipe.InUnread], u.Text)
	}
	numbered := map[int]string{}
	for _, c := range r.Components {
		for _, l := range c.Lines {
			numbered[l.Number] += " " + l.Text
		}
		for _, s := range c.Steps {
			numbered[s.Number] += " " + s.Text
		}
	}
	written := map[int]string{}
	for _, p := range r.Placed {
		written[p.Of] += " " + p.Text
	}
	var faults []string
	for _, p := range r.Placed {
		got := ""
		switch p.In {
		case recipe.InHeading, recipe.InComponent:
			continue
		case recipe.InLine, recipe.InStep:
			if p.Of != p.Number {
				continue
			}
			got = numbered[p.Number]
		default:
			if len(content[p.In]) == 0 {
				faults = append(faults, "not where it was put: "+p.Text)
				continue
			}
			got, content[p.In] = content[p.In][0], content[p.In][1:]
		}
		if missing := missingWords(written[p.Of], got); missing != "" {
			faults = append(faults, "words lost: "+missing+" of "+written[p.Of])
		}
	}
	return faults
}

// missingWords gives the words of want that got lacks, beyond the three at its
// start that can be a number or a label.
func missingWords(want, got string) string {
	have := map[string]int{}
	for _, w := range letters(got) {
		have[w]++
	}
	var missing []string
	all := letters(want)
	for i := len(all) - 1; i >= 0; i-- { // from the end, so that a number at the start is the one found missing
		if w := all[i]; have[w] > 0 {
			have[w]--
		} else if i >= 3 {
			missing = append(missing, w)
		}
	}
	return strings.Join(missing, " ")
}

func letters(text string) []string {
	return strings.FieldsFunc(text, func(c rune) bool { return !unicode.IsLetter(c) && !unicode.IsNumber(c) })
}

func TestNothingIsLost(t *testing.T) {
	files, _ := filepath.Glob("testdata/recipes/*.txt")
	more, _ := filepath.Glob("testdata/corpus/recipes/*.txt")
	for _, file := range append(files, more...) {
		t.Run(filepath.Base(file), func(t *testing.T) {
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			for _, fault := range lost(string(text), recipe.Reader{}.Read(string(text))) {
				t.Error(fault)
			}
		})
	}
}

// TestLawCatchesLoss shows that the law above can fail.
func TestLawCatchesLoss(t *testing.T) {
	text := "Buns\n\n200 g flour\n100 g butter, cold and diced\n\nMix it all.\n"
	r := recipe.Reader{}.Read(text)
	if faults := lost(text, r); len(faults) > 0 {
		t.Fatal(faults)
	}
	broken := recipe.Reader{}.Read(text)
	broken.Components[0].Lines = broken.Components[0].Lines[:1]
	if len(lost(text, broken)) == 0 {
		t.Error("a dropped line goes unnoticed")
	}
	broken = recipe.Reader{}.Read(text)
	broken.Placed = broken.Placed[1:]
	if len(lost(text, broken)) == 0 {
		t.Error("a line without a place goes unnoticed")
	}
}

// FuzzRead holds the law for any text: no crash, no lost line.
func FuzzRead(f *testing.F) {
	files, _ := filepath.Glob("testdata/recipes/*.txt")
	more, _ := filepath.Glob("testdata/corpus/recipes/*.txt")
	for _, file := range append(files, more...) {
		if text, err := os.ReadFile(file); err == nil {
			f.Add(string(text))
		}
	}
	f.Add("\ufeff# Buns\r\n\r\n**For the dough:**\r\n- [ ] 1/0 cup\r\n1) \u2028Step 2:\r\n(((\r\n--- \r\n½–¼ x\t200 g\r\nNotes: \r\n")
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > 4000 {
			return
		}
		r := recipe.Reader{}.Read(text)
		for _, fault := range lost(text, r) {
			t.Error(fault)
		}
		again := recipe.Text(r)
		for _, fault := range lost(again, recipe.Reader{}.Read(again)) {
			t.Error("written again: " + fault)
		}
	})
}
