package store_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
)

func TestDayPlanIsKept(t *testing.T) {
	st := open(t)
	plan := filled[episode.DayPlan](t)
	plan.EpisodeID = addEpisode(t, st, "one")
	_, err := st.DayPlan(t.Context(), plan.EpisodeID)
	wantFault(t, err, fault.NotFound)
	ok(t, st.KeepDayPlan(t.Context(), plan))
	same(t, "plan", must(st.DayPlan(t.Context(), plan.EpisodeID))(t), plan)

	next := episode.DayPlan{EpisodeID: plan.EpisodeID, Print: "another", Bound: 7, Starts: []int{0, 600000}}
	ok(t, st.KeepDayPlan(t.Context(), next))
	same(t, "the plan after it", must(st.DayPlan(t.Context(), plan.EpisodeID))(t), next)
}

func TestDayPlanOfNoEpisode(t *testing.T) {
	wantFault(t, open(t).KeepDayPlan(t.Context(), episode.DayPlan{EpisodeID: 9}), fault.NotFound)
}
