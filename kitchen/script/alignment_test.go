package script_test

import (
	"crypto/sha256"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
)

// Two alignments have one print only if nothing differs that they depend on,
// however the texts of one run into those of the next.
func TestAlignmentPrint(t *testing.T) {
	cut := episode.Cut{ID: 3, Revision: 2}
	segments := func(change func(s []episode.Segment)) []episode.Segment {
		s := []episode.Segment{{Title: "Hello", Narration: "Good morning."}, {Title: "The rub", PlannedSeconds: 30}}
		change(s)
		return s
	}
	steps := []string{"Rub the butter.", "Bake."}
	same := segments(func([]episode.Segment) {})
	prints := map[string]string{"": script.AlignmentPrint(cut, same, steps)}
	for name, print := range map[string]string{
		"another cut":        script.AlignmentPrint(episode.Cut{ID: 4, Revision: 2}, same, steps),
		"a revision of it":   script.AlignmentPrint(episode.Cut{ID: 3, Revision: 3}, same, steps),
		"a title":            script.AlignmentPrint(cut, segments(func(s []episode.Segment) { s[0].Title = "Hallo" }), steps),
		"a narration":        script.AlignmentPrint(cut, segments(func(s []episode.Segment) { s[1].Narration = "Rub." }), steps),
		"a length":           script.AlignmentPrint(cut, segments(func(s []episode.Segment) { s[1].PlannedSeconds = 31 }), steps),
		"the order":          script.AlignmentPrint(cut, segments(func(s []episode.Segment) { s[0], s[1] = s[1], s[0] }), steps),
		"one less":           script.AlignmentPrint(cut, same[:1], steps),
		"a word moved over":  script.AlignmentPrint(cut, segments(func(s []episode.Segment) { s[0].Title, s[0].Narration = "HelloGood", " morning." }), steps),
		"a step":             script.AlignmentPrint(cut, same, []string{"Rub the butter.", "Fry."}),
		"steps run together": script.AlignmentPrint(cut, same, []string{"Rub the butter.Bake."}),
		"no steps":           script.AlignmentPrint(cut, same, nil),
	} {
		for other, had := range prints {
			if had == print {
				t.Errorf("%s: the print is that of %q", name, other)
			}
		}
		prints[name] = print
	}
	alike := episode.Cut{ID: 3, Revision: 2, Name: "renamed", Seconds: 9, Captions: "not looked at"}
	moved := segments(func(s []episode.Segment) { s[0].ID, s[0].Position, s[0].Revision = 8, 9, 10 })
	if got := script.AlignmentPrint(alike, moved, steps); got != prints[""] {
		t.Error("the print depends on what the alignment does not")
	}
}

func TestAlignCut(t *testing.T) {
	segments := []episode.Segment{{Title: "Dough", Narration: "Sieve the flour into a basin with the salt."}}
	cut := episode.Cut{ID: 1, Revision: 1, Captions: script.WriteVTT(talk(0, speech))}
	got := script.AlignCut(cut, segments, nil)
	captions, err := script.ReadCaptions(cut.Captions)
	if err != nil {
		t.Fatal(err)
	}
	starts := script.Align(segments, nil, captions)
	want := script.Alignment{Print: script.AlignmentPrint(cut, segments, nil), End: captions.End(), Starts: starts, Stretches: script.Stretches(captions, starts)}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("AlignCut (-want +got):\n%s", diff)
	}
	for _, captions := range []string{"", "no captions", "WEBVTT\n\n00:01 --> 00:02\nbroken\n"} {
		none := script.AlignCut(episode.Cut{ID: 1, Captions: captions}, segments, nil)
		if none.Starts != nil || none.End != 0 || none.Print == "" {
			t.Errorf("captions %q give %+v", captions, none)
		}
	}
}

// Alignments are kept by older programs. When this sum changes, the same cut is
// aligned otherwise than before: raise the edition in alignment.go, so that
// nobody is shown the old one, and put both here.
func TestTheEditionGoesUpWithWhatAlignGives(t *testing.T) {
	const edition, sum = 4, "ce5bd49a8a87fedb"
	all := sha256.New()
	for _, c := range readCuts(t) {
		if c.name >= "13" {
			continue
		}
		var steps []string
		for line := range strings.Lines(readFile(t, "../verify/testdata/cuts/"+c.name+".recipe.txt")) {
			if _, step, isStep := strings.Cut(line, ". "); isStep && line[0] >= '1' && line[0] <= '9' {
				steps = append(steps, step)
			}
		}
		bare := make([]episode.Segment, len(c.segments))
		for i, s := range c.segments {
			bare[i].Title = s.Title
		}
		for _, segments := range [][]episode.Segment{c.segments, bare} {
			for _, s := range script.Align(segments, steps, c.captions) {
				fmt.Fprintln(all, s.Segment, s.Found, s.At.Round(time.Second), s.Confidence < script.LowConfidence)
			}
		}
	}
	if got := fmt.Sprintf("%x", all.Sum(nil)[:8]); got != sum || script.Edition != edition {
		t.Errorf("edition %d gives %s, was edition %d with %s", script.Edition, got, edition, sum)
	}
}
