package web_test

import (
	"fmt"
	"net/http"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/views"
	"benchproof/web"
)

// filmedLoaf is an episode of the loaf with two shots: of the kneading, overhead,
// and of the shaping, at the table.
func filmedLoaf(t *testing.T) (s *site, path string) {
	t.Helper()
	s = newSite(t)
	path = s.start("Loaf", wholeLoaf)
	s.film(1, "overhead")
	s.film(3, "table")
	return s, path
}

// laid tells a sheet's blocks and rows: "overhead: 09:05 pour, crust; 1 of 2 got".
func laid(sheet views.ShotsSheet) (blocks []string) {
	for _, block := range sheet.Setups {
		var rows []string
		for _, row := range block.Shots {
			rows = append(rows, strings.TrimSpace(row.Clock+" "+row.Title))
		}
		blocks = append(blocks, block.Name+": "+strings.Join(rows, ", ")+"; "+block.Got)
	}
	return blocks
}

func mixedShots() []episode.Shot {
	return []episode.Shot{
		{ID: 1, Position: 1, Title: "pour", Setup: "overhead", Status: episode.Got, Step: 2},
		{ID: 2, Position: 2, Title: "crumb", Setup: "", Status: episode.Missing},
		{ID: 3, Position: 3, Title: "fold", Setup: "overhead", Status: episode.Got, Component: "3 Herbs, dried", Step: 1},
		{ID: 4, Position: 4, Title: "steam", Setup: "window", Status: episode.Retake, Step: 1},
		{ID: 5, Position: 5, Title: "crust", Setup: "", Status: episode.Got, Component: "Glaze", Step: 4},
	}
}

func TestShotsStandBySetupInTheOrderOfTheList(t *testing.T) {
	sheet := web.NewShotsSheet(shotDesk(twoParts), mixedShots())
	want := []string{"overhead: pour, fold; 2 of 2 got", "no setup yet: crumb, crust; 1 of 2 got", "window: steam; 0 of 1 got"}
	if diff := cmp.Diff(want, laid(sheet)); diff != "" {
		t.Errorf("blocks (-want +got):\n%s", diff)
	}
	if sheet.Got != "3 of 5 got" || !strings.Contains(sheet.Order, "order of the list") || sheet.OrderPath != "/episodes/7/shoot-day" {
		t.Errorf("got %q, order %q at %q", sheet.Got, sheet.Order, sheet.OrderPath)
	}
	if sheet.TickAction != "/episodes/7/shots/ticks" || sheet.CallSheet != "/episodes/7/call-sheet" {
		t.Errorf("ticks to %q, call sheet at %q", sheet.TickAction, sheet.CallSheet)
	}
}

// Shaping is first of the steps on the clock, whatever the list says; what no
// step times comes last.
func TestShotsStandByTheClockOfAPlan(t *testing.T) {
	begins := map[recipe.Position]int{{Component: 0, Step: 0}: 9*60 + 5, {Component: 0, Step: 1}: 24*60 + 10}
	sheet := web.PlannedShots(shotDesk(twoParts), mixedShots(), begins)
	want := []string{"window: 09:05 steam; 0 of 1 got", "overhead: 00:10 pour, fold; 2 of 2 got", "no setup yet: crumb, crust; 1 of 2 got"}
	if diff := cmp.Diff(want, laid(sheet)); diff != "" {
		t.Errorf("blocks (-want +got):\n%s", diff)
	}
	if !strings.Contains(sheet.Order, "clock") {
		t.Errorf("order %q", sheet.Order)
	}
	if beside := sheet.Setups[1].Shots[0].Beside; beside != "next day" {
		t.Errorf("the second day is marked %q", beside)
	}
	lost := map[string]string{}
	for _, block := range sheet.Setups {
		for _, row := range block.Shots {
			lost[row.Title] = row.Lost.Text
		}
	}
	wantLost := map[string]string{"steam": "", "pour": "", "crumb": "", "fold": "the day’s plan does not cook this step for the camera", "crust": "the recipe no longer has this step"}
	if diff := cmp.Diff(wantLost, lost); diff != "" {
		t.Errorf("what is lost (-want +got):\n%s", diff)
	}
}

