package store_test

import (
	"context"
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/store"
)

// ordered is a list whose order people choose.
type ordered struct {
	kind   store.Kind
	add    func(t testing.TB, episodeID int64, position int) int64
	list   func(t testing.TB, episodeID int64) (ids []int64, positions []int)
	move   func(t testing.TB, id int64, by int) error
	remove func(t testing.TB, id int64) error
}

func orderedLists(st *store.Store) map[string]ordered {
	return map[string]ordered{
		"segments": {
			kind: store.SegmentKind,
			add: func(t testing.TB, episodeID int64, position int) int64 {
				return must(st.AddSegment(t.Context(), episode.Segment{EpisodeID: episodeID, Position: position}))(t)
			},
			list: func(t testing.TB, episodeID int64) (ids []int64, positions []int) {
				for _, g := range must(st.Segments(t.Context(), episodeID))(t) {
					ids, positions = append(ids, g.ID), append(positions, g.Position)
				}
				return ids, positions
			},
			move:   func(t testing.TB, id int64, by int) error { return st.MoveSegment(t.Context(), id, by) },
			remove: func(t testing.TB, id int64) error { return st.DeleteSegment(t.Context(), id) },
		},
		"shots": {
			kind: store.ShotKind,
			add: func(t testing.TB, episodeID int64, position int) int64 {
				return must(st.AddShot(t.Context(), episode.Shot{EpisodeID: episodeID, Position: position, Status: episode.Missing}))(t)
			},
			list: func(t testing.TB, episodeID int64) (ids []int64, positions []int) {
				for _, h := range must(st.Shots(t.Context(), episodeID))(t) {
					ids, positions = append(ids, h.ID), append(positions, h.Position)
				}
				return ids, positions
			},
			move:   func(t testing.TB, id int64, by int) error { return st.MoveShot(t.Context(), id, by) },
			remove: func(t testing.TB, id int64) error { return st.DeleteShot(t.Context(), id) },
		},
	}
}

func TestListsKeepTheirOrder(t *testing.T) {
	tests := []struct {
		name string
		do   func(t *testing.T, st *store.Store, l ordered, ids []int64)
		want string // the four rows by their letters
	}{
		{"as added", func(t *testing.T, st *store.Store, l ordered, ids []int64) {}, "abcd"},
		{"up one", func(t *testing.T, st *store.Store, l ordered, ids []int64) { ok(t, l.move(t, ids[2], -1)) }, "acbd"},
		{"down one", func(t *testing.T, st *store.Store, l ordered, ids []int64) { ok(t, l.move(t, ids[0], 1)) }, "bacd"},
		{"up from the top", func(t *testing.T, st *store.Store, l ordered, ids []int64) { ok(t, l.move(t, ids[0], -1)) }, "abcd"},
		{"down from the bottom", func(t *testing.T, st *store.Store, l ordered, ids []int64) { ok(t, l.move(t, ids[3], 1)) }, "abcd"},
		{"far up", func(t *testing.T, st *store.Store, l ordered, ids []int64) { ok(t, l.move(t, ids[3], -99)) }, "dabc"},
		{"two down", func(t *testing.T, st *store.Store, l ordered, ids []int64) { ok(t, l.move(t, ids[1], 2)) }, "acdb"},
		{"delete", func(t *testing.T, st *store.Store, l ordered, ids []int64) { ok(t, l.remove(t, ids[1])) }, "acd"},
		{"delete and restore", func(t *testing.T, st *store.Store, l ordered, ids []int64) {
			ok(t, l.remove(t, ids[1]))
			ok(t, st.Restore(t.Context(), l.kind, ids[1]))
		}, "abcd"},
		{"delete two, restore them the other way round", func(t *testing.T, st *store.Store, l ordered, ids []int64) {
			ok(t, l.remove(t, ids[1]))
			ok(t, l.remove(t, ids[2]))
			ok(t, st.Restore(t.Context(), l.kind, ids[2]))
			ok(t, st.Restore(t.Context(), l.kind, ids[1]))
		}, "abcd"},
		{"restore to the end of a list grown short", func(t *testing.T, st *store.Store, l ordered, ids []int64) {
			ok(t, l.remove(t, ids[3]))
			ok(t, l.remove(t, ids[0]))
			ok(t, l.remove(t, ids[1]))
			ok(t, st.Restore(t.Context(), l.kind, ids[3]))
		}, "cd"},
		{"move what is deleted", func(t *testing.T, st *store.Store, l ordered, ids []int64) {
			ok(t, l.remove(t, ids[1]))
			wantFault(t, l.move(t, ids[1], 1), fault.NotFound)
		}, "acd"},
		{"the whole episode deleted and restored", func(t *testing.T, st *store.Store, l ordered, ids []int64) {
			ok(t, l.move(t, ids[3], -2))
			ok(t, l.remove(t, ids[0]))
			ok(t, st.DeleteEpisode(t.Context(), 1))
			ok(t, st.Restore(t.Context(), store.EpisodeKind, 1))
		}, "dbc"},
	}
	for _, test := range tests {
		for _, name := range []string{"segments", "shots"} {
			t.Run(name+"/"+test.name, func(t *testing.T) {
				st := open(t)
				episodeID, other := addEpisode(t, st, "one"), addEpisode(t, st, "two")
				l := orderedLists(st)[name]
				ids := make([]int64, 4)
				for i := range ids {
					ids[i] = l.add(t, episodeID, 0)
				}
				l.add(t, other, 0)
				test.do(t, st, l, ids)
				got := ""
				listed, positions := l.list(t, episodeID)
				for i, id := range listed {
					got += string(rune('a' + slices.Index(ids, id)))
					if positions[i] != i+1 {
						t.Errorf("positions are %v", positions)
					}
				}
				if got != test.want {
					t.Errorf("order is %s, want %s", got, test.want)
				}
				if _, positions := l.list(t, other); fmt.Sprint(positions) != "[1]" {
					t.Errorf("the other episode's positions are %v", positions)
				}
			})
		}
	}
}

