package store_test

import (
	"context"
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/store"
)

func TestShootDayIsKept(t *testing.T) {
	checkNoun(t, func(t testing.TB, st *store.Store) noun[episode.ShootDay] {
		value := filled[episode.ShootDay](t)
		other := value
		other.DoneBy = 960
		return noun[episode.ShootDay]{"", value, other,
			func(ctx context.Context, d episode.ShootDay) (int64, error) {
				d.EpisodeID, d.Revision = addEpisode(t, st, "one"), 0
				same(t, "a new episode's shoot day", must(st.ShootDay(ctx, d.EpisodeID))(t), episode.NewShootDay(d.EpisodeID))
				return d.EpisodeID, st.SaveShootDay(ctx, d)
			}, st.ShootDay, st.SaveShootDay, st.DeleteEpisode,
			func(d *episode.ShootDay) (*int64, *int) { return &d.EpisodeID, &d.Revision }}
	})
}

// A kitchen is the same next week, and so are the people and the gear.
func TestTheNextShootDayHasTheKitchenOfTheLatest(t *testing.T) {
	st := open(t)
	early, late := episode.NewShootDay(addEpisode(t, st, "one")), episode.NewShootDay(addEpisode(t, st, "two"))
	early.Kitchen.Ovens, early.People = 9, "nobody"
	late.On = time.Date(2026, 3, 14, 0, 0, 0, 0, time.UTC)
	late.Kitchen.Ovens, late.People, late.Gear, late.Props, late.SetupMinutes = 2, "Ann", "a tripod", "a blue jug", 12
	ok(t, st.SaveShootDay(t.Context(), late))
	ok(t, st.SaveShootDay(t.Context(), early))
	want := episode.NewShootDay(addEpisode(t, st, "three"))
	want.Kitchen, want.People, want.Gear, want.SetupMinutes = late.Kitchen, late.People, late.Gear, late.SetupMinutes
	same(t, "the next day", must(st.ShootDay(t.Context(), want.EpisodeID))(t), want)
}

func TestTwoFirstShootDaysConflict(t *testing.T) {
	st := open(t)
	mine := episode.NewShootDay(addEpisode(t, st, "one"))
	theirs := mine
	theirs.Begin = 600
	ok(t, st.SaveShootDay(t.Context(), theirs))
	wantFault(t, st.SaveShootDay(t.Context(), mine), fault.Conflict)
	theirs.Revision = 1
	same(t, "shoot day", must(st.ShootDay(t.Context(), mine.EpisodeID))(t), theirs)
}

func TestShootDayOutsideTheClockIsRefused(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	changes := map[string]func(*episode.ShootDay){
		"a day of 25 hours":   func(d *episode.ShootDay) { d.Begin = 25 * 60 },
		"before midnight":     func(d *episode.ShootDay) { d.DoneBy = -1 },
		"nobody":              func(d *episode.ShootDay) { d.Hands = 0 },
		"light at no time":    func(d *episode.ShootDay) { d.LightUntil = 1441 },
		"a negative set-up":   func(d *episode.ShootDay) { d.SetupMinutes = -5 },
		"an oven for nothing": func(d *episode.ShootDay) { d.Kitchen.OvenHolds = 0 },
		"a helper for weeks":  func(d *episode.ShootDay) { d.HelperUntil = 10_000 },
	}
	for name, change := range changes {
		t.Run(name, func(t *testing.T) {
			d := episode.NewShootDay(id)
			change(&d)
			wantFault(t, st.SaveShootDay(t.Context(), d), fault.Invalid)
		})
	}
	same(t, "shoot day", must(st.ShootDay(t.Context(), id))(t), episode.NewShootDay(id))
}
