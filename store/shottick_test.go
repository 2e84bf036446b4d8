package store_test

import (
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/store"
)

// addShot adds a shot that is missing to an episode of its own.
func addShot(t testing.TB, st *store.Store) int64 {
	t.Helper()
	return must(st.AddShot(t.Context(), episode.Shot{EpisodeID: addEpisode(t, st, "one"), Title: "crumb", Status: episode.Missing}))(t)
}

func TestAShotIsTickedWhateverItsRevision(t *testing.T) {
	st := open(t)
	id := addShot(t, st)
	for i, status := range []episode.ShotStatus{episode.Got, episode.Got, episode.Retake, episode.Missing} {
		before := must(st.Shot(t.Context(), id))(t)
		if holds := must(st.TickShot(t.Context(), id, store.ShotTick{Status: status}))(t); holds != status {
			t.Errorf("ticked %q, and %q holds", status, holds)
		}
		want := before
		want.Status, want.Revision = status, i+2
		same(t, "shot", must(st.Shot(t.Context(), id))(t), want)
		wantFault(t, st.SaveShot(t.Context(), before), fault.Conflict)
	}
}

func TestATickOfNothingIsRefused(t *testing.T) {
	st := open(t)
	id := addShot(t, st)
	refused := func(id int64, status episode.ShotStatus, kind fault.Kind) {
		t.Helper()
		_, err := st.TickShot(t.Context(), id, store.ShotTick{Status: status})
		wantFault(t, err, kind)
	}
	refused(id, "to shoot", fault.Invalid)
	refused(id+9, episode.Got, fault.NotFound)
	if shot := must(st.Shot(t.Context(), id))(t); shot.Status != episode.Missing || shot.Revision != 1 {
		t.Errorf("the shot became %+v", shot)
	}
	ok(t, st.DeleteShot(t.Context(), id))
	refused(id, episode.Got, fault.NotFound)
}

// pressed is a tick that comes in minute at of a shoot.
type pressed struct {
	at     int
	age    time.Duration
	by     string
	nth    int64
	status episode.ShotStatus
}

const (
	got, missing, retake = episode.Got, episode.Missing, episode.Retake
	day1                 = 24 * time.Hour
)

func TestTheLaterTickHolds(t *testing.T) {
	for _, c := range []struct {
		name  string
		ticks []pressed
		want  []episode.ShotStatus // what holds after each
	}{
		{"an older one comes late", []pressed{{5, 0, "b", 1, retake}, {10, 10 * time.Minute, "a", 1, got}}, []episode.ShotStatus{retake, retake}},
		{"a later one waited too", []pressed{{5, 0, "b", 1, retake}, {10, 4 * time.Minute, "a", 1, got}}, []episode.ShotStatus{retake, got}},
		{"both waited, the older comes last", []pressed{{10, 3 * time.Minute, "b", 1, retake}, {11, 9 * time.Minute, "a", 1, got}}, []episode.ShotStatus{retake, retake}},
		{"both waited, the older comes first", []pressed{{10, 9 * time.Minute, "a", 1, got}, {11, 3 * time.Minute, "b", 1, retake}}, []episode.ShotStatus{got, retake}},
		{"at one time, the one that comes last", []pressed{{5, 0, "b", 1, retake}, {10, 5 * time.Minute, "a", 1, got}}, []episode.ShotStatus{retake, got}},
		{"a millisecond older", []pressed{{5, 0, "b", 1, retake}, {10, 5*time.Minute + time.Millisecond, "a", 1, got}}, []episode.ShotStatus{retake, retake}},
		{"the desk's form stands against an older one", []pressed{{5, 0, "", 0, retake}, {10, 6 * time.Minute, "a", 7, got}}, []episode.ShotStatus{retake, retake}},
		{"the desk's form comes after all", []pressed{{5, 0, "a", 7, got}, {6, 0, "", 0, missing}}, []episode.ShotStatus{got, missing}},
		{"the same status given again is given then", []pressed{{5, 0, "b", 1, got}, {8, 0, "b", 2, got}, {10, 4 * time.Minute, "a", 1, retake}}, []episode.ShotStatus{got, got, got}},
		{"three phones", []pressed{{9, time.Minute, "c", 4, missing}, {10, 8 * time.Minute, "a", 1, got}, {11, 2 * time.Minute, "b", 2, retake}}, []episode.ShotStatus{missing, missing, retake}},

		{"of one phone the first took a slow way", []pressed{{5, 0, "a", 1, got}, {6, 2 * time.Minute, "a", 2, retake}}, []episode.ShotStatus{got, retake}},
		{"of one phone the first comes again", []pressed{{5, 0, "a", 1, got}, {6, 0, "a", 2, retake}, {7, 0, "a", 1, got}}, []episode.ShotStatus{got, retake, retake}},
		{"of one phone the second came again", []pressed{{5, 0, "a", 2, retake}, {6, 0, "a", 1, got}, {7, 0, "a", 2, retake}}, []episode.ShotStatus{retake, retake, retake}},
		{"one phone after another, each in its order", []pressed{{5, 0, "a", 8, got}, {6, 0, "b", 1, missing}, {7, 0, "a", 9, retake}}, []episode.ShotStatus{got, missing, retake}},

		{"of an age below nothing, as of now", []pressed{{5, 0, "b", 1, retake}, {10, -time.Hour, "a", 1, got}, {11, 0, "b", 2, missing}}, []episode.ShotStatus{retake, got, missing}},
		{"of a silly age, on a shot ticked today", []pressed{{5, 0, "b", 1, retake}, {10, 20000 * day1, "a", 1, got}}, []episode.ShotStatus{retake, retake}},
		{"of a silly age, on a shot never ticked", []pressed{{5, 20000 * day1, "a", 1, got}, {6, 6 * day1, "b", 1, retake}}, []episode.ShotStatus{got, retake}},
		{"of days, on a shot ticked before", []pressed{{5, 3 * day1, "a", 1, got}, {6, 2 * day1, "b", 1, retake}, {7, 4 * day1, "c", 1, missing}}, []episode.ShotStatus{got, retake, retake}},
		{"the machine's clock was set back", []pressed{{60, 0, "a", 1, got}, {5, 0, "b", 1, retake}, {6, 0, "", 0, missing}}, []episode.ShotStatus{got, retake, missing}},
	} {
		t.Run(c.name, func(t *testing.T) {
			st, clock := openClocked(t)
			id, begin := addShot(t, st), clock.at
			for i, p := range c.ticks {
				clock.at = begin.Add(time.Duration(p.at) * time.Minute)
				holds := must(st.TickShot(t.Context(), id, store.ShotTick{Status: p.status, Age: p.age, By: p.by, Nth: p.nth}))(t)
				kept := must(st.Shot(t.Context(), id))(t)
				if holds != c.want[i] || kept.Status != c.want[i] {
					t.Errorf("after tick %d: %q is said to hold and %q is kept, want %q", i+1, holds, kept.Status, c.want[i])
				}
			}
		})
	}
}

