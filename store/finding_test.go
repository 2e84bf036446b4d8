package store_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
)

func TestFindingsCountUntilTheyAreSettled(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	unsettled := func(want int) {
		t.Helper()
		if got := seasonOf(t, st, id).Facts.Findings; got != want {
			t.Errorf("Facts.Findings = %d, want %d", got, want)
		}
	}
	ok(t, st.KeepFindings(t.Context(), id, []string{"a", "b", "b"}))
	unsettled(2)
	ok(t, st.Settle(t.Context(), id, "a", episode.OnScreenNote))
	ok(t, st.Settle(t.Context(), id, "a", episode.PutRight))
	unsettled(1)
	same(t, "settlements", must(st.Settlements(t.Context(), id))(t), map[string]episode.Settlement{"a": episode.PutRight})

	ok(t, st.KeepFindings(t.Context(), id, []string{"c"})) // a new cut without them
	unsettled(1)
	ok(t, st.KeepFindings(t.Context(), id, []string{"a", "c"})) // and one in which an old slip is back
	unsettled(1)
	ok(t, st.Reopen(t.Context(), id, "a"))
	ok(t, st.Reopen(t.Context(), id, "never"))
	unsettled(2)
}

func TestFindingsOfOneEpisodeAreItsOwn(t *testing.T) {
	st := open(t)
	one, two := addEpisode(t, st, "one"), addEpisode(t, st, "two")
	ok(t, st.KeepFindings(t.Context(), one, []string{"a"}))
	ok(t, st.KeepFindings(t.Context(), two, []string{"a"}))
	ok(t, st.Settle(t.Context(), one, "a", episode.MeantSo))
	if got := seasonOf(t, st, two).Facts.Findings; got != 1 {
		t.Errorf("the other episode has %d findings, want 1", got)
	}
}

func TestFindingsOfADeletedEpisodeAreRefused(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	ok(t, st.DeleteEpisode(t.Context(), id))
	wantFault(t, st.KeepFindings(t.Context(), id, nil), fault.NotFound)
	wantFault(t, st.Settle(t.Context(), id, "a", episode.MeantSo), fault.NotFound)
	st2 := open(t)
	id = addEpisode(t, st2, "one")
	wantFault(t, st2.Settle(t.Context(), id, "a", "ignored"), fault.Invalid)
}
