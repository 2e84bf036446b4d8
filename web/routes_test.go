package web_test

import (
	"net/http"
	"strings"
	"testing"
)

// Every page there is, for one episode with one of each part.
var pages = []string{
	"/", "/show", "/pitches", "/pitches?change=1", "/larder", "/larder?aisle=stock", "/larder/plain-flour", "/larder/plain-flour?change=pack-1", "/larder/plain-flour?change=stock-1", "/shopping", "/deleted",
	"/recipes", "/recipes/new", "/recipes/new?episode=1", "/recipes/1", "/recipes/1/edit", "/recipes/1/edit?version=1&episode=1",
	"/recipes/1/versions/1", "/recipes/1/changes?from=1&to=1", "/recipes/1/changes",
	"/episodes/1", "/episodes/1/brief", "/episodes/1/recipe", "/episodes/1/trials", "/episodes/1/shop", "/episodes/1/shoot-day",
	"/episodes/1/script", "/episodes/1/shots", "/episodes/1/shots?step=1+", "/episodes/1/cut", "/episodes/1/release", "/episodes/1/card",
	"/episodes/1/script?change=segment-1", "/episodes/1/shots?change=shot-1", "/episodes/1/shop?change=batch-1",
	"/episodes/1/trials?change=trial-1", "/episodes/1/release?change=correction-1",
}

// furnished is a site with an episode that has one of each part, a pitch and
// a cut.
func furnished(t testing.TB) *site {
	t.Helper()
	s := newSite(t)
	at := s.start("Scones", scones)
	s.post("/pitches", "dish", "Flan", "who", "Odalys", "times", "3")
	s.post("/larder/plain-flour/packs", "amount", "1.5 kg", "price", "3.30")
	s.post("/larder/plain-flour/stock", "amount", "800 g", "useby", "2027-03-28")
	for _, c := range partCases {
		if got := s.post(at+"/"+c.many, c.good...); got.status != http.StatusSeeOther {
			t.Fatalf("adding a %s = %d", c.name, got.status)
		}
	}
	s.saveCaptions(at, saidCaptions)
	return s
}

func TestEveryPageOpens(t *testing.T) {
	s := furnished(t)
	for _, path := range pages {
		got := s.get(path)
		if got.status != http.StatusOK {
			t.Errorf("GET %s = %d", path, got.status)
			continue
		}
		if kind := got.header.Get("Content-Type"); kind != "text/html; charset=utf-8" {
			t.Errorf("GET %s is %q", path, kind)
		}
		for _, part := range []string{"<!doctype html>", "<title>", "</html>", `lang="en"`} {
			if !strings.Contains(strings.ToLower(got.body), part) {
				t.Errorf("GET %s lacks %s", path, part)
			}
		}
	}
}

func TestEveryPageIsBehindTheDoor(t *testing.T) {
	s := furnished(t)
	stranger := openSite(t, doorConfig)
	for _, path := range pages {
		if got := stranger.get(path); got.status != http.StatusSeeOther || got.to != "/setup" {
			t.Errorf("a stranger at %s = %d to %q, want the door", path, got.status, got.to)
		}
	}
	for _, path := range posts {
		if got := stranger.post(path, "title", "Mine"); got.status != http.StatusSeeOther || got.to != "/setup" {
			t.Errorf("a stranger posting to %s = %d to %q, want the door", path, got.status, got.to)
		}
	}
	s.shows("/", "Scones")
}

// posts are the addresses that forms are sent to.
var posts = []string{
	"/episodes", "/show", "/pitches", "/pitches/1", "/pitches/1/delete", "/pitches/1/episode", "/larder/plain-flour/names",
	"/larder/plain-flour/packs", "/larder/plain-flour/packs/1", "/larder/plain-flour/packs/1/delete", "/larder/plain-flour/stock", "/larder/plain-flour/stock/1", "/larder/plain-flour/stock/1/delete",
	"/shopping/ticks", "/deleted/pitch/1/restore", "/recipes", "/recipes/read", "/recipes/1/read", "/recipes/1/delete",
	"/recipes/1/versions", "/recipes/1/versions/1", "/recipes/1/corrections", "/recipes/1/corrections/forget",
	"/episodes/1/delete", "/episodes/1/brief", "/episodes/1/scale", "/episodes/1/version", "/episodes/1/ticks",
	"/episodes/1/shots/1/status", "/episodes/1/shots/ticks", "/episodes/1/shots/ticks/kept", "/episodes/1/cut", "/episodes/1/findings", "/episodes/1/release", "/episodes/1/shares",
	"/episodes/1/shares/1/revoke", "/episodes/1/segments", "/episodes/1/segments/1", "/episodes/1/segments/1/delete",
	"/episodes/1/segments/1/move", "/episodes/1/shots/1/move", "/episodes/1/batches/1", "/episodes/1/trials/1", "/episodes/1/corrections/1",
}

