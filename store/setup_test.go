package store_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/store"
)

// described is a setup of an episode, in other words for each note.
func described(episodeID int64, name, note string) episode.Setup {
	return episode.Setup{EpisodeID: episodeID, Name: name, Camera: "arm, " + note, Lens: "35 mm, " + note, Light: "window, " + note}
}

// revised is u at a revision.
func revised(u episode.Setup, revision int) episode.Setup {
	u.Revision = revision
	return u
}

// namingShots adds a shot for each name, and tells what the shots name later.
func namingShots(t testing.TB, st *store.Store, episodeID int64, names ...string) (now func() string) {
	t.Helper()
	for _, name := range names {
		must(st.AddShot(t.Context(), episode.Shot{EpisodeID: episodeID, Title: "a shot", Setup: name, Status: episode.Missing}))(t)
	}
	return func() string {
		t.Helper()
		var setups []string
		for _, h := range must(st.Shots(t.Context(), episodeID))(t) {
			setups = append(setups, h.Setup)
		}
		return strings.Join(setups, " ")
	}
}

func TestSetupIsKept(t *testing.T) {
	st := open(t)
	one, two := addEpisode(t, st, "one"), addEpisode(t, st, "two")
	same(t, "a new episode's setups", must(st.Setups(t.Context(), one))(t), []episode.Setup(nil))
	table, over := described(one, "table", "low"), described(one, "overhead", "high")
	ok(t, st.SaveSetup(t.Context(), "table", table))
	ok(t, st.SaveSetup(t.Context(), "overhead", over))
	ok(t, st.SaveSetup(t.Context(), "table", described(two, "table", "of another episode")))
	same(t, "setups", must(st.Setups(t.Context(), one))(t), []episode.Setup{revised(over, 1), revised(table, 1)})

	again := revised(described(one, "table", "lower still"), 1)
	ok(t, st.SaveSetup(t.Context(), "table", again))
	same(t, "after a second save", must(st.Setups(t.Context(), one))(t), []episode.Setup{revised(over, 1), revised(again, 2)})
	same(t, "of another episode", must(st.Setups(t.Context(), two))(t)[0].Camera, "arm, of another episode")
}

func TestAStaleSetupIsRefused(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	theirs := described(id, "table", "theirs")
	ok(t, st.SaveSetup(t.Context(), "table", theirs))
	for _, revision := range []int{0, 2, -1} {
		wantFault(t, st.SaveSetup(t.Context(), "table", revised(described(id, "table", "mine"), revision)), fault.Conflict)
		wantFault(t, st.SaveSetup(t.Context(), "table", revised(described(id, "desk", "mine"), revision)), fault.Conflict)
	}
	wantFault(t, st.SaveSetup(t.Context(), "gone", revised(described(id, "gone", "mine"), 3)), fault.Conflict)
	same(t, "setups", must(st.Setups(t.Context(), id))(t), []episode.Setup{revised(theirs, 1)})
}

func TestASetupIsRenamedOnItsShots(t *testing.T) {
	st := open(t)
	id, other := addEpisode(t, st, "one"), addEpisode(t, st, "two")
	now := namingShots(t, st, id, "table", "overhead", "table", "")
	elsewhere := namingShots(t, st, other, "table")
	ok(t, st.SaveSetup(t.Context(), "table", described(id, "window table", "low")))
	same(t, "setups of the shots", now(), "window table overhead window table ")
	same(t, "setups of another episode's shots", elsewhere(), "table")
	renamed := must(st.Shots(t.Context(), id))(t)
	same(t, "revisions", []int{renamed[0].Revision, renamed[1].Revision}, []int{2, 1})

	again := revised(described(id, "desk", "low"), 1)
	ok(t, st.SaveSetup(t.Context(), "window table", again))
	same(t, "described", must(st.Setups(t.Context(), id))(t), []episode.Setup{revised(again, 2)})
	same(t, "setups of the shots", now(), "desk overhead desk ")
}

// A shot that is deleted while its setup is renamed comes back with the setup.
func TestARenamedSetupWaitsForDeletedShots(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	now := namingShots(t, st, id, "table")
	shot := must(st.Shots(t.Context(), id))(t)[0].ID
	ok(t, st.DeleteShot(t.Context(), shot))
	ok(t, st.SaveSetup(t.Context(), "table", described(id, "desk", "")))
	ok(t, st.Restore(t.Context(), store.ShotKind, shot))
	same(t, "its setup", now(), "desk")
}

func TestSetupsComeTogether(t *testing.T) {
	tests := []struct {
		name     string
		taken    func(id int64) episode.Setup // what "overhead" is already
		mine     func(id int64) episode.Setup // what "over head" becomes
		refused  bool
		overhead string // its camera afterwards
	}{
		{"the other is only named", nil, func(id int64) episode.Setup { return described(id, "overhead", "mine") }, false, "arm, mine"},
		{"mine says nothing",
			func(id int64) episode.Setup { return described(id, "overhead", "theirs") },
			func(id int64) episode.Setup { return episode.Setup{EpisodeID: id, Name: "overhead"} }, false, "arm, theirs"},
		{"both say the same",
			func(id int64) episode.Setup { return described(id, "overhead", "theirs") },
			func(id int64) episode.Setup { return described(id, "overhead", "theirs") }, false, "arm, theirs"},
		{"mine says otherwise",
			func(id int64) episode.Setup { return described(id, "overhead", "theirs") },
			func(id int64) episode.Setup { return described(id, "overhead", "mine") }, true, "arm, theirs"},
	}
	for _, c := range tests {
		t.Run(c.name, func(t *testing.T) {
			st := open(t)
			id := addEpisode(t, st, "one")
			now := namingShots(t, st, id, "over head", "overhead")
			if c.taken != nil {
				ok(t, st.SaveSetup(t.Context(), "overhead", c.taken(id)))
			}
			err := st.SaveSetup(t.Context(), "over head", c.mine(id))
			want := "overhead overhead"
			if c.refused {
				wantFault(t, err, fault.Invalid)
				want = "over head overhead"
			} else {
				ok(t, err)
			}
			same(t, "setups of the shots", now(), want)
			all := must(st.Setups(t.Context(), id))(t)
			if len(all) != 1 || all[0].Camera != c.overhead {
				t.Errorf("setups %+v, want one with the camera at %q", all, c.overhead)
			}
		})
	}
}

func TestASetupNeedsANameAndAnEpisode(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	wantFault(t, st.SaveSetup(t.Context(), "table", episode.Setup{EpisodeID: id}), fault.Invalid)
	wantFault(t, st.SaveSetup(t.Context(), "table", episode.Setup{EpisodeID: id + 1, Name: "table"}), fault.NotFound)
	ok(t, st.DeleteEpisode(t.Context(), id))
	wantFault(t, st.SaveSetup(t.Context(), "table", episode.Setup{EpisodeID: id, Name: "table"}), fault.NotFound)
}

func TestSetupsAreBounded(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	execRaw(t, st, `
WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 500)
INSERT INTO setup (episode_id, name, camera, lens, light)
SELECT ?1, 'setup ' || i, '', '', '' FROM n`, id)
	wantFault(t, st.SaveSetup(t.Context(), "one more", described(id, "one more", "")), fault.Invalid)
	ok(t, st.SaveSetup(t.Context(), "setup 7", revised(described(id, "setup 7", "changed"), 1)))
}
