package store_test

import (
	"context"
	"errors"
	"fmt"
	"sync"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/shop"
	"benchproof/store"
)

// noun is one kind of thing that people edit, with what every kind promises:
// each field comes back, a stale save is refused, what is deleted is gone until
// it is restored.
type noun[T any] struct {
	kind   store.Kind // "" if it cannot be deleted by itself
	value  T          // every field set, to values that can be kept
	other  T          // the same with other words
	add    func(context.Context, T) (int64, error)
	get    func(context.Context, int64) (T, error)
	save   func(context.Context, T) error
	remove func(context.Context, int64) error
	marks  func(*T) (id *int64, revision *int) // where those stand in a T
}

// with gives value as it stands in the store under id.
func (n noun[T]) with(value T, id int64, revision int) T {
	at, counted := n.marks(&value)
	*at, *counted = id, revision
	return value
}

func TestPitchIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.Pitch] {
		value := filled[episode.Pitch](t)
		value.EpisodeID = 0 // LinkPitch sets it
		other := value
		other.Note = "another note"
		return noun[episode.Pitch]{store.PitchKind, value, other, st.AddPitch, st.Pitch, st.SavePitch, st.DeletePitch,
			func(p *episode.Pitch) (*int64, *int) { return &p.ID, &p.Revision }}
	})
}

func TestBriefIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.Episode] {
		value := filled[episode.Episode](t)
		value.RecipeID, value.VersionID = addRecipe(t, st, "Plum tart")
		value.Stage = episode.ReadyToShoot
		other := value
		other.Hook = "another hook"
		return noun[episode.Episode]{store.EpisodeKind, value, other, st.AddEpisode, st.Episode, st.SaveBrief, st.DeleteEpisode,
			func(e *episode.Episode) (*int64, *int) { return &e.ID, &e.Revision }}
	})
}

func TestBatchIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.Batch] {
		value := filled[episode.Batch](t)
		value.EpisodeID = addEpisode(t, st, "one")
		value.Kind = episode.SwapOut
		other := value
		other.Kind = episode.Spare
		return noun[episode.Batch]{store.BatchKind, value, other, st.AddBatch, st.Batch, st.SaveBatch, st.DeleteBatch,
			func(b *episode.Batch) (*int64, *int) { return &b.ID, &b.Revision }}
	})
}

func TestTrialIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.Trial] {
		value := filled[episode.Trial](t)
		value.EpisodeID = addEpisode(t, st, "one")
		_, value.VersionID = addRecipe(t, st, "Plum tart")
		value.Verdict = "nearly"
		other := value
		other.BakedGrams, other.Verdict = measure.MustNumber("1234/5"), "proved"
		return noun[episode.Trial]{store.TrialKind, value, other, st.AddTrial, st.Trial, st.SaveTrial, st.DeleteTrial,
			func(r *episode.Trial) (*int64, *int) { return &r.ID, &r.Revision }}
	})
}

func TestSegmentIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.Segment] {
		value := filled[episode.Segment](t)
		value.EpisodeID, value.Position = addEpisode(t, st, "one"), 1
		other := value
		other.Narration = "Something else is said."
		return noun[episode.Segment]{store.SegmentKind, value, other, st.AddSegment, st.Segment, st.SaveSegment, st.DeleteSegment,
			func(g *episode.Segment) (*int64, *int) { return &g.ID, &g.Revision }}
	})
}

func TestShotIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.Shot] {
		value := filled[episode.Shot](t)
		value.EpisodeID, value.Position, value.Status = addEpisode(t, st, "one"), 1, episode.Retake
		other := value
		other.Setup, other.Status = "overhead, window left", episode.Got
		return noun[episode.Shot]{store.ShotKind, value, other, st.AddShot, st.Shot, st.SaveShot, st.DeleteShot,
			func(h *episode.Shot) (*int64, *int) { return &h.ID, &h.Revision }}
	})
}

func TestCutIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.Cut] {
		value := filled[episode.Cut](t)
		value.EpisodeID = addEpisode(t, st, "one")
		other := value
		other.Captions = "WEBVTT\n\n00:01.000 --> 00:02.000\nHello\n"
		return noun[episode.Cut]{store.CutKind, value, other, st.AddCut, st.Cut, st.SaveCut, st.DeleteCut,
			func(c *episode.Cut) (*int64, *int) { return &c.ID, &c.Revision }}
	})
}

func TestMomentIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.Moment] {
		value := filled[episode.Moment](t)
		value.EpisodeID, value.At, value.Until, value.Holds = addEpisode(t, st, "one"), 720, 780, episode.DoneBefore
		other := value
		other.At, other.Until, other.Holds = 660, 0, episode.NotBefore
		return noun[episode.Moment]{store.MomentKind, value, other, st.AddMoment, st.Moment, st.SaveMoment, st.DeleteMoment,
			func(m *episode.Moment) (*int64, *int) { return &m.ID, &m.Revision }}
	})
}

func TestCorrectionIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.Correction] {
		value := filled[episode.Correction](t)
		value.EpisodeID = addEpisode(t, st, "one")
		other := value
		other.Right = "220 °C"
		return noun[episode.Correction]{store.CorrectionKind, value, other, st.AddCorrection, st.Correction, st.SaveCorrection, st.DeleteCorrection,
			func(c *episode.Correction) (*int64, *int) { return &c.ID, &c.Revision }}
	})
}

func TestPackIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[shop.Pack] {
		value := filled[shop.Pack](t)
		value.Amount.From = value.Amount.To
		other := value
		other.Amount, other.Price = measure.Of(measure.MustNumber("3/2"), measure.Kilogram), 0
		return noun[shop.Pack]{store.PackKind, value, other, st.AddPack, st.Pack, st.SavePack, st.DeletePack,
			func(p *shop.Pack) (*int64, *int) { return &p.ID, &p.Revision }}
	})
}

func TestStockIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[shop.Stock] {
		value := filled[shop.Stock](t)
		value.Amount.From = value.Amount.To
		other := value
		other.Amount, other.UseBy = measure.Of(measure.MustNumber("6"), measure.Each), time.Time{}
		return noun[shop.Stock]{store.StockKind, value, other, st.AddStock, st.StockEntry, st.SaveStock, st.DeleteStock,
			func(s *shop.Stock) (*int64, *int) { return &s.ID, &s.Revision }}
	})
}

func TestReleaseIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.Release] {
		value := filled[episode.Release](t)
		other := value
		other.Opening = "Another opening."
		return noun[episode.Release]{"", value, other,
			func(ctx context.Context, r episode.Release) (int64, error) {
				r.EpisodeID = addEpisode(t, st, "one")
				empty := must(st.Release(ctx, r.EpisodeID))(t)
				same(t, "a new episode's release", empty, episode.Release{EpisodeID: r.EpisodeID, Revision: 1})
				r.Revision = 1
				ok(t, st.SaveRelease(ctx, r))
				execRaw(t, st, "UPDATE release SET revision = 1 WHERE episode_id = ?1", r.EpisodeID)
				return r.EpisodeID, nil
			}, st.Release, st.SaveRelease, st.DeleteEpisode,
			func(r *episode.Release) (*int64, *int) { return &r.EpisodeID, &r.Revision }}
	})
}

// execRaw goes behind the store's back.
func execRaw(t testing.TB, st *store.Store, text string, args ...any) {
	t.Helper()
	if _, err := st.Raw().ExecContext(t.Context(), text, args...); err != nil {
		t.Fatal(err)
	}
}