func TestWhatIsNotThereIsNotFound(t *testing.T) {
	s := furnished(t)
	for _, path := range []string{
		"/pitches?change=77", "/larder/zorb", "/recipes/77", "/recipes/x", "/recipes/0", "/recipes/-1", "/recipes/77/edit", "/recipes/1/edit?version=9",
		"/recipes/1/edit?version=x", "/recipes/1/versions/9", "/recipes/1/versions/x", "/recipes/1/versions/01", "/recipes/77/versions/1",
		"/recipes/1/changes?from=9&to=1", "/recipes/1/changes?from=1&to=9", "/recipes/1/changes?from=x", "/recipes/77/changes",
		"/episodes/77", "/episodes/77/brief", "/episodes/77/recipe", "/episodes/77/trials", "/episodes/77/shop", "/episodes/77/shoot-day",
		"/episodes/77/script", "/episodes/77/shots", "/episodes/77/cut", "/episodes/77/release", "/episodes/77/card", "/episodes/77/card.pdf",
		"/episodes/1/attic", "/episodes/1/script?change=segment-77", "/episodes/1/shots?change=shot-77", "/episodes/1/card?paper=a0", "/s/", "/s/x/y",
		"/deleted/pitch", "/admin", "/.env", "/episodes",
	} {
		got := s.get(path)
		if got.status != http.StatusNotFound {
			t.Errorf("GET %s = %d, want 404", path, got.status)
		}
		if !strings.Contains(got.body, "<title>") {
			t.Errorf("GET %s is not answered with a page", path)
		}
	}
}

func TestFormsForWhatIsNotThereAreNotFound(t *testing.T) {
	s := furnished(t)
	good := []string{
		"title", "x", "dish", "x", "name", "x", "item", "x", "ticked", "yes", "version", "1", "text", scones, "status", "got", "stage", "pitched",
		"revision", "1", "factor", "2", "use", "1", "key", "k", "correct", "l", "l-line", "2 knobs lard", "l-food", "lard", "makes", "1", "kind", "shoot",
		"made", "2027-01-01", "scale", "1", "verdict", "nearly", "said", "x", "right", "y",
	}
	for _, path := range []string{
		"/pitches/77", "/pitches/x", "/pitches/77/delete", "/pitches/77/episode", "/larder/zorb/names", "/deleted/pitch/77/restore", "/deleted/hat/1/restore",
		"/deleted/pitch/x/restore", "/deleted/pitch/1/restore", "/recipes/77/delete", "/recipes/77/versions", "/recipes/77/versions/1", "/recipes/77/read",
		"/recipes/77/corrections", "/recipes/77/corrections/forget", "/episodes/77/delete", "/episodes/77/brief", "/episodes/77/scale", "/episodes/77/version",
		"/episodes/77/ticks", "/episodes/77/cut", "/episodes/77/findings", "/episodes/77/release", "/episodes/77/shares", "/episodes/1/shares/77/revoke",
		"/episodes/1/shares/x/revoke", "/episodes/77/segments", "/episodes/77/shots", "/episodes/77/batches", "/episodes/77/trials", "/episodes/77/corrections",
		"/episodes/1/segments/77", "/episodes/1/segments/77/delete", "/episodes/1/segments/77/move", "/episodes/1/shots/77/status", "/episodes/1/shots/77",
		"/episodes/1/batches/77", "/episodes/1/trials/77/delete", "/episodes/1/corrections/77", "/episodes/1/batches/1/move", "/episodes/77/segments/1/move",
	} {
		if got := s.post(path, good...); got.status != http.StatusNotFound {
			t.Errorf("POST %s = %d, want 404\n%.200s", path, got.status, words(got.body))
		}
	}
	s.shows("/episodes/1/brief", "Scones")
}

func TestAPartOfAnotherEpisodeIsNotOpenedForChange(t *testing.T) {
	s := furnished(t)
	other := s.start("Another", scones)
	for _, c := range partCases {
		path := other + "/" + c.sheet + "?change=" + c.name + "-1"
		if got := s.get(path); got.status != http.StatusNotFound {
			t.Errorf("GET %s = %d, want 404", path, got.status)
		}
		if got := s.post(other+"/"+c.many+"/1", c.good...); got.status != http.StatusNotFound {
			t.Errorf("saving %s 1 of the other episode = %d, want 404", c.name, got.status)
		}
	}
}

// A form with rubbish in every field is refused or passed over; it never
// fails.
func TestNoFormFailsOnRubbish(t *testing.T) {
	names := []string{"title", "dish", "name", "times", "item", "ticked", "version", "text", "status", "stage", "revision", "factor", "pieces", "use", "key",
		"correct", "makes", "kind", "made", "scale", "verdict", "said", "right", "planned", "at", "captions", "length", "zone", "currency", "pace", "limit",
		"video", "page", "link", "release", "target", "number", "step", "episode", "how", "note", "recipe"}
	for _, rubbish := range []string{"", "x", "-1", "99999999999999999999", "\x00", "\xff\xfe", "';--", "½", strings.Repeat("9", 400), "1/0", "NaN", "1e309"} {
		s := furnished(t)
		var pairs []string
		for _, name := range names {
			pairs = append(pairs, name, rubbish)
		}
		for _, path := range posts {
			if strings.HasSuffix(path, "/delete") {
				continue // it would spare the rest
			}
			if got := s.post(path, pairs...); got.status >= 500 || got.status < 200 {
				t.Errorf("POST %s with %.20q = %d", path, rubbish, got.status)
			}
		}
	}
}
