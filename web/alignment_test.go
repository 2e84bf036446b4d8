package web_test

import (
	"fmt"
	"net/http"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/script"
	"benchproof/store"
)

// longerCut is cutOfThree with ten seconds put in before the oven, so that
// every chapter is long enough.
var longerCut = strings.NewReplacer("00:00:24.000", "00:00:34.000", "00:00:40.000", "00:00:50.000").Replace(cutOfThree)

// alignment is what is kept of episode 1's current cut, and what reckoning it
// anew gives.
func (s *site) alignment() (kept, anew script.Alignment) {
	ctx := s.t.Context()
	current := must(s.store.CurrentCut(ctx, 1))
	version := must(s.store.Version(ctx, must(s.store.Episode(ctx, 1)).VersionID))
	_, kept, err := s.store.Alignment(ctx, 1)
	if err != nil {
		s.t.Fatal(err)
	}
	return kept, script.AlignCut(current, must(s.store.Segments(ctx, 1)), script.Steps(version.Reading))
}

// Whatever changes that chapters are reckoned from, the next page that shows
// them has them right, be it the viewers', and what is kept is what it shows.
func TestChaptersAreNeverStale(t *testing.T) {
	s := newSite(t)
	threeSegments(s)
	s.saveCaptions("/episodes/1", cutOfThree)
	page := s.share("/episodes/1")
	ctx := t.Context()
	edit := func(change func(*episode.Segment)) func() error {
		return func() error {
			segment := must(s.store.Segment(ctx, 3))
			change(&segment)
			return s.store.SaveSegment(ctx, segment)
		}
	}
	use := func(title, recipe string) func() error {
		return func() error {
			reading, _ := readRecipe(t, recipe)
			_, version, err := s.store.AddRecipe(ctx, title, store.Version{Text: recipe, Reading: reading})
			if err != nil {
				return err
			}
			return s.store.UseVersion(ctx, 1, must(s.store.Episode(ctx, 1)).Revision, version, measure.Whole(1))
		}
	}
	changes := []struct {
		name string
		make func() error
	}{
		{"nothing", func() error { return nil }},
		{"the captions", func() error {
			cut := must(s.store.CurrentCut(ctx, 1))
			cut.Captions = longerCut
			return s.store.SaveCut(ctx, cut)
		}},
		{"a narration", edit(func(g *episode.Segment) { g.Narration = "The captain says hello, and so does his dog." })},
		{"no narration", edit(func(g *episode.Segment) { g.Narration = "" })},
		{"a title", edit(func(g *episode.Segment) { g.Title = "The captain's dog" })},
		{"a planned length", edit(func(g *episode.Segment) { g.PlannedSeconds = 600 })},
		{"another recipe, by whose steps it is told", use("Dogs", "Dogs\n\n1 dog\n\nMethod\n1. Say hello to the captain.\n2. Rub the dog.\n")},
		{"the order", func() error { return s.store.MoveSegment(ctx, 3, -1) }},
		{"a segment deleted", func() error { return s.store.DeleteSegment(ctx, 2) }},
		{"and back", func() error { return s.store.Restore(ctx, store.SegmentKind, 2) }},
		{"a segment more", func() error {
			_, err := s.store.AddSegment(ctx, episode.Segment{EpisodeID: 1, Title: "Bye"})
			return err
		}},
		{"another cut", func() error {
			_, err := s.store.AddCut(ctx, episode.Cut{EpisodeID: 1, Captions: cutOfThree})
			return err
		}},
		{"the cut before used again", func() error { return s.store.UseCut(ctx, 1) }},
		{"that cut deleted", func() error { return s.store.DeleteCut(ctx, 1) }},
		{"and back", func() error { return s.store.Restore(ctx, store.CutKind, 1) }},
		{"captions that cannot be read", func() error {
			cut := must(s.store.CurrentCut(ctx, 1))
			cut.Captions = "no captions"
			return s.store.SaveCut(ctx, cut)
		}},
	}
	for _, c := range changes {
		t.Run(c.name, func(t *testing.T) {
			if err := c.make(); err != nil {
				t.Fatal(err)
			}
			if got := s.get(page); got.status != http.StatusOK {
				t.Fatalf("the viewers' page = %d", got.status)
			}
			kept, anew := s.alignment()
			if diff := cmp.Diff(anew, kept); diff != "" {
				t.Errorf("kept (-reckoned anew +kept):\n%s", diff)
			}
		})
	}
}

// Nothing is reckoned again while nothing changed: pages show what is kept.
func TestPagesShowWhatIsKeptOfTheCut(t *testing.T) {
	s := newSite(t)
	at := threeSegments(s)
	s.post(at+"/release", "revision", "1", "title", "Scones", "video", "https://video.example/1")
	s.saveCaptions(at, longerCut)
	page := s.share(at)
	if body := s.get(page).body; !strings.Contains(body, `"startOffset": 15`) {
		t.Fatalf("the viewers' page has no chapter at 0:15:\n%s", body)
	}
	kept, _ := s.alignment()
	kept.Starts[1].At = 16 * time.Second
	if err := s.store.KeepAlignment(t.Context(), 1, kept); err != nil {
		t.Fatal(err)
	}
	if body := s.get(page).body; !strings.Contains(body, `"startOffset": 16`) {
		t.Error("the viewers' page reads the captions again")
	}
	s.shows(at+"/release", "0:16 The rub")
	s.shows(at+"/cut", "0:16")
	kept.Stretches = []script.Stretch{{Words: 500, Spoke: 5 * time.Minute}}
	kept.Print += "x" // of something else: it does not count
	if err := s.store.KeepAlignment(t.Context(), 1, kept); err != nil {
		t.Fatal(err)
	}
	s.shows(at+"/release", "0:15 The rub")
}

// BenchmarkSharedPage bounds a viewer's page: an hour's captions make it no
// slower than ten seconds'.
func BenchmarkSharedPage(b *testing.B) {
	for _, cues := range []int{4, 1800} {
		b.Run(fmt.Sprintf("cues=%d", cues), func(b *testing.B) {
			s := newSite(b)
			at := threeSegments(s)
			captions := []string{"WEBVTT\n"}
			for i := range cues {
				from := time.Duration(i) * 2 * time.Second
				captions = append(captions, fmt.Sprintf("%s --> %s\nRub the butter into the flour %d times\n", vttClock(from), vttClock(from+2*time.Second), i))
			}
			s.saveCaptions(at, strings.Join(captions, "\n"))
			page := s.share(at)
			b.ReportAllocs()
			for b.Loop() {
				if got := s.get(page); got.status != http.StatusOK {
					b.Fatal(got.status)
				}
			}
		})
	}
}

func vttClock(t time.Duration) string {
	return fmt.Sprintf("%02d:%02d:%02d.%03d", int(t.Hours()), int(t.Minutes())%60, int(t.Seconds())%60, t.Milliseconds()%1000)
}