// What does not count leaves everything as it is, so that no form open at the
// desk is stale for its sake.
func TestATickThatDoesNotCountChangesNothing(t *testing.T) {
	st, clock := openClocked(t)
	id := addShot(t, st)
	must(st.TickShot(t.Context(), id, store.ShotTick{Status: got, By: "b", Nth: 3}))(t)
	want := must(st.Shot(t.Context(), id))(t)
	clock.pass(time.Hour)
	for name, tick := range map[string]store.ShotTick{
		"older":        {Status: retake, Age: 2 * time.Hour, By: "a", Nth: 9},
		"the same":     {Status: got, By: "b", Nth: 3},
		"of before it": {Status: missing, By: "b", Nth: 2},
	} {
		if holds := must(st.TickShot(t.Context(), id, tick))(t); holds != got {
			t.Errorf("%s: %q holds, want got", name, holds)
		}
		same(t, name, must(st.Shot(t.Context(), id))(t), want)
	}
}

// A shot's form gives a status only if it is another than before.
func TestAStatusSavedInTheFormIsGivenThen(t *testing.T) {
	for _, c := range []struct {
		name        string
		form        episode.ShotStatus // saved at minute 10
		age         time.Duration      // of a tick "missing" at minute 20
		want        episode.ShotStatus
		by          string
		nth, before int64 // the tick's count, and that of the one at minute 5
	}{
		{"another status, a tick of before it", retake, 12 * time.Minute, retake, "a", 1, 1},
		{"another status, a tick of after it", retake, 8 * time.Minute, missing, "a", 1, 1},
		{"another status, a tick of before it by the phone that ticked last", retake, 12 * time.Minute, retake, "b", 2, 1},
		{"the same status, a tick of before it", got, 12 * time.Minute, missing, "a", 1, 1},
		{"the same status, a tick of before the last", got, 16 * time.Minute, got, "a", 1, 1},
		{"the same status, an earlier tick of one phone", got, 8 * time.Minute, got, "b", 1, 2},
	} {
		t.Run(c.name, func(t *testing.T) {
			st, clock := openClocked(t)
			id := addShot(t, st)
			clock.pass(5 * time.Minute)
			must(st.TickShot(t.Context(), id, store.ShotTick{Status: got, By: "b", Nth: c.before}))(t)
			clock.pass(5 * time.Minute)
			shot := must(st.Shot(t.Context(), id))(t)
			shot.Title, shot.Status = "another title", c.form
			ok(t, st.SaveShot(t.Context(), shot))
			clock.pass(10 * time.Minute)
			if holds := must(st.TickShot(t.Context(), id, store.ShotTick{Status: missing, Age: c.age, By: c.by, Nth: c.nth}))(t); holds != c.want {
				t.Errorf("%q holds, want %q", holds, c.want)
			}
		})
	}
}

// A shot of before there were times takes whatever tick comes first.
func TestTheFirstTickOfAnOldShotCounts(t *testing.T) {
	path, db, provider := blank(t)
	must(provider.UpTo(t.Context(), 33))(t)
	for _, text := range []string{
		`INSERT INTO episode (number, title, stage, dish, inspired_by, inspired_url, look, hook, target_minutes, notes)
		 VALUES (1, 'old', 'pitched', '', '', '', '', '', 0, '')`,
		`INSERT INTO shot (episode_id, position, title, kind, setup, component, step, status, note)
		 VALUES (1, 1, 'crumb', 'hero', '', '', 0, 'got', '')`,
	} {
		_, err := db.ExecContext(t.Context(), text)
		ok(t, err)
	}
	ok(t, db.Close())
	st := openAt(t, path, nil)
	for _, c := range []struct {
		age        time.Duration
		give, want episode.ShotStatus
	}{{2 * time.Hour, retake, retake}, {3 * time.Hour, missing, retake}, {time.Hour, missing, missing}} {
		if holds := must(st.TickShot(t.Context(), 1, store.ShotTick{Status: c.give, Age: c.age}))(t); holds != c.want {
			t.Errorf("a tick of %v ago: %q holds, want %q", c.age, holds, c.want)
		}
	}
}
