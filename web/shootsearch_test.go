package web_test

import (
	"fmt"
	"net/http"
	"strings"
	"testing"

	"benchproof/kitchen/episode"
)

// banquet is eight dishes of six steps by hand, each step filmed from one of
// four sides in an order of the dish's own: which order changes the camera least
// is hard to prove.
func (s *site) banquet() (path string) {
	s.t.Helper()
	var b strings.Builder
	b.WriteString("Feast\n")
	for dish := range 8 {
		fmt.Fprintf(&b, "\nFor the dish %d:\n\n500 g flour\n\n", dish+1)
		for n := range 6 {
			fmt.Fprintf(&b, "Shape by hand for %d minutes.\n", 5+(dish+n)%7)
		}
	}
	path = s.start("Feast", b.String())
	s.setMakes(1)
	for dish := range 8 {
		for n := range 6 {
			side := string(rune('a' + (dish*(n%3+1)+n*(dish%3+1))%4))
			shot := episode.Shot{EpisodeID: 1, Title: "the step", Kind: "overhead", Setup: side, Component: fmt.Sprintf("Dish %d", dish+1), Step: n + 1, Status: episode.Missing}
			if _, err := s.store.AddShot(s.t.Context(), shot); err != nil {
				s.t.Fatal(err)
			}
		}
	}
	return path
}

// A banquet is not proved best within a page's time: a better plan is looked
// for in the background, tells how far it has come, and is stopped with its best
// kept.
func TestABetterPlanIsLookedFor(t *testing.T) {
	s := newSite(t)
	path := s.banquet()
	s.shows(path+"/shoot-day", "Look longer for a better plan")
	if got := s.get(path + "/shoot-day/search"); got.status != http.StatusNoContent {
		t.Errorf("asking before it begins = %d, want 204", got.status)
	}
	before := s.get(path + "/shoot-day.csv").body

	if got := s.post(path + "/shoot-day/search"); got.status != http.StatusSeeOther {
		t.Fatalf("beginning = %d\n%s", got.status, words(got.body))
	}
	if told := s.get(path + "/shoot-day/search"); told.status == http.StatusOK && !strings.HasPrefix(told.body, "Looking for a better plan") {
		t.Errorf("it tells %q", told.body)
	}
	s.post(path + "/shoot-day/search") // a second press does no harm
	if got := s.post(path + "/shoot-day/search/stop"); got.status != http.StatusSeeOther {
		t.Fatalf("stopping = %d", got.status)
	}
	if got := s.get(path + "/shoot-day/search"); got.status != http.StatusNoContent {
		t.Errorf("asking after the stop = %d, want 204", got.status)
	}
	if after := s.get(path + "/shoot-day.csv").body; lastEnd(after) > lastEnd(before) {
		t.Errorf("the plan kept ends later:\n%s\nthan before:\n%s", after, before)
	}
}

// lastEnd is the latest end in a plan's table, day and clock.
func lastEnd(table string) string {
	latest := ""
	for line := range strings.Lines(table) {
		parts := strings.Split(line, ",")
		if len(parts) > 2 && parts[0] != "day" {
			latest = max(latest, parts[0]+" "+parts[2])
		}
	}
	return latest
}

func TestNoSearchWithoutAPlan(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.fix(path, 5, "pin", "10:00")
	if got := s.post(path + "/shoot-day/search"); got.status != http.StatusUnprocessableEntity {
		t.Errorf("looking for an impossible plan = %d, want 422", got.status)
	}
	s.setMakes(1)
	s.fix(path, 5, "pin", "")
	if page := words(s.get(path + "/shoot-day").body); strings.Contains(page, "Look longer") {
		t.Errorf("a plan that is proved best is to be bettered:\n%s", page)
	}
	if got := s.post(path + "/shoot-day/search/stop"); got.status != http.StatusSeeOther {
		t.Errorf("stopping none = %d, want a redirect", got.status)
	}
}