func TestALayoutStandsBeforeAllSteps(t *testing.T) {
	shots := mixedShots()
	shots[1].Layout = true
	begins := map[recipe.Position]int{{Component: 0, Step: 0}: 0, {Component: 0, Step: 1}: 30}
	got := laid(web.PlannedShots(shotDesk(twoParts), shots, begins))
	want := []string{"no setup yet: crumb, crust; 1 of 2 got", "window: 00:00 steam; 0 of 1 got", "overhead: 00:30 pour, fold; 2 of 2 got"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("blocks (-want +got):\n%s", diff)
	}
}

func TestShotRow(t *testing.T) {
	shots := mixedShots()
	shots[3].Kind, shots[3].Note, shots[3].Layout = "insert", "Slowly.", true
	row := web.NewShotsSheet(shotDesk(twoParts), shots).Setups[2].Shots[0]
	row.UpAction, row.DownAction = "", ""
	want := views.ShotRow{
		ID: "shot-4", Tick: "4", Kind: "insert", Title: "steam", Tie: "Step 1", Layout: true, Note: "Slowly.",
		Presses:  []views.Press{{State: "got"}, {State: "missing"}, {State: "retake", Pressed: true}},
		EditPath: "/episodes/7/shots?change=shot-4#shot", DeleteAction: "/episodes/7/shots/4/delete",
	}
	if diff := cmp.Diff(want, row); diff != "" {
		t.Errorf("row (-want +got):\n%s", diff)
	}
}

// moved tells the places of each row's presses: "pour ↓2".
func moved(sheet views.ShotsSheet) (all []string) {
	for _, block := range sheet.Setups {
		for _, row := range block.Shots {
			text := row.Title
			for _, each := range []struct{ arrow, action string }{{" ↑", row.UpAction}, {" ↓", row.DownAction}} {
				if _, by, ok := strings.Cut(each.action, "/move?by="); ok {
					text += each.arrow + by
				}
			}
			all = append(all, text)
		}
	}
	return all
}

// A shot changes places with the one drawn next to it, however far that stands in
// the list; the first of a block takes the block up.
func TestShotsMoveAsTheyAreDrawn(t *testing.T) {
	want := []string{"pour ↓2", "fold ↑-2", "crumb ↑-1 ↓3", "crust ↑-3", "steam ↑-2"}
	if diff := cmp.Diff(want, moved(web.NewShotsSheet(shotDesk(twoParts), mixedShots()))); diff != "" {
		t.Errorf("moves (-want +got):\n%s", diff)
	}
	begins := map[recipe.Position]int{{Component: 0, Step: 1}: 60}
	want = []string{"pour", "fold", "crumb ↓3", "crust ↑-3", "steam"}
	if diff := cmp.Diff(want, moved(web.PlannedShots(shotDesk(twoParts), mixedShots(), begins))); diff != "" {
		t.Errorf("moves in a plan (-want +got):\n%s", diff)
	}
}

func TestMovingByPlaces(t *testing.T) {
	s := newSite(t)
	path := s.start("Scones", scones)
	for _, title := range []string{"Aaa", "Bbb", "Ccc", "Ddd"} {
		s.post(path+"/shots", "title", title, "kind", "hero", "status", "missing", "setup", title)
	}
	for _, step := range []struct{ move, want string }{
		{"4/move?by=-3", "Ddd Aaa Bbb Ccc"}, {"4/move?by=2", "Aaa Bbb Ddd Ccc"}, {"1/move?by=99", "Bbb Ddd Ccc Aaa"},
		{"2/move?by=-99", "Bbb Ddd Ccc Aaa"}, {"2/move?by=x", "Ddd Bbb Ccc Aaa"}, {"2/move?by=0", "Ddd Bbb Ccc Aaa"},
	} {
		if got := s.post(path + "/shots/" + step.move); got.status != http.StatusSeeOther {
			t.Fatalf("%s = %d", step.move, got.status)
		}
		shots, err := s.store.Shots(t.Context(), 1)
		if err != nil {
			t.Fatal(err)
		}
		var titles []string
		for _, shot := range shots {
			titles = append(titles, shot.Title)
		}
		if is := strings.Join(titles, " "); is != step.want {
			t.Errorf("after %s they stand %s, want %s", step.move, is, step.want)
		}
	}
}

