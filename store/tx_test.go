package store_test

import (
	"fmt"
	"sync"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
)

// Reading goes on while a transaction writes, and sees none of it before the
// commit.
func TestReadersSeeCommittedDataOnly(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "before")
	ok(t, st.Transact(t.Context(), "rename", id, func(change func(string, ...any) error) error {
		if err := change("UPDATE episode SET title = 'after' WHERE episode_id = ?1", id); err != nil {
			return err
		}
		if e := must(st.Episode(t.Context(), id))(t); e.Title != "before" {
			t.Errorf("a reader sees %q before the commit", e.Title)
		}
		return nil
	}))
	if e := must(st.Episode(t.Context(), id))(t); e.Title != "after" {
		t.Errorf("a reader sees %q after the commit", e.Title)
	}
}

func TestATransactionThatFailsOrPanicsLeavesNothing(t *testing.T) {
	tests := []struct {
		name string
		end  func() error
	}{
		{"an error", func() error { return fault.Invalidf("", "No.") }},
		{"a panic", func() error { panic("no") }},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			st := open(t)
			id := addEpisode(t, st, "before")
			func() {
				defer func() { _ = recover() }()
				err := st.Transact(t.Context(), "rename", id, func(change func(string, ...any) error) error {
					ok(t, change("UPDATE episode SET title = 'after' WHERE episode_id = ?1", id))
					return test.end()
				})
				wantFault(t, err, fault.Invalid)
			}()
			if e := must(st.Episode(t.Context(), id))(t); e.Title != "before" {
				t.Errorf("the title is %q", e.Title)
			}
			e := must(st.Episode(t.Context(), id))(t)
			e.Title = "the writer still works"
			ok(t, st.SaveBrief(t.Context(), e))
		})
	}
}

// More goroutines than connections, all meeting statements for the first time:
// preparing one must never wait for a connection while holding another.
func TestManyCallersAtOnce(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Eggs")
	var group sync.WaitGroup
	for i := range 32 {
		group.Go(func() {
			ctx := t.Context()
			if _, err := st.Version(ctx, c.versionID); err != nil {
				t.Error(err)
			}
			if _, err := st.Season(ctx); err != nil {
				t.Error(err)
			}
			if _, err := st.AddSegment(ctx, episode.Segment{EpisodeID: c.episodeID, Title: fmt.Sprint(i)}); err != nil {
				t.Error(err)
			}
		})
	}
	group.Wait()
	if n := seasonOf(t, st, c.episodeID).Facts.Segments; n != 32 {
		t.Errorf("%d segments, want 32", n)
	}
}

// Statements are constants, so calling again and again prepares none anew.
func TestStatementsArePreparedOnce(t *testing.T) {
	st := open(t)
	call := func() {
		addFull(t, st, fmt.Sprint("episode ", count(t, st, "episode"))).state(t, st)
	}
	call()
	call() // what a transaction met first is prepared after it
	before := len(st.Statements())
	for range 10 {
		call()
	}
	if after := len(st.Statements()); after != before {
		t.Errorf("%d statements prepared, then %d", before, after)
	}
}

// Calls by many goroutines on one row lose nothing: each adds its own.
func TestWritersQueue(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	var group sync.WaitGroup
	for i := range 16 {
		group.Go(func() {
			if err := st.SetTick(t.Context(), id, fmt.Sprint("item ", i), true); err != nil {
				t.Error(err)
			}
		})
	}
	group.Wait()
	if n := len(must(st.Ticks(t.Context(), id))(t)); n != 16 {
		t.Errorf("%d ticks, want 16", n)
	}
}

// Many tabs saving a new version, or moving shots, at once: the numbers and
// positions stay dense.
func TestNumbersStayDenseUnderLoad(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Eggs")
	var shots []int64
	for range 6 {
		shots = append(shots, must(st.AddShot(t.Context(), episode.Shot{EpisodeID: c.episodeID, Status: episode.Missing}))(t))
	}
	var group sync.WaitGroup
	for i := range 12 {
		group.Go(func() {
			if _, err := st.AddVersion(t.Context(), eggs2(c.recipeID)); err != nil {
				t.Error(err)
			}
			if err := st.MoveShot(t.Context(), shots[i%6], i-6); err != nil {
				t.Error(err)
			}
		})
	}
	group.Wait()
	versions := must(st.Versions(t.Context(), c.recipeID))(t)
	for i, v := range versions {
		if v.Number != len(versions)-i || len(versions) != 13 {
			t.Fatalf("version %d of %d has number %d", i, len(versions), v.Number)
		}
	}
	for i, shot := range must(st.Shots(t.Context(), c.episodeID))(t) {
		if shot.Position != i+1 {
			t.Errorf("shot %d stands at %d", i+1, shot.Position)
		}
	}
}
