package store_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/store"
)

func knead(episodeID int64) episode.DayStep {
	return episode.DayStep{
		EpisodeID: episodeID, StepName: episode.StepName{Batch: "shoot", Component: "Dough", Step: 2},
		Pin: 600, Barred: []episode.Span{{From: 720, To: 780}, {From: 900, To: 915}}, ByHelper: true,
		Waits: episode.Waits{Least: 5, Most: 30, HasMost: true},
	}
}

func daySteps(t testing.TB, st *store.Store, id int64) []episode.DayStep {
	t.Helper()
	return must(st.DaySteps(t.Context(), id))(t)
}

func TestDayStepIsKept(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	fixed := knead(id)
	ok(t, st.SaveDayStep(t.Context(), fixed))
	same(t, "steps", daySteps(t, st, id), []episode.DayStep{fixed})

	fixed.Pin, fixed.Barred, fixed.Waits = 660, nil, episode.Waits{HasMost: true} // at once
	ok(t, st.SaveDayStep(t.Context(), fixed))
	same(t, "steps after a change", daySteps(t, st, id), []episode.DayStep{fixed})

	plain := episode.DayStep{EpisodeID: id, StepName: fixed.StepName}
	ok(t, st.SaveDayStep(t.Context(), plain))
	same(t, "steps after all is let go", len(daySteps(t, st, id)), 0)
}

func TestDayStepOfNoEpisode(t *testing.T) {
	wantFault(t, open(t).SaveDayStep(t.Context(), knead(7)), fault.NotFound)
}

func TestDayStepOutsideTheClockIsRefused(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	for name, change := range map[string]func(*episode.DayStep){
		"pinned to the third day": func(d *episode.DayStep) { d.Pin = 2881 },
		"waits for days":          func(d *episode.DayStep) { d.Waits.Most = 1441 },
		"waits before its time":   func(d *episode.DayStep) { d.Waits.Least = -1 },
		"no step":                 func(d *episode.DayStep) { d.Step = 0 },
		"ended before it began":   func(d *episode.DayStep) { d.Began, d.Ended = 700, 690 },
	} {
		t.Run(name, func(t *testing.T) {
			d := knead(id)
			change(&d)
			wantFault(t, st.SaveDayStep(t.Context(), d), fault.Invalid)
		})
	}
}

// What has begun is noted beside what was fixed, and taken back without it.
func TestProgressIsKept(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	fixed := knead(id)
	ok(t, st.SaveDayStep(t.Context(), fixed))
	mix := episode.DayStep{EpisodeID: id, StepName: episode.StepName{Batch: "shoot", Component: "Dough", Step: 1}, Began: 540, Ended: 550}
	kneads := episode.DayStep{StepName: fixed.StepName, Began: 555}

	day := must(st.ShootDay(t.Context(), id))(t)
	day.Now = 560
	ok(t, st.SaveProgress(t.Context(), day, []episode.DayStep{mix, kneads}))
	running := fixed
	running.Began = 555
	same(t, "steps", daySteps(t, st, id), []episode.DayStep{mix, running})
	day = must(st.ShootDay(t.Context(), id))(t)
	same(t, "now", day.Now, 560)

	day.Now = 0
	ok(t, st.SaveProgress(t.Context(), day, nil))
	same(t, "steps before the day", daySteps(t, st, id), []episode.DayStep{fixed})
}

func TestProgressOfAnOldDayIsRefusedWhole(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	day := episode.NewShootDay(id)
	ok(t, st.SaveShootDay(t.Context(), day))
	day.Now = 600
	wantFault(t, st.SaveProgress(t.Context(), day, []episode.DayStep{{StepName: knead(id).StepName, Began: 540}}), fault.Conflict)
	same(t, "steps", len(daySteps(t, st, id)), 0)
}
