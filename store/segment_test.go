package store_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/script"
	"benchproof/store"
)

// titles are an episode's segments in their order, by title.
func titles(t testing.TB, st *store.Store, episodeID int64) string {
	t.Helper()
	var all []string
	for i, g := range must(st.Segments(t.Context(), episodeID))(t) {
		if g.Position != i+1 {
			t.Errorf("segment %q stands at %d, want %d", g.Title, g.Position, i+1)
		}
		all = append(all, g.Title)
	}
	return strings.Join(all, " ")
}

// addSegments puts segments into the running order and gives their ids by title.
func addSegments(t testing.TB, st *store.Store, episodeID int64, names ...string) map[string]int64 {
	t.Helper()
	ids := map[string]int64{}
	for _, name := range names {
		ids[name] = must(st.AddSegment(t.Context(), episode.Segment{EpisodeID: episodeID, Title: name}))(t)
	}
	return ids
}

func TestTheRunningOrder(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	other := addEpisode(t, st, "two")
	addSegments(t, st, other, "x", "y")
	ids := addSegments(t, st, id, "a", "b", "c", "d")
	steps := []struct {
		name string
		make func() error
		want string
	}{
		{"as added", func() error { return nil }, "a b c d"},
		{"one put second", func() error {
			_, err := st.AddSegment(t.Context(), episode.Segment{EpisodeID: id, Title: "e", Position: 2})
			return err
		}, "a e b c d"},
		{"one put far behind", func() error {
			_, err := st.AddSegment(t.Context(), episode.Segment{EpisodeID: id, Title: "f", Position: 99})
			return err
		}, "a e b c d f"},
		{"down by two", func() error { return st.MoveSegment(t.Context(), ids["a"], 2) }, "e b a c d f"},
		{"no further than the top", func() error { return st.MoveSegment(t.Context(), ids["c"], -50) }, "c e b a d f"},
		{"no further than the end", func() error { return st.MoveSegment(t.Context(), ids["c"], 50) }, "e b a d f c"},
		{"by nothing", func() error { return st.MoveSegment(t.Context(), ids["b"], 0) }, "e b a d f c"},
		{"deleted", func() error { return st.DeleteSegment(t.Context(), ids["b"]) }, "e a d f c"},
		{"another moved meanwhile", func() error { return st.MoveSegment(t.Context(), ids["a"], -1) }, "a e d f c"},
		{"restored", func() error { return st.Restore(t.Context(), store.SegmentKind, ids["b"]) }, "a b e d f c"},
	}
	for _, step := range steps {
		t.Run(step.name, func(t *testing.T) {
			ok(t, step.make())
			if got := titles(t, st, id); got != step.want {
				t.Errorf("the order is %q, want %q", got, step.want)
			}
		})
	}
	if got := titles(t, st, other); got != "x y" {
		t.Errorf("the other episode's order is %q", got)
	}
}

// What an alignment depends on is told by the segments as they are listed: each
// change shows in its print.
func TestSegmentsListedAreThoseSaved(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	ids := addSegments(t, st, id, "a", "b")
	print := func() string {
		return script.AlignmentPrint(episode.Cut{ID: 1}, must(st.Segments(t.Context(), id))(t), nil)
	}
	edit := func(change func(*episode.Segment)) func() error {
		return func() error {
			g := must(st.Segment(t.Context(), ids["a"]))(t)
			change(&g)
			return st.SaveSegment(t.Context(), g)
		}
	}
	before := map[string]string{print(): "as added"}
	for _, change := range []struct {
		name string
		make func() error
	}{
		{"title", edit(func(g *episode.Segment) { g.Title = "aa" })},
		{"narration", edit(func(g *episode.Segment) { g.Narration = "One two." })},
		{"length", edit(func(g *episode.Segment) { g.PlannedSeconds = 9 })},
		{"order", func() error { return st.MoveSegment(t.Context(), ids["a"], 1) }},
		{"deletion", func() error { return st.DeleteSegment(t.Context(), ids["a"]) }},
	} {
		ok(t, change.make())
		now := print()
		if was, had := before[now]; had {
			t.Errorf("after %s the print is that of %s", change.name, was)
		}
		before[now] = change.name
	}
	ok(t, st.Restore(t.Context(), store.SegmentKind, ids["a"]))
	if got := before[print()]; got != "order" {
		t.Errorf("after undo the print is that of %q, want that before the deletion", got)
	}
}

func TestSegmentsThatAreNotThere(t *testing.T) {
	st := open(t)
	_, err := st.Segment(t.Context(), 4711)
	wantFault(t, err, fault.NotFound)
	wantFault(t, st.MoveSegment(t.Context(), 4711, 1), fault.NotFound)
	wantFault(t, st.DeleteSegment(t.Context(), 4711), fault.NotFound)
	wantFault(t, st.SaveSegment(t.Context(), episode.Segment{ID: 4711, Revision: 1}), fault.NotFound)
	_, err = st.AddSegment(t.Context(), episode.Segment{EpisodeID: 4711, Title: "a"})
	wantFault(t, err, fault.NotFound)
	if all := must(st.Segments(t.Context(), 4711))(t); len(all) != 0 {
		t.Errorf("an episode that is not there has %d segments", len(all))
	}
}

// A chapter set by hand goes with its segment, wherever that is moved.
func TestAChapterStartStaysWithItsSegment(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	ids := addSegments(t, st, id, "a", "b", "c")
	ok(t, st.SetChapterStart(t.Context(), ids["a"], 10))
	ok(t, st.SetChapterStart(t.Context(), ids["c"], 90))
	ok(t, st.MoveSegment(t.Context(), ids["a"], 2))
	g := must(st.Segment(t.Context(), ids["c"]))(t)
	g.Title = "cc"
	ok(t, st.SaveSegment(t.Context(), g))
	same(t, "starts", must(st.ChapterStarts(t.Context(), id))(t), map[int64]int{ids["a"]: 10, ids["c"]: 90})
	if got := titles(t, st, id); got != "b cc a" {
		t.Errorf("the order is %q", got)
	}
}

func TestFindingsHaveABound(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	var keys []string
	for i := range 2500 {
		keys = append(keys, strings.Repeat("k", i%50)+string(rune('a'+i/50)))
	}
	ok(t, st.KeepFindings(t.Context(), id, keys))
	if got := seasonOf(t, st, id).Facts.Findings; got != 2000 {
		t.Errorf("%d findings are kept of 2500, want 2000", got)
	}
}