// The loaf is kneaded at 09:00 and shaped at 11:10: see TestTheLoafOnTheClock.
func TestShotsFollowThePlanOfTheDay(t *testing.T) {
	s, path := filmedLoaf(t)
	s.film(5, "overhead")
	if err := s.store.DeleteBatch(t.Context(), 1); err != nil {
		t.Fatal(err)
	}
	s.post(path+"/shots", "title", "The finished loaf", "kind", "hero", "status", "missing", "setup", "window")
	s.shows(path+"/shots", "In the order of the list, for the day is not planned yet. Plan the shoot day",
		"3 in the order of the list, as far as cooking allows it ✓ cooking allows no fewer")
	s.setMakes(1)
	page := words(s.shows(path+"/shots", "By the clock of the day’s plan", "09:00 overhead the step", "11:10 overhead the step", "12:05 overhead the step",
		"3 in the order of the day’s plan ✓ cooking allows no fewer"))
	overhead, table, window := strings.Index(page, " overhead 0 of 2 got"), strings.Index(page, " table 0 of 1 got"), strings.Index(page, " window 0 of 1 got")
	if overhead < 0 || table < overhead || window < table {
		t.Errorf("setups stand at %d, %d, %d:\n%s", overhead, table, window, page)
	}
}

// The loaf is kneaded until 09:10, the camera goes to the table until 09:15, and
// proving begins. That is filmed for its first minutes: the shot is due then, not
// when the rest of the wait begins.
func TestAShotOfALongWaitIsDueAtItsBeginning(t *testing.T) {
	s, path := filmedLoaf(t)
	s.film(2, "table")
	s.shows(path+"/shots", "table 0 of 2 got Edit the setup table 09:15 overhead the step")
}

func TestGotText(t *testing.T) {
	for _, c := range []struct {
		statuses string
		want     string
	}{{"", ""}, {"got", "1 of 1 got"}, {"got missing retake", "1 of 3 got"}, {"retake", "0 of 1 got"}} {
		var shots []episode.Shot
		for _, status := range strings.Fields(c.statuses) {
			shots = append(shots, episode.Shot{Status: episode.ShotStatus(status)})
		}
		if got := web.GotText(shots); got != c.want {
			t.Errorf("GotText(%s) = %q, want %q", c.statuses, got, c.want)
		}
	}
}

func TestDraftAShotList(t *testing.T) {
	s := newSite(t)
	path := s.start("Loaf", wholeLoaf)
	s.shows(path+"/shots", "No shots yet.", "Draft a shot list", "7 shots from the recipe")
	for range 2 { // pressed twice
		if got := s.post(path+"/shots/draft", "have", "0"); got.status != http.StatusSeeOther || got.to != path+"/shots" {
			t.Fatalf("drafting = %d to %q", got.status, got.to)
		}
	}
	page := words(s.shows(path+"/shots", "0 of 7 got", "overhead 0 of 4 got", "insert 0 of 2 got", "hero 0 of 1 got", "The ingredients laid out", "Knead the flour and water for 10 minutes", "The finished dish", "covered Every step has a shot"))
	if strings.Contains(page, "Draft a shot list") || strings.Contains(page, "Add these") {
		t.Error("a list that leaves nothing out is offered more")
	}
}

func TestDraftWhatIsLeft(t *testing.T) {
	s, path := filmedLoaf(t)
	s.shows(path+"/shots", "3 of 5 steps without a shot: Step 2 , Step 4 , Step 5 .", "Nothing shows the ingredients laid out: add a layout .",
		"Nothing shows the finished dish: add a hero .", "Add these 5 shots")
	s.shows(path + "/shots") // the number of shots is sent along
	if got := s.post(path+"/shots/draft", "have", "1"); got.status != http.StatusSeeOther {
		t.Fatalf("drafting from an old page = %d", got.status)
	}
	s.shows(path+"/shots", "The shot list has changed meanwhile; nothing was added.", "0 of 2 got")
	s.post(path+"/shots/draft", "have", "2")
	s.shows(path+"/shots", "Added: 5 shots.", "0 of 7 got", "no setup yet 0 of 5 got", "Every step has a shot")
	s.post(path+"/shots/draft", "have", "7")
	s.shows(path+"/shots", "0 of 7 got")
}

func TestNothingIsDraftedWithoutARecipe(t *testing.T) {
	s := newSite(t)
	path := s.start("Only an idea", "")
	if page := words(s.shows(path+"/shots", "No shots yet.")); strings.Contains(page, "Draft a shot list") {
		t.Error("a draft is offered without a recipe")
	}
	s.post(path+"/shots", "title", "The host", "kind", "piece to camera", "status", "missing")
	s.shows(path+"/shots", "Nothing shows the finished dish: add a hero .")
}

