package store_test

import (
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/store"
)

func TestTicks(t *testing.T) {
	st := open(t)
	id, other := addEpisode(t, st, "one"), addEpisode(t, st, "two")
	expect := func(when string, want ...string) {
		t.Helper()
		same(t, when, must(st.Ticks(t.Context(), id))(t), want)
	}
	expect("a new list")
	for _, item := range []string{"sugar", "flour", "crème fraîche", "flour"} {
		ok(t, st.SetTick(t.Context(), id, item, true))
	}
	ok(t, st.SetTick(t.Context(), other, "salt", true))
	expect("ticked, one of them twice", "crème fraîche", "flour", "sugar")
	ok(t, st.SetTick(t.Context(), id, "flour", false))
	ok(t, st.SetTick(t.Context(), id, "flour", false))
	ok(t, st.SetTick(t.Context(), id, "never there", false))
	expect("unticked, one of them twice", "crème fraîche", "sugar")
	ok(t, st.DeleteEpisode(t.Context(), id))
	wantFault(t, st.SetTick(t.Context(), id, "flour", true), fault.NotFound)
	ok(t, st.Restore(t.Context(), store.EpisodeKind, id))
	expect("after the episode was deleted and restored", "crème fraîche", "sugar")
	ok(t, st.ClearTicks(t.Context(), id))
	expect("cleared")
	same(t, "the other episode's", must(st.Ticks(t.Context(), other))(t), []string{"salt"})
}
