package store_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

// Picking swap-outs replaces those picked before, and only those.
func TestPickSwapOuts(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	whole := episode.Batch{EpisodeID: id, Kind: episode.SwapOut, Makes: measure.Whole(1)}
	must(st.AddBatch(t.Context(), whole))(t)
	pick := func(steps ...int) []episode.Batch {
		var picked []episode.Batch
		for _, step := range steps {
			picked = append(picked, episode.Batch{Kind: episode.SwapOut, Makes: measure.Whole(1), Component: "Dough", Step: step, Overnight: step > 3})
		}
		return picked
	}
	stages := func() (steps []int) {
		for _, b := range must(st.Batches(t.Context(), id))(t) {
			steps = append(steps, b.Step)
		}
		return steps
	}
	ok(t, st.PickSwapOuts(t.Context(), id, pick(2, 4)))
	same(t, "stages", stages(), []int{0, 2, 4})
	ok(t, st.PickSwapOuts(t.Context(), id, pick(3)))
	same(t, "stages picked anew", stages(), []int{0, 3})
	same(t, "deleted", len(must(st.Deleted(t.Context()))(t)), 2)
	ok(t, st.PickSwapOuts(t.Context(), id, nil))
	same(t, "stages after none", stages(), []int{0})
	wantFault(t, st.PickSwapOuts(t.Context(), id+1, nil), fault.NotFound)
}
