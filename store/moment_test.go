package store_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
)

func TestMomentsStandInOrderOfTime(t *testing.T) {
	st := open(t)
	id, other := addEpisode(t, st, "one"), addEpisode(t, st, "two")
	for _, m := range []episode.Moment{
		{EpisodeID: id, Name: "guests", At: 960}, {EpisodeID: id, Name: "delivery", At: 660},
		{EpisodeID: other, Name: "power cut", At: 60}, {EpisodeID: id, Name: "lunch", At: 660, Until: 720, Takes: "oven"},
	} {
		must(st.AddMoment(t.Context(), m))(t)
	}
	var names []string
	for _, m := range must(st.Moments(t.Context(), id))(t) {
		names = append(names, m.Name)
	}
	same(t, "moments", names, []string{"delivery", "lunch", "guests"})
}

func TestMomentOutsideTheClockIsRefused(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	tests := map[string]episode.Moment{
		"the next day":          {Name: "guests", At: 1441},
		"before midnight":       {Name: "guests", At: -1},
		"over before it is":     {Name: "lunch", At: 720, Until: 700},
		"holds in no known way": {Name: "lunch", At: 720, Holds: "perhaps"},
		"before the first step": {Name: "lunch", At: 720, Step: -1},
	}
	for name, m := range tests {
		t.Run(name, func(t *testing.T) {
			m.EpisodeID = id
			_, err := st.AddMoment(t.Context(), m)
			wantFault(t, err, fault.Invalid)
		})
	}
	same(t, "moments", len(must(st.Moments(t.Context(), id))(t)), 0)
}