func checkNoun[T any](t *testing.T, of func(testing.TB, *store.Store) noun[T]) {
	checks := []struct {
		name  string
		check func(*testing.T, *store.Store, noun[T], int64)
	}{
		{"adding keeps every field", func(t *testing.T, st *store.Store, n noun[T], id int64) {
			same(t, "read after add", must(n.get(t.Context(), id))(t), n.with(n.value, id, 1))
		}},
		{"saving keeps every field", checkSave[T]},
		{"a stale save changes nothing", checkStale[T]},
		{"of many saves at once one wins", checkRace[T]},
		{"what is not there is not found", checkMissing[T]},
		{"what is deleted is gone, and comes back", checkUndo[T]},
	}
	for _, c := range checks {
		t.Run(c.name, func(t *testing.T) {
			st := open(t)
			n := of(t, st)
			c.check(t, st, n, must(n.add(t.Context(), n.value))(t))
		})
	}
}

func checkSave[T any](t *testing.T, st *store.Store, n noun[T], id int64) {
	if cmp.Equal(n.value, n.other) {
		t.Fatal("the test saves nothing new")
	}
	ok(t, n.save(t.Context(), n.with(n.other, id, 1)))
	same(t, "read after save", must(n.get(t.Context(), id))(t), n.with(n.other, id, 2))
	ok(t, n.save(t.Context(), n.with(n.value, id, 2)))
	same(t, "read after a second save", must(n.get(t.Context(), id))(t), n.with(n.value, id, 3))
}

func checkStale[T any](t *testing.T, st *store.Store, n noun[T], id int64) {
	ok(t, n.save(t.Context(), n.with(n.other, id, 1)))
	for _, revision := range []int{1, 0, 3, -1} {
		wantFault(t, n.save(t.Context(), n.with(n.value, id, revision)), fault.Conflict)
	}
	same(t, "read after stale saves", must(n.get(t.Context(), id))(t), n.with(n.other, id, 2))
}

func checkRace[T any](t *testing.T, st *store.Store, n noun[T], id int64) {
	const tabs = 8
	errs := make([]error, tabs)
	var group sync.WaitGroup
	for i := range tabs {
		group.Go(func() { errs[i] = n.save(t.Context(), n.with(n.other, id, 1)) })
	}
	group.Wait()
	saved := 0
	for _, err := range errs {
		if err == nil {
			saved++
		} else {
			wantFault(t, err, fault.Conflict)
		}
	}
	if saved != 1 {
		t.Errorf("%d of %d saves of one revision succeeded: %v", saved, tabs, errors.Join(errs...))
	}
	same(t, "read after the race", must(n.get(t.Context(), id))(t), n.with(n.other, id, 2))
}

func checkMissing[T any](t *testing.T, st *store.Store, n noun[T], id int64) {
	for _, missing := range []int64{id + 1000, 0, -1} {
		_, err := n.get(t.Context(), missing)
		wantFault(t, err, fault.NotFound)
		wantFault(t, n.save(t.Context(), n.with(n.other, missing, 1)), fault.NotFound)
		wantFault(t, n.remove(t.Context(), missing), fault.NotFound)
		if n.kind != "" {
			wantFault(t, st.Restore(t.Context(), n.kind, missing), fault.NotFound)
		}
	}
}

func checkUndo[T any](t *testing.T, st *store.Store, n noun[T], id int64) {
	ok(t, n.remove(t.Context(), id))
	_, err := n.get(t.Context(), id)
	wantFault(t, err, fault.NotFound)
	wantFault(t, n.save(t.Context(), n.with(n.other, id, 1)), fault.NotFound)
	wantFault(t, n.remove(t.Context(), id), fault.NotFound)
	kind := n.kind
	if kind == "" {
		kind = store.EpisodeKind // it hangs on its episode, and its id is that one's
	}
	ok(t, st.Restore(t.Context(), kind, id))
	same(t, "read after restoring", must(n.get(t.Context(), id))(t), n.with(n.value, id, 1))
	wantFault(t, st.Restore(t.Context(), kind, id), fault.NotFound)
}

func TestErrorsNameTheOperationOnce(t *testing.T) {
	st := open(t)
	err := st.SaveShot(t.Context(), episode.Shot{ID: 77, Revision: 1, Status: episode.Got})
	want := "save shot 77: There is no such shot. It may have been deleted."
	if fmt.Sprint(err) != want {
		t.Errorf("error = %v\nwant    %s", err, want)
	}
}