// Whatever is done, the list is what a plain slice would be, numbered densely
// from 1; a deleted row comes back to its old place or the end.
func TestListsBehaveAsSlices(t *testing.T) {
	st := open(t)
	l := orderedLists(st)["shots"]
	rapid.Check(t, func(rt *rapid.T) {
		episodeID := addEpisode(t, st, "one")
		var live []int64
		deleted := map[int64]int{} // the place each held
		for range rapid.IntRange(1, 12).Draw(rt, "steps") {
			pick := func() int { return rapid.IntRange(0, len(live)-1).Draw(rt, "row") }
			switch action := rapid.SampledFrom([]string{"add", "move", "delete", "restore"}).Draw(rt, "action"); {
			case action == "move" && len(live) > 0:
				from, by := pick(), rapid.IntRange(-4, 4).Draw(rt, "by")
				id := live[from]
				ok(t, l.move(t, id, by))
				live = slices.Delete(live, from, from+1)
				live = slices.Insert(live, min(max(from+by, 0), len(live)), id)
			case action == "delete" && len(live) > 0:
				at := pick()
				ok(t, l.remove(t, live[at]))
				deleted[live[at]] = at
				live = slices.Delete(live, at, at+1)
			case action == "restore" && len(deleted) > 0:
				id := rapid.SampledFrom(sortedKeys(deleted)).Draw(rt, "deleted")
				ok(t, st.Restore(t.Context(), store.ShotKind, id))
				live = slices.Insert(live, min(deleted[id], len(live)), id)
				delete(deleted, id)
			default:
				position := rapid.IntRange(0, len(live)+2).Draw(rt, "position")
				id := l.add(t, episodeID, position)
				if position == 0 {
					position = len(live) + 1
				}
				live = slices.Insert(live, min(position-1, len(live)), id)
			}
			ids, positions := l.list(t, episodeID)
			if !slices.Equal(ids, live) {
				rt.Fatalf("rows are %v, want %v", ids, live)
			}
			for i, p := range positions {
				if p != i+1 {
					rt.Fatalf("positions are %v", positions)
				}
			}
		}
	})
}

func sortedKeys(m map[int64]int) []int64 {
	keys := make([]int64, 0, len(m))
	for key := range m {
		keys = append(keys, key)
	}
	slices.Sort(keys)
	return keys
}

