package store_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/store"
)

func TestTheCurrentCut(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	_, err := st.CurrentCut(t.Context(), id)
	wantFault(t, err, fault.NotFound)

	other := addEpisode(t, st, "two")
	must(st.AddCut(t.Context(), episode.Cut{EpisodeID: other, Name: "of another episode"}))(t)
	cuts := map[string]int64{}
	for _, name := range []string{"rough", "fine", "final"} {
		cuts[name] = must(st.AddCut(t.Context(), episode.Cut{EpisodeID: id, Name: name}))(t)
	}
	expect := func(when string, want ...string) {
		t.Helper()
		var names []string
		for _, c := range must(st.Cuts(t.Context(), id))(t) {
			names = append(names, c.Name)
		}
		same(t, when, names, want)
		if got := must(st.CurrentCut(t.Context(), id))(t).Name; got != want[0] {
			t.Errorf("%s: current is %q, want %q", when, got, want[0])
		}
	}
	expect("as added", "final", "fine", "rough")
	ok(t, st.UseCut(t.Context(), cuts["rough"]))
	expect("an older one used again", "rough", "final", "fine")
	ok(t, st.UseCut(t.Context(), cuts["rough"]))
	expect("the current one used again", "rough", "final", "fine")
	ok(t, st.DeleteCut(t.Context(), cuts["rough"]))
	expect("the current one deleted", "final", "fine")
	ok(t, st.UseCut(t.Context(), cuts["fine"]))
	ok(t, st.Restore(t.Context(), store.CutKind, cuts["rough"]))
	expect("restored after another was used", "fine", "rough", "final")
	cuts["last"] = must(st.AddCut(t.Context(), episode.Cut{EpisodeID: id, Name: "last"}))(t)
	expect("a new one", "last", "fine", "rough", "final")
	ok(t, st.DeleteCut(t.Context(), cuts["last"]))
	ok(t, st.Restore(t.Context(), store.CutKind, cuts["last"]))
	expect("the current one deleted and restored", "last", "fine", "rough", "final")
	wantFault(t, st.UseCut(t.Context(), 4711), fault.NotFound)
}

func TestListsOfAnEpisodeAreItsOwn(t *testing.T) {
	st := open(t)
	c := addCooking(t, st, "one")
	other := addCooking(t, st, "two")
	for _, at := range []int{90, 12, 45} {
		must(st.AddCorrection(t.Context(), episode.Correction{EpisodeID: c.episodeID, At: at}))(t)
	}
	must(st.AddCorrection(t.Context(), episode.Correction{EpisodeID: other.episodeID, At: 1}))(t)
	var times []int
	for _, correction := range must(st.Corrections(t.Context(), c.episodeID))(t) {
		times = append(times, correction.At)
	}
	same(t, "corrections by time", times, []int{12, 45, 90})

	for i, made := range []int{10, 12, 11} {
		must(st.AddTrial(t.Context(), episode.Trial{EpisodeID: c.episodeID, VersionID: c.versionID, MadeOn: day(2026, 3, made), Verdict: episode.Verdicts[i]}))(t)
	}
	must(st.AddTrial(t.Context(), episode.Trial{EpisodeID: other.episodeID, VersionID: c.versionID, MadeOn: day(2026, 3, 30), Verdict: "proved"}))(t)
	ok(t, st.DeleteTrial(t.Context(), must(st.AddTrial(t.Context(), episode.Trial{EpisodeID: c.episodeID, VersionID: c.versionID, MadeOn: day(2026, 3, 31), Verdict: "proved"}))(t)))
	days := func(trials []episode.Trial) (days []int) {
		for _, r := range trials {
			days = append(days, r.MadeOn.Day())
		}
		return days
	}
	same(t, "trials of the episode, the latest first", days(must(st.Trials(t.Context(), c.episodeID))(t)), []int{12, 11, 10})
	same(t, "trials of the version in all episodes", days(must(st.TrialsOfVersion(t.Context(), c.versionID))(t)), []int{30, 12, 11, 10})
}

// A cut keeps its turn while it is edited, and whoever saves late is told.
func TestACutIsEditedInItsTurn(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	rough := must(st.AddCut(t.Context(), episode.Cut{EpisodeID: id, Name: "rough"}))(t)
	must(st.AddCut(t.Context(), episode.Cut{EpisodeID: id, Name: "fine"}))(t)
	before := must(st.Cut(t.Context(), rough))(t)
	edited := before
	edited.Captions, edited.Seconds = "WEBVTT", 95
	ok(t, st.SaveCut(t.Context(), edited))
	wantFault(t, st.SaveCut(t.Context(), before), fault.Conflict)
	edited.Revision = 2
	same(t, "the edited cut", must(st.Cut(t.Context(), rough))(t), edited)
	if got := must(st.CurrentCut(t.Context(), id))(t).Name; got != "fine" {
		t.Errorf("the current cut is %q, want the other one still", got)
	}
	edited.Seconds = -1
	wantFault(t, st.SaveCut(t.Context(), edited), fault.Invalid)
	if all := must(st.Cuts(t.Context(), 4711))(t); len(all) != 0 {
		t.Errorf("an episode that is not there has %d cuts", len(all))
	}
}
