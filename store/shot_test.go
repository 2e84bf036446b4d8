package store_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
)

// shotsNamed are shots that differ in their titles.
func shotsNamed(titles ...string) (all []episode.Shot) {
	for _, title := range titles {
		all = append(all, episode.Shot{Title: title, Kind: "close-up", Status: episode.Missing})
	}
	return all
}

func TestShotsAreAddedTogether(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	must(st.AddShot(t.Context(), episode.Shot{EpisodeID: id, Title: "there already", Status: episode.Got}))(t)
	drafted := shotsNamed("layout", "knead", "hero")
	drafted[0].Layout, drafted[1].Component, drafted[1].Step = true, "Dough", 2
	ok(t, st.AddShots(t.Context(), id, 1, drafted))
	all := must(st.Shots(t.Context(), id))(t)
	if len(all) != 4 {
		t.Fatalf("%d shots, want 4", len(all))
	}
	for i, want := range []string{"there already", "layout", "knead", "hero"} {
		if all[i].Title != want || all[i].Position != i+1 || all[i].EpisodeID != id {
			t.Errorf("shot %d is %+v, want %q", i+1, all[i], want)
		}
	}
	if !all[1].Layout || all[2].Component != "Dough" || all[2].Step != 2 {
		t.Errorf("fields are lost: %+v", all)
	}
}

// The same press twice: the second finds what the first has added.
func TestShotsAreNotAddedTogetherTwice(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	ok(t, st.AddShots(t.Context(), id, 0, shotsNamed("layout", "hero")))
	wantFault(t, st.AddShots(t.Context(), id, 0, shotsNamed("layout", "hero")), fault.Conflict)
	if all := must(st.Shots(t.Context(), id))(t); len(all) != 2 {
		t.Errorf("%d shots, want 2", len(all))
	}
}

func TestOfShotsAddedTogetherOneThatDoesNotFitKeepsAllOut(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	wrong := shotsNamed("fine", "of no status")
	wrong[1].Status = "filmed"
	wantFault(t, st.AddShots(t.Context(), id, 0, wrong), fault.Invalid)
	wantFault(t, st.AddShots(t.Context(), id, 0, make([]episode.Shot, 501)), fault.Invalid)
	wantFault(t, st.AddShots(t.Context(), id+1, 0, shotsNamed("of no episode")), fault.NotFound)
	same(t, "shots", must(st.Shots(t.Context(), id))(t), []episode.Shot(nil))
}

// What was a shot before its states were named anew is the same shot after.
func TestUpgradingKeepsShots(t *testing.T) {
	path, db, provider := blank(t)
	must(provider.UpTo(t.Context(), 28))(t)
	for _, text := range []string{
		`INSERT INTO episode (number, title, stage, dish, inspired_by, inspired_url, look, hook, target_minutes, notes)
		 VALUES (1, 'old', 'pitched', '', '', '', '', '', 0, '')`,
		`INSERT INTO shot (episode_id, position, title, kind, setup, component, step, status, note, revision)
		 VALUES (1, 1, 'All the ingredients, laid out', 'overhead', 'overhead, window left', 'Dough', 3, 'to shoot', 'Slowly.', 4),
		        (1, 2, 'Dry ingredients fall', 'close-up', '', '', 0, 'got', '', 1),
		        (1, 3, 'Mise en place', 'overhead', '', '', 0, 'retake', '', 1)`,
		`INSERT INTO shot (shot_id, episode_id, position, title, kind, setup, component, step, status, note, deleted_at)
		 VALUES (9, 1, 1, 'gone', 'hero', '', '', 0, 'to shoot', '', '2027-01-01T00:00:00.000Z')`,
		`DELETE FROM shot WHERE shot_id = 9`,
	} {
		_, err := db.ExecContext(t.Context(), text)
		ok(t, err)
	}
	ok(t, db.Close())
	st := openAt(t, path, nil)
	same(t, "shots", must(st.Shots(t.Context(), 1))(t), []episode.Shot{
		{ID: 1, EpisodeID: 1, Position: 1, Title: "All the ingredients, laid out", Kind: "overhead", Setup: "overhead, window left", Component: "Dough", Step: 3, Layout: true, Status: episode.Missing, Note: "Slowly.", Revision: 4},
		{ID: 2, EpisodeID: 1, Position: 2, Title: "Dry ingredients fall", Kind: "close-up", Status: episode.Got, Revision: 1},
		{ID: 3, EpisodeID: 1, Position: 3, Title: "Mise en place", Kind: "overhead", Layout: true, Status: episode.Retake, Revision: 1},
	})
	id := must(st.AddShot(t.Context(), episode.Shot{EpisodeID: 1, Title: "new", Status: episode.Missing}))(t)
	if id != 10 {
		t.Errorf("a new shot has id %d, which may have been another's; want 10", id)
	}
}