// What people type is text, wherever it is drawn again.
func TestShotsAreDrawnAsText(t *testing.T) {
	s := newSite(t)
	path := s.start("Loaf", wholeLoaf)
	const nasty = `<script>alert(1)</script> "&`
	s.post(path+"/shots", "title", nasty, "kind", "hero", "status", "missing", "setup", nasty, "note", nasty)
	s.post(path+"/shots", "title", "two", "kind", "hero", "status", "missing", "setup", "plain")
	for _, sheet := range []string{"/shots", "/call-sheet", "/shots?change=shot-1"} {
		if page := s.shows(path + sheet); strings.Contains(page, "<script>alert") {
			t.Errorf("%s runs what was typed", sheet)
		}
	}
	s.shows(fmt.Sprintf("%s/shots", path), nasty)
}

// A tick on the phone while the shot is edited at the desk: neither is lost.
func TestATickMeetsAnOpenForm(t *testing.T) {
	s, path := filmedLoaf(t)
	revision := value(t, s.get(path+"/shots?change=shot-1").body, "revision")
	s.post(path+"/shots/ticks", "shot", "1", "status", "got")
	late := s.post(path+"/shots/1", "revision", revision, "title", "Typed at the desk", "kind", "overhead", "setup", "overhead", "step", "1 ", "status", "missing")
	if late.status != http.StatusConflict || !strings.Contains(late.body, "Typed at the desk") {
		t.Errorf("the form = %d, want 409 with what was typed", late.status)
	}
	if page := words(late.body); !strings.Contains(page, "got") || !strings.Contains(page, "missing") {
		t.Errorf("the two states are not shown:\n%s", page)
	}
	s.shows(path+"/shots", "1 of 2 got", "the step")
}

// A loaf is shaped the day before: it is baked at 09:00 and sliced at 09:40, while
// the one that is shaped for the camera proves until 11:10. So the camera goes to
// the table once, where cooking in one go would bring it back.
func TestWhatASwapOutHasDoneIsFilmedApart(t *testing.T) {
	s, path := filmedLoaf(t)
	s.film(5, "overhead")
	s.shows(path+"/shots", "table 0 of 1 got Edit the setup table 11:10", "2 in the order of the day’s plan ✓ cooking allows no fewer")
	swapOut := episode.Batch{EpisodeID: 1, Kind: episode.SwapOut, Makes: measure.Whole(1), Step: 3, Overnight: true}
	if _, err := s.store.AddBatch(t.Context(), swapOut); err != nil {
		t.Fatal(err)
	}
	s.shows(path+"/shots", "overhead 0 of 2 got Edit the setup overhead 09:00", "09:40 overhead the step", "table 0 of 1 got Edit the setup table 11:10",
		"1 in the order of the day’s plan ✓ cooking allows no fewer")
	s.shows(path+"/call-sheet", "Made ahead 1 × swap-out up to step 3, the day before",
		"The day before, at the latest: 19:35 Knead the flour and water for 10 minutes.", "21:45 Shape the dough for 15 minutes.")
}

// A make that is only made ahead is not filmed: the list keeps its order.
func TestADayOfSwapOutsAloneTimesNoShot(t *testing.T) {
	s, path := filmedLoaf(t)
	if err := s.store.DeleteBatch(t.Context(), 1); err != nil {
		t.Fatal(err)
	}
	s.addBatch(episode.SwapOut, 1)
	page := words(s.shows(path+"/shots", "In the order of the list"))
	if strings.Contains(page, "09:00") || strings.Contains(page, "for the camera") {
		t.Errorf("a shot is timed by a make that nobody films:\n%s", page)
	}
}

// Years of shots on one list: what bounds how long the sheet takes.
func BenchmarkShotsSheet(b *testing.B) {
	var shots []episode.Shot
	for i := range 500 {
		shots = append(shots, custardShot("Custard", 1+i%3, episode.ShotKinds[i%7], fmt.Sprint("setup ", i%20)))
	}
	b.ReportAllocs()
	for b.Loop() {
		if sheet := web.NewShotsSheet(shotDesk(burntCustard), shots); len(sheet.Setups) != 20 {
			b.Fatal("setups are lost")
		}
	}
}
