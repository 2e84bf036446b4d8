package verify_test

import (
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/verify"
)

// snippet is a sentence or two of a cut, of which it is known what is wrong.
// A bar in said ends a caption. Each of want is "kind: said | written", with the
// slip, if one is named, in brackets behind it. What the snippet does not say is
// not looked at but where want asks for it.
type snippet struct {
	recipe, said string
	want         []string
}

// captions cuts said into captions of four seconds, one right behind another.
func captions(said string) []verify.Cue {
	var cues []verify.Cue
	for i, line := range strings.Split(said, "|") {
		start := time.Duration(i) * 4 * time.Second
		cues = append(cues, verify.Cue{Start: start, End: start + 4*time.Second, Text: line})
	}
	return cues
}

// worded writes a finding as snippets want it.
func worded(f verify.Finding) string {
	text := string(f.Kind) + ": " + f.Said
	if f.Written != "" {
		text += " | " + f.Written
	}
	if f.Slip != "" {
		text += " (" + string(f.Slip) + ")"
	}
	return text
}

func (s snippet) findings(r string) []string {
	var got []string
	for _, f := range checker.Check(read(r), captions(s.said)).Findings {
		if f.Kind != verify.NotSaid {
			got = append(got, worded(f))
		}
	}
	return got
}

func runSnippets(t *testing.T, all []snippet) {
	t.Helper()
	for _, s := range all {
		t.Run(s.recipe+"/"+s.said, func(t *testing.T) {
			text, ok := snippetRecipes[s.recipe]
			if !ok {
				t.Fatalf("no recipe %q", s.recipe)
			}
			if diff := cmp.Diff(s.want, s.findings(text)); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}
