package store_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/store"
)

func TestPitchesAreListedByHowOftenTheyWereAskedFor(t *testing.T) {
	st := open(t)
	for _, p := range []episode.Pitch{{Dish: "toast", Times: 1}, {Dish: "trifle", Times: 12}, {Dish: "tart", Times: 12}, {Dish: "buns", Times: 40}} {
		must(st.AddPitch(t.Context(), p))(t)
	}
	var dishes []string
	for _, p := range must(st.Pitches(t.Context()))(t) {
		dishes = append(dishes, p.Dish)
	}
	same(t, "dishes", dishes, []string{"buns", "tart", "trifle", "toast"})
}

func TestAPitchKnowsItsEpisode(t *testing.T) {
	st := open(t)
	id := must(st.AddPitch(t.Context(), episode.Pitch{Dish: "toast", Times: 1, EpisodeID: 77}))(t)
	episodeID := addEpisode(t, st, "Toast")
	linked := func() int64 {
		t.Helper()
		return must(st.Pitch(t.Context(), id))(t).EpisodeID
	}
	if got := linked(); got != 0 {
		t.Errorf("a new pitch has episode %d", got)
	}
	ok(t, st.LinkPitch(t.Context(), id, episodeID))
	if got := linked(); got != episodeID {
		t.Errorf("the linked pitch has episode %d, want %d", got, episodeID)
	}
	p := must(st.Pitch(t.Context(), id))(t)
	p.Note, p.EpisodeID = "with jam", 0
	ok(t, st.SavePitch(t.Context(), p))
	if got := linked(); got != episodeID {
		t.Errorf("saving the pitch changed its episode to %d", got)
	}
	ok(t, st.DeleteEpisode(t.Context(), episodeID))
	if got := linked(); got != 0 {
		t.Errorf("the pitch leads to deleted episode %d", got)
	}
	ok(t, st.Restore(t.Context(), store.EpisodeKind, episodeID))
	if got := linked(); got != episodeID {
		t.Errorf("the restored episode is not linked again: %d", got)
	}
	ok(t, st.LinkPitch(t.Context(), id, 0))
	if got := linked(); got != 0 {
		t.Errorf("the unlinked pitch has episode %d", got)
	}
	wantFault(t, st.LinkPitch(t.Context(), id, episodeID+9), fault.NotFound)
	wantFault(t, st.LinkPitch(t.Context(), id+9, episodeID), fault.NotFound)
	ok(t, st.DeletePitch(t.Context(), id))
	wantFault(t, st.LinkPitch(t.Context(), id, episodeID), fault.NotFound)
}
