package web_test

import (
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/store"
	"benchproof/views"
	"benchproof/web"
)

// seasonRow is an episode that is released on a day, "" for none.
func seasonRow(t testing.TB, title string, stage episode.Stage, on string) store.SeasonRow {
	t.Helper()
	row := store.SeasonRow{Episode: episode.Episode{ID: 7, Title: title, Stage: stage}}
	row.Facts.Stage = stage
	if on != "" {
		day, err := time.Parse(time.DateOnly, on)
		if err != nil {
			t.Fatal(err)
		}
		row.Episode.ReleaseOn = day
		row.Facts.HasReleaseDate = true
	}
	return row
}

func TestSeasonGroups(t *testing.T) {
	rows := []store.SeasonRow{ // as the store gives them: the newest first
		seasonRow(t, "in May", episode.InDevelopment, "2027-05-01"),
		seasonRow(t, "in April", episode.ReadyToShoot, "2027-04-01"),
		seasonRow(t, "out in February", episode.Released, "2027-02-20"),
		seasonRow(t, "out in January", episode.Released, "2027-01-20"),
		seasonRow(t, "late", episode.InTheEdit, "2027-01-10"),
		seasonRow(t, "some day", episode.Pitched, ""),
		seasonRow(t, "out, nobody knows when", episode.Released, ""),
	}
	got := map[string][]string{}
	var titles []string
	for _, group := range web.SeasonGroups(rows, today) {
		titles = append(titles, group.Title)
		for _, e := range group.Episodes {
			got[group.Title] = append(got[group.Title], e.Title)
		}
	}
	if diff := cmp.Diff([]string{"Coming", "Not dated", "Released"}, titles); diff != "" {
		t.Errorf("groups (-want +got):\n%s", diff)
	}
	want := map[string][]string{
		"Coming":    {"late", "in April", "in May"},
		"Not dated": {"some day"},
		"Released":  {"out in February", "out in January", "out, nobody knows when"},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("episodes (-want +got):\n%s", diff)
	}
}

func TestGroupsWithoutEpisodesAreLeftOut(t *testing.T) {
	if got := web.SeasonGroups(nil, today); len(got) != 0 {
		t.Errorf("an empty season has %d groups", len(got))
	}
	for _, c := range []struct {
		row   store.SeasonRow
		title string
	}{
		{seasonRow(t, "a", episode.Released, ""), "Released"},
		{seasonRow(t, "b", episode.Pitched, ""), "Not dated"},
		{seasonRow(t, "c", episode.Pitched, "2027-05-01"), "Coming"},
	} {
		got := web.SeasonGroups([]store.SeasonRow{c.row}, today)
		if len(got) != 1 || got[0].Title != c.title {
			t.Errorf("%q stands in %+v, want only %s", c.row.Episode.Title, got, c.title)
		}
	}
}

func TestEpisodeRowDates(t *testing.T) {
	for _, c := range []struct{ name, on, date, year string }{
		{"none", "", "not dated", ""},
		{"this year", "2027-03-14", "14 Mar", ""},
		{"the last day of this year", "2027-12-31", "31 Dec", ""},
		{"next year", "2028-01-01", "1 Jan", "2028"},
		{"last year", "2026-12-31", "31 Dec", "2026"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := web.EpisodeRow(seasonRow(t, "x", episode.Pitched, c.on), today)
			if got.Date != c.date || got.Year != c.year {
				t.Errorf("date %q year %q, want %q %q", got.Date, got.Year, c.date, c.year)
			}
		})
	}
}

func TestWhatIsFalseIsNamedFirst(t *testing.T) {
	row := seasonRow(t, "x", episode.InTheEdit, "2027-05-01")
	row.Facts.HasRecipe, row.Facts.HasCut, row.Facts.HasCaptions, row.Facts.Findings = true, true, true, 3
	open := episode.StillOpen(row.Facts)
	got := web.EpisodeRow(row, today)
	if len(open) < 5 {
		t.Fatalf("only %d things are open; the case needs more", len(open))
	}
	if len(got.Open) != 3 || got.More != len(open)-3 {
		t.Errorf("%d named and %d more, want 3 and %d", len(got.Open), got.More, len(open)-3)
	}
	if !got.Open[0].Wrong || got.Open[0].Path != "/episodes/7/cut" {
		t.Errorf("first comes %+v, want what the cut says otherwise", got.Open[0])
	}
	seen := false
	for _, o := range got.Open {
		if !o.Wrong {
			seen = true
		} else if seen {
			t.Errorf("%q is false and comes after what is only missing", o.Text)
		}
		if first := o.Text[:1]; first != strings.ToLower(first) {
			t.Errorf("%q does not read on", o.Text)
		}
	}
}

func TestEverythingOpenIsNamedWhereItIsLittle(t *testing.T) {
	row := seasonRow(t, "x", episode.Released, "2027-01-01")
	row.Facts.HasRecipe, row.Facts.HasCut, row.Facts.HasCaptions, row.Facts.Findings = true, true, true, 1
	open := episode.StillOpen(row.Facts)
	if len(open) == 0 || len(open) > 3 {
		t.Fatalf("%d things are open; the case needs one to three", len(open))
	}
	if got := web.EpisodeRow(row, today); len(got.Open) != len(open) || got.More != 0 {
		t.Errorf("%d named and %d more, want all %d", len(got.Open), got.More, len(open))
	}
}

func TestFirstSheet(t *testing.T) {
	if got := web.FirstSheet(episode.Episode{}); got != views.SheetBrief {
		t.Errorf("without a recipe work goes on at %q, want the brief", got)
	}
	if got := web.FirstSheet(episode.Episode{RecipeID: 3}); got != views.SheetRecipe {
		t.Errorf("with a recipe work goes on at %q, want the recipe", got)
	}
}

func TestTheFrameMarksTheSheetsWhereSomethingIsOpen(t *testing.T) {
	d := web.NewDesk(newShow(), episode.Episode{ID: 7, Number: 31, Title: "Scones", Stage: episode.InTheEdit, ReleaseOn: time.Date(2028, 1, 2, 0, 0, 0, 0, time.UTC)}, "", sconesRecipe(t))
	facts := episode.Facts{Stage: episode.InTheEdit, HasRecipe: true, HasCut: true, HasCaptions: true, Findings: 2}
	frame := web.Frame(today, d, facts, views.SheetCut)
	if frame.Number != "Ep 31" || frame.ReleaseOn != "out 2 Jan 2028" || frame.Path != "/episodes/7" || frame.Sheet != views.SheetCut {
		t.Errorf("frame %+v", frame)
	}
	total := 0
	for _, n := range frame.Marks {
		total += n
	}
	if total != len(frame.Open) || total != len(episode.StillOpen(facts)) {
		t.Errorf("%d marks for %d open things, want %d", total, len(frame.Open), len(episode.StillOpen(facts)))
	}
	if frame.Marks[views.SheetCut] == 0 {
		t.Error("the cut has no mark")
	}
	undated := web.NewDesk(newShow(), episode.Episode{ID: 7, Title: "Scones"}, "", sconesRecipe(t))
	if got := web.Frame(today, undated, facts, views.SheetCut); got.ReleaseOn != "" || got.Number != "" {
		t.Errorf("an episode without date and number is headed %q %q", got.Number, got.ReleaseOn)
	}
}
