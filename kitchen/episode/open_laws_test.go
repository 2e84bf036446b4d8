package episode_test

import (
	"maps"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/episode"
)

// anyFacts are facts of any episode, possible or not.
func anyFacts(t *rapid.T) episode.Facts {
	few := func(name string) int { return rapid.IntRange(0, 3).Draw(t, name) }
	is := func(name string) bool { return rapid.Bool().Draw(t, name) }
	return episode.Facts{
		Stage:            rapid.SampledFrom(episode.Stages).Draw(t, "stage"),
		HasDish:          is("dish"),
		HasReleaseDate:   is("date"),
		TargetMinutes:    rapid.IntRange(0, 30).Draw(t, "target"),
		HasRecipe:        is("recipe"),
		UnreadLines:      few("unread"),
		Questions:        few("questions"),
		Proved:           few("proved"),
		Nearly:           few("nearly"),
		NotYet:           few("not yet"),
		OtherTrials:      few("others"),
		TriedAtScale:     is("scale"),
		Batches:          few("batches"),
		ShootBatches:     few("shoot batches"),
		ToBuy:            few("to buy"),
		Segments:         few("segments"),
		WithoutNarration: few("silent"),
		PlannedSeconds:   rapid.IntRange(0, 4000).Draw(t, "seconds"),
		Shots:            few("shots"),
		Missing:          few("missing"),
		ToRetake:         few("to retake"),
		HasCut:           is("cut"),
		HasCaptions:      is("captions"),
		HasTitle:         is("title"),
		HasOpening:       is("opening"),
		TitleOver:        few("title over"),
		DescriptionOver:  few("description over"),
		UnsureAllergens:  few("unsure"),
		Findings:         few("findings"),
		HasVideoURL:      is("video"),
		ShareLinkLive:    is("link"),
	}
}

// TestStillOpenLaws: sheets follow the week, nothing is said twice, and a
// released episode is asked for nothing that can no longer be done.
func TestStillOpenLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := anyFacts(t)
		seen := map[episode.Open]bool{}
		last := 0
		for _, open := range episode.StillOpen(f) {
			at := slices.Index(episode.SheetNames, open.Sheet)
			if at < last {
				t.Fatalf("%q of sheet %q stands after a later sheet", open.Text, open.Sheet)
			}
			if seen[open] {
				t.Fatalf("%q is said twice", open.Text)
			}
			if f.Stage == episode.Released && open.Sheet != "recipe" && open.Sheet != "cut" && open.Sheet != "release" {
				t.Fatalf("a released episode is asked for %q", open.Text)
			}
			seen[open], last = true, at
		}
	})
}

// TestStillOpenShrinksAsWorkIsDone: doing one thing never opens more than it
// closes, except that a recipe can then be tried.
func TestStillOpenShrinksAsWorkIsDone(t *testing.T) {
	work := map[string]func(*episode.Facts){
		"name the dish":   func(f *episode.Facts) { f.HasDish = true },
		"set the date":    func(f *episode.Facts) { f.HasReleaseDate = true },
		"read the lines":  func(f *episode.Facts) { f.UnreadLines = 0 },
		"answer":          func(f *episode.Facts) { f.Questions = 0 },
		"buy":             func(f *episode.Facts) { f.ToBuy = 0 },
		"shoot":           func(f *episode.Facts) { f.Missing, f.ToRetake = 0, 0 },
		"caption the cut": func(f *episode.Facts) { f.HasCut, f.HasCaptions = true, true },
		"title":           func(f *episode.Facts) { f.HasTitle = true },
		"open":            func(f *episode.Facts) { f.HasOpening = true },
		"shorten":         func(f *episode.Facts) { f.TitleOver, f.DescriptionOver = 0, 0 },
		"settle":          func(f *episode.Facts) { f.Findings = 0 },
		"ask":             func(f *episode.Facts) { f.UnsureAllergens = 0 },
		"share":           func(f *episode.Facts) { f.ShareLinkLive = true },
		"link the video":  func(f *episode.Facts) { f.HasVideoURL = true },
	}
	rapid.Check(t, func(t *rapid.T) {
		before := anyFacts(t)
		for name, do := range work {
			after := before
			do(&after)
			if more, had := len(episode.StillOpen(after)), len(episode.StillOpen(before)); more > had {
				t.Fatalf("to %s opens %d things where %d were", name, more, had)
			}
		}
	})
}

// TestWhatIsWrongStaysWrong: what is still open after the release was open
// before it, but for what only a released episode can lack; and only something
// false is marked as wrong.
func TestWhatIsWrongStaysWrong(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := anyFacts(t)
		f.Stage, f.HasRecipe = episode.InTheEdit, true
		before := episode.StillOpen(f)
		f.Stage = episode.Released
		for _, open := range episode.StillOpen(f) {
			isNew := open.Text == "The video's address is missing" || strings.HasPrefix(open.Text, "No live share link")
			if !isNew && !slices.Contains(before, open) {
				t.Fatalf("%+v is open after the release only", open)
			}
		}
		for _, open := range before {
			if open.Wrong != (open.Sheet == "cut" && f.Findings > 0 && strings.Contains(open.Text, "otherwise than written")) {
				t.Fatalf("%+v: wrong is what is said otherwise than written, and no more", open)
			}
		}
	})
}

// TestFiguresAreSaid: every count above zero stands in the list as a figure, and
// every one of zero is not spoken of.
func TestFiguresAreSaid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := ready()
		counts := map[string]*int{
			"of the recipe not read": &f.UnreadLines, "about the recipe to answer": &f.Questions, "to buy": &f.ToBuy, "without narration": &f.WithoutNarration,
			"missing": &f.Missing, "to retake": &f.ToRetake, "said otherwise than written": &f.Findings, "over the title limit": &f.TitleOver,
			"over the description limit": &f.DescriptionOver, "Allergens not known for": &f.UnsureAllergens,
		}
		for _, words := range slices.Sorted(maps.Keys(counts)) {
			*counts[words] = rapid.IntRange(0, 1200).Draw(t, words)
		}
		open := episode.StillOpen(f)
		for words, n := range counts {
			k := slices.IndexFunc(open, func(o episode.Open) bool { return strings.Contains(o.Text, words) })
			if (k >= 0) != (*n > 0) {
				t.Fatalf("%d %s, and the list is %v", *n, words, open)
			}
			if k >= 0 && !slices.Contains(strings.Fields(open[k].Text), strconv.Itoa(*n)) {
				t.Fatalf("%d %s is told as %q", *n, words, open[k].Text)
			}
		}
	})
}
