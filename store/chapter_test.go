package store_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
)

func TestChapterStartsAreSetAndCleared(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	segment := must(st.AddSegment(t.Context(), episode.Segment{EpisodeID: id, Title: "The rub"}))(t)
	other := must(st.AddSegment(t.Context(), episode.Segment{EpisodeID: addEpisode(t, st, "two"), Title: "Else"}))(t)
	ok(t, st.SetChapterStart(t.Context(), segment, 61))
	ok(t, st.SetChapterStart(t.Context(), segment, 62))
	ok(t, st.SetChapterStart(t.Context(), other, 5))
	same(t, "starts", must(st.ChapterStarts(t.Context(), id))(t), map[int64]int{segment: 62})

	ok(t, st.DeleteSegment(t.Context(), segment))
	same(t, "starts without the deleted segment", must(st.ChapterStarts(t.Context(), id))(t), map[int64]int{})
	wantFault(t, st.SetChapterStart(t.Context(), segment, 3), fault.NotFound)
	ok(t, st.Restore(t.Context(), "segment", segment))
	same(t, "starts after undo", must(st.ChapterStarts(t.Context(), id))(t), map[int64]int{segment: 62})

	ok(t, st.ClearChapterStart(t.Context(), segment))
	ok(t, st.ClearChapterStart(t.Context(), segment))
	same(t, "starts after clearing", must(st.ChapterStarts(t.Context(), id))(t), map[int64]int{})
	wantFault(t, st.SetChapterStart(t.Context(), segment, -1), fault.Invalid)
}
