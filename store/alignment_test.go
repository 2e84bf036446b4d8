package store_test

import (
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/script"
	"benchproof/store"
)

// someAlignment has every field set, to values that can be kept.
func someAlignment(print string) script.Alignment {
	return script.Alignment{
		Print: print,
		End:   time.Hour + 23*time.Millisecond,
		Starts: []script.Start{
			{Segment: 0, Found: true, Cue: 7, At: 83450 * time.Millisecond, Confidence: 0.29},
			{Segment: 1},
			{Segment: 2, Found: true, Cue: 901, At: 59 * time.Minute, Confidence: 1},
		},
		Stretches: []script.Stretch{{Words: 120, Spoke: 48001 * time.Millisecond}, {Words: 3, Spoke: time.Second}},
	}
}

// alignment is what is kept of an episode's current cut, and the cut.
func alignment(t testing.TB, st *store.Store, episodeID int64) (episode.Cut, script.Alignment) {
	t.Helper()
	cut, kept, err := st.Alignment(t.Context(), episodeID)
	ok(t, err)
	return cut, kept
}

func TestAlignmentIsKept(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	_, _, err := st.Alignment(t.Context(), id)
	wantFault(t, err, fault.NotFound)

	first := must(st.AddCut(t.Context(), episode.Cut{EpisodeID: id, Name: "rough", Captions: "WEBVTT"}))(t)
	cut, kept := alignment(t, st, id)
	same(t, "the cut", cut, episode.Cut{ID: first, EpisodeID: id, Revision: 1})
	same(t, "before any is kept", kept, script.Alignment{})

	ok(t, st.KeepAlignment(t.Context(), first, someAlignment("a")))
	_, kept = alignment(t, st, id)
	same(t, "as kept", kept, someAlignment("a"))
	ok(t, st.KeepAlignment(t.Context(), first, script.Alignment{Print: "b"}))
	_, kept = alignment(t, st, id)
	same(t, "in place of the one before", kept, script.Alignment{Print: "b"})
}

// It belongs to the cut: another one has its own, a saved one tells by its
// revision, and one that is deleted takes it along.
func TestAlignmentGoesWithTheCut(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	first := must(st.AddCut(t.Context(), episode.Cut{EpisodeID: id, Name: "rough"}))(t)
	ok(t, st.KeepAlignment(t.Context(), first, someAlignment("first")))
	second := must(st.AddCut(t.Context(), episode.Cut{EpisodeID: id, Name: "fine"}))(t)
	expect := func(when string, want episode.Cut, print string) {
		t.Helper()
		want.EpisodeID = id
		cut, kept := alignment(t, st, id)
		same(t, when, cut, want)
		if kept.Print != print {
			t.Errorf("%s: the alignment kept is %q, want %q", when, kept.Print, print)
		}
	}
	expect("a second cut", episode.Cut{ID: second, Revision: 1}, "")
	ok(t, st.UseCut(t.Context(), first))
	expect("the first used again", episode.Cut{ID: first, Revision: 1}, "first")
	ok(t, st.SaveCut(t.Context(), episode.Cut{ID: first, EpisodeID: id, Name: "rough", Revision: 1, Captions: "WEBVTT"}))
	expect("saved", episode.Cut{ID: first, Revision: 2}, "first")

	ok(t, st.DeleteCut(t.Context(), first))
	expect("the first deleted", episode.Cut{ID: second, Revision: 1}, "")
	ok(t, st.KeepAlignment(t.Context(), first, someAlignment("too late")))
	ok(t, st.Restore(t.Context(), store.CutKind, first))
	expect("and back", episode.Cut{ID: first, Revision: 2}, "first")

	ok(t, st.DeleteCut(t.Context(), first))
	ok(t, st.PurgeDeleted(t.Context(), time.Now().Add(time.Hour)))
	if left := column(t, st.Raw(), "SELECT print FROM alignment"); left != nil {
		t.Errorf("the purged cut leaves %q", left)
	}
	ok(t, st.KeepAlignment(t.Context(), 4711, someAlignment("of no cut")))
}

// What is kept in a way that nobody can read is an error, not a wrong chapter.
func TestBrokenAlignmentsAreRefused(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	cut := must(st.AddCut(t.Context(), episode.Cut{EpisodeID: id}))(t)
	ok(t, st.KeepAlignment(t.Context(), cut, someAlignment("a")))
	for _, set := range []string{"starts = 'true' || char(9) || 'x'", "stretches = 'many'"} {
		_, err := st.Raw().ExecContext(t.Context(), "UPDATE alignment SET "+set)
		ok(t, err)
		if _, _, err := st.Alignment(t.Context(), id); err == nil {
			t.Errorf("%s is read without an error", set)
		}
		ok(t, st.KeepAlignment(t.Context(), cut, someAlignment("a")))
	}
}

// It is asked for with every page of an episode, and must not read the captions:
// the query names none, and goes by index.
func TestAlignmentReadsNoCaptions(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	must(st.AddCut(t.Context(), episode.Cut{EpisodeID: id}))(t)
	alignment(t, st, id)
	checked := 0
	for _, text := range st.Statements() {
		if !strings.Contains(text, "LEFT JOIN alignment") {
			continue
		}
		checked++
		if strings.Contains(text, "captions") {
			t.Errorf("it reads captions: %s", text)
		}
		for _, detail := range plan(t, st, text) {
			if strings.HasPrefix(detail, "SCAN ") || strings.Contains(detail, "TEMP B-TREE") {
				t.Errorf("%s: in %s", detail, text)
			}
		}
	}
	if checked != 1 {
		t.Errorf("%d statements checked, want 1", checked)
	}
}

// BenchmarkAlignment bounds what every page of an episode asks: the same for a
// cut of four hours.
func BenchmarkAlignment(b *testing.B) {
	for name, bytes := range map[string]int{"no captions": 0, "4 h": 700_000} {
		b.Run(name, func(b *testing.B) {
			st := open(b)
			id := addEpisode(b, st, "one")
			cut := must(st.AddCut(b.Context(), episode.Cut{EpisodeID: id, Captions: strings.Repeat("x", bytes)}))(b)
			a := someAlignment("a")
			for len(a.Starts) < 60 {
				a.Starts = append(a.Starts, a.Starts[0])
			}
			ok(b, st.KeepAlignment(b.Context(), cut, a))
			b.ReportAllocs()
			for b.Loop() {
				if _, _, err := st.Alignment(b.Context(), id); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
