package recipe_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

var update = flag.Bool("update", false, "rewrite the golden files")

// TestRecipesGolden reads whole recipes in many styles, all written for this
// project, and compares what was understood with the golden file beside each.
func TestRecipesGolden(t *testing.T) {
	files, err := filepath.Glob("testdata/recipes/*.txt")
	more, also := filepath.Glob("testdata/corpus/recipes/[01]*.txt")
	if err != nil || also != nil || len(files) < 12 || len(more) < 12 {
		t.Fatalf("found %d and %d recipes (%v, %v), want at least 12 each", len(files), len(more), err, also)
	}
	files = append(files, more...)
	r := recipe.Reader{Larder: larder(t)}
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txt"), func(t *testing.T) {
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			got := understood(r.Read(string(text)))
			golden := strings.TrimSuffix(file, ".txt") + ".golden"
			if *update {
				if err := os.WriteFile(golden, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
				return
			}
			want, err := os.ReadFile(golden)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(string(want), got); diff != "" {
				t.Errorf("%s reads otherwise than its golden file says (-want +got):\n%s", file, diff)
			}
		})
	}
}

// understood writes everything a reading holds, one fact a line.
func understood(r recipe.Recipe) string {
	var b strings.Builder
	say := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	say("title: %s", r.Title)
	say("yield: %s | of %q | %q", exact(r.Yield.Amount), r.Yield.Of, r.Yield.Text)
	if r.System != "" {
		say("system: %s", r.System)
	}
	for _, part := range []struct {
		name  string
		lines []string
	}{{"intro", r.Intro}, {"equipment", r.Equipment}, {"notes", r.Notes}, {"credits", r.Credits}} {
		for _, l := range part.lines {
			say("%s: %s", part.name, l)
		}
	}
	for _, u := range r.Unread {
		say("unread: %d %s (%s)", u.Number, u.Text, u.Reason)
	}
	for _, c := range r.Components {
		say("\n[%s]", c.Name)
		for _, l := range c.Lines {
			say("%3d %s | %s", l.Number, reading(l), l.FoodID)
			if l.Reason != "" {
				say("    look: %s", l.Reason)
			}
		}
		for _, s := range c.Steps {
			sayStep(say, r, s)
		}
	}
	say("")
	for _, task := range r.Sequence() {
		say("step %v after %v", task.At, task.After)
	}
	return b.String()
}

func sayStep(say func(string, ...any), r recipe.Recipe, s recipe.Step) {
	minutes, hands := "-", "unattended"
	if s.HasMinutes {
		minutes = measure.FormatMinutes(s.Minutes)
	}
	if s.HandsOn {
		hands = "hands"
	}
	say("%3d %s", s.Number, s.Text)
	say("    %s | %s | %s | cue %q", minutes, s.Station, hands, s.Cue)
	for _, h := range s.Temperatures {
		say("    heat %s", strings.TrimSpace(exact(measure.Amount{Range: h.Degrees})+" "+h.Scale+" "+h.Oven))
	}
	if s.Reason != "" {
		say("    look: %s", s.Reason)
	}
	for _, u := range s.Uses {
		what := r.Components[u.Component].Name + " as made"
		if u.Line >= 0 {
			what = r.Components[u.Component].Lines[u.Line].Food + " of " + fmt.Sprintf("%q", r.Components[u.Component].Name)
		}
		part := ""
		if u.HasAmount {
			part = ", " + exact(u.Amount)
		}
		say("    uses %s: %q%s", what, u.Words, part)
	}
	if s.Finishes != "" {
		say("    finishes %s", s.Finishes)
	}
}