// Every kind that hangs on an episode has room for 500, those deleted aside.
func TestEveryKindHasItsRoom(t *testing.T) {
	const many = "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 500) "
	tests := []struct {
		name, insert string
		add          func(ctx context.Context, st *store.Store, c cooking) (int64, error)
	}{
		{"batch", "INSERT INTO batch (deleted_at, episode_id, kind, makes, note) SELECT ?2, ?1, 'spare', '1', '' FROM n",
			func(ctx context.Context, st *store.Store, c cooking) (int64, error) {
				return st.AddBatch(ctx, episode.Batch{EpisodeID: c.episodeID, Kind: episode.Spare, Makes: measure.Whole(1)})
			}},
		{"trial", "INSERT INTO trial (deleted_at, episode_id, version_id, scale, dough_grams, baked_grams, pieces, minutes, setting, verdict, note) SELECT ?2, ?1, 1, '1', '0', '0', '0', '0', '', 'proved', '' FROM n",
			func(ctx context.Context, st *store.Store, c cooking) (int64, error) {
				return st.AddTrial(ctx, episode.Trial{EpisodeID: c.episodeID, VersionID: c.versionID, Verdict: "proved"})
			}},
		{"segment", "INSERT INTO segment (deleted_at, episode_id, position, title, narration, words, planned_seconds) SELECT ?2, ?1, i, '', '', 0, 0 FROM n",
			func(ctx context.Context, st *store.Store, c cooking) (int64, error) {
				return st.AddSegment(ctx, episode.Segment{EpisodeID: c.episodeID})
			}},
		{"shot", "INSERT INTO shot (deleted_at, episode_id, position, title, kind, setup, component, step, status, note) SELECT ?2, ?1, i, '', '', '', '', 0, 'got', '' FROM n",
			func(ctx context.Context, st *store.Store, c cooking) (int64, error) {
				return st.AddShot(ctx, episode.Shot{EpisodeID: c.episodeID, Status: episode.Got})
			}},
		{"cut", "INSERT INTO cut (deleted_at, episode_id, turn, name, seconds, captions) SELECT ?2, ?1, i + (?2 IS NULL) * 1000, '', 0, '' FROM n",
			func(ctx context.Context, st *store.Store, c cooking) (int64, error) {
				return st.AddCut(ctx, episode.Cut{EpisodeID: c.episodeID})
			}},
		{"correction", "INSERT INTO correction (deleted_at, episode_id, at_seconds, said, put_right) SELECT ?2, ?1, 0, '', '' FROM n",
			func(ctx context.Context, st *store.Store, c cooking) (int64, error) {
				return st.AddCorrection(ctx, episode.Correction{EpisodeID: c.episodeID})
			}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			st := open(t)
			c := addCooking(t, st, "Eggs")
			execRaw(t, st, many+test.insert, c.episodeID, "2026-01-01T00:00:00.000Z")
			must(test.add(t.Context(), st, c))(t)
			execRaw(t, st, "DELETE FROM "+test.name)
			execRaw(t, st, many+test.insert, c.episodeID, nil)
			_, err := test.add(t.Context(), st, c)
			wantFault(t, err, fault.Invalid)
		})
	}
}

func TestAnEpisodeHoldsNoMoreThanItsListsShow(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "Eggs")
	execRaw(t, st, `
WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 499)
INSERT INTO shot (episode_id, position, title, kind, setup, component, step, status, note)
SELECT ?1, i, '', '', '', '', 0, 'missing', '' FROM n`, c.episodeID)
	l := orderedLists(st)["shots"]
	last := l.add(t, c.episodeID, 0)
	if ids, _ := l.list(t, c.episodeID); len(ids) != 500 {
		t.Errorf("%d shots listed, want 500", len(ids))
	}
	_, err := st.AddShot(t.Context(), episode.Shot{EpisodeID: c.episodeID, Status: episode.Missing})
	wantFault(t, err, fault.Invalid)
	ok(t, l.remove(t, last))
	l.add(t, c.episodeID, 1)
	wantFault(t, st.Restore(t.Context(), store.ShotKind, last), fault.Invalid)
}
