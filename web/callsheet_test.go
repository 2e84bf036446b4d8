package web_test

import (
	"errors"
	"net/http"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/views"
	"benchproof/web"
)

// The loaf is begun at 09:00 and wraps at 12:10: see TestTheLoafOnTheClock.
func TestTheCallSheetOfALoaf(t *testing.T) {
	s, path := filmedLoaf(t)
	s.setDay(path, "on", "2027-03-12", "light", "16:30", "helper", "11:30")
	revision := value(t, s.get(path+"/shoot-day").body, "revision")
	kitchen := []string{"revision", revision, "holds", "1", "ovens", "1", "rings", "2", "mixers", "1", "people", "Odile\n\n Tamsin ", "gear", "Overhead arm", "props", "Blue cloth"}
	if got := s.post(path+"/shoot-day/kitchen", kitchen...); got.status != http.StatusSeeOther {
		t.Fatalf("saving the kitchen = %d\n%s", got.status, words(got.body))
	}
	s.describes(path, "overhead", "name", "overhead", "lens", "35 mm")
	s.post(path+"/shots/ticks", "shot", "2", "status", "retake")
	page := words(s.shows(path+"/call-sheet",
		"12 Mar Call sheet Friday 12 March 2027", "09:00 begin", "12:10 wrap", "11:30 the helper leaves", "16:30 the light goes",
		"people Odile Tamsin", "gear Overhead arm", "props Blue cloth", "shopping 1 of 1 still to get",
		"The day 09:00 Knead the flour and water for 10 minutes. ● filmed: overhead",
		"Setups and shots 0 of 2 got", "overhead 35 mm 09:00 the step overhead · Step 1", "table 11:10 the step ✗ retake overhead · Step 3"))
	for _, pressed := range []string{"fix", "got missing retake", "Delete", "Move up"} {
		if strings.Contains(page, pressed) {
			t.Errorf("the call sheet offers %q", pressed)
		}
	}
	s.shows(path+"/shots", "Call sheet")
	s.shows(path+"/shoot-day", "Call sheet Calendar file")
}

func TestTheCallSheetSaysWhatIsMadeAhead(t *testing.T) {
	s, path := filmedLoaf(t)
	s.addBatch(episode.SwapOut, 1)
	if _, err := s.store.AddBatch(t.Context(), episode.Batch{EpisodeID: 1, Kind: episode.Spare, Makes: measure.Whole(2), Note: "for the hero"}); err != nil {
		t.Fatal(err)
	}
	page := words(s.shows(path+"/call-sheet", "Made ahead", "1 × swap-out", "2 × spare for the hero", "swap-out begins until", "made ahead"))
	if strings.Contains(page, "shopping 0") {
		t.Errorf("nothing to buy is said:\n%s", page)
	}
}

// With nothing but a title there is a sheet to print, and it says what to do.
func TestTheCallSheetOfNothing(t *testing.T) {
	s := newSite(t)
	path := s.start("Only an idea", "")
	s.shows(path+"/call-sheet", "no day set yet", "09:00 begin", "no plan", "Shoot day")
	if got := s.get("/episodes/99/call-sheet"); got.status != http.StatusNotFound {
		t.Errorf("of no episode = %d", got.status)
	}
}

func TestTheCallSheetSaysWhyThereIsNoPlan(t *testing.T) {
	s, path := filmedLoaf(t)
	s.setDay(path, "done", "10:00")
	page := words(s.shows(path+"/call-sheet", "no plan", "cannot finish by 10:00", "10:00 to be done by", "Setups and shots", "the step overhead · Step 1"))
	if strings.Contains(page, "wrap ") || strings.Contains(page, "The day 09") {
		t.Errorf("a day without a plan has one:\n%s", page)
	}
}

func TestNewCallSheetWithoutAPlan(t *testing.T) {
	shoot := []episode.Batch{{Kind: episode.ShootBatch, Makes: measure.Whole(1)}}
	day := episode.NewShootDay(7)
	day.People, day.On = "Odile", time.Date(2027, 3, 12, 0, 0, 0, 0, time.UTC)
	for _, c := range []struct {
		name    string
		batches []episode.Batch
		noPlan  error
		want    string
	}{
		{"no batch", nil, nil, "No batch is planned for the shoot. Plan one on the Shop sheet."},
		{"nothing found", shoot, &fault.Error{Kind: fault.Busy, Say: "Try again."}, "Try again."},
		{"cannot be met", shoot, fault.Invalidf("finish", "It cannot finish by 10:00."), "It cannot finish by 10:00."},
	} {
		t.Run(c.name, func(t *testing.T) {
			shots := []episode.Shot{custardShot("Custard", 1, "wide", "bench"), custardShot("Caramel", 1, "insert", "")}
			got := web.CallSheetOf(shotDesk(burntCustard), day, c.batches, shots, c.noPlan)
			if got.NoPlan != c.want || got.Plan != nil {
				t.Errorf("no plan %q, want %q; %d rows", got.NoPlan, c.want, len(got.Plan))
			}
			if len(got.Setups) != 2 || got.Setups[0].Name != "bench" || got.Missing != "0 of 2 got" {
				t.Errorf("setups %+v, %q", got.Setups, got.Missing)
			}
			want := []views.CallList{{Name: "people", Lines: []string{"Odile"}}}
			if diff := cmp.Diff(want, got.Here); diff != "" {
				t.Errorf("who is here (-want +got):\n%s", diff)
			}
		})
	}
	if got := web.CallSheetOf(shotDesk(burntCustard), day, shoot, nil, errors.New("broken")); got.NoPlan == "" {
		t.Error("an error is taken for a plan")
	}
}

func TestLinesOf(t *testing.T) {
	for text, want := range map[string][]string{"": nil, " \n \n": nil, "one": {"one"}, "one\r\n two \n\nthree": {"one", "two", "three"}} {
		if diff := cmp.Diff(want, web.LinesOf(text)); diff != "" {
			t.Errorf("LinesOf(%q) (-want +got):\n%s", text, diff)
		}
	}
}
