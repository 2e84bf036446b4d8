package web_test

import (
	"net/http"
	"strings"
	"testing"
)

// quay is a whole show form.
var quay = []string{
	"name", "Quay Kitchen", "host", "Ottoline", "system", "imperial", "oven", "fan", "zone", "Pacific/Auckland", "currency", "NZD",
	"mixer", "1200", "tray", "12", "trays", "2", "pace", "140", "limit", "4000", "disclosure", "No free goods.", "links", "https://quay.example",
}

func TestTheShowIsSavedWhole(t *testing.T) {
	s := newSite(t)
	form := s.get("/show").body
	if !strings.Contains(form, `value="imperial"`) {
		t.Fatal("the form does not offer imperial measures")
	}
	if got := s.post("/show", append([]string{"revision", value(t, form, "revision")}, quay...)...); got.to != "/show" {
		t.Fatalf("save = %d\n%s", got.status, words(got.body))
	}
	page := s.shows("/show", "The show is saved", "Quay Kitchen", "No free goods.", "https://quay.example")
	for name, want := range map[string]string{"host": "Ottoline", "zone": "Pacific/Auckland", "currency": "NZD", "mixer": "1200", "tray": "12", "trays": "2", "pace": "140", "limit": "4000"} {
		if got := value(t, page, name); got != want {
			t.Errorf("%s is %q, want %q", name, got, want)
		}
	}
	at := s.start("Scones", scones)
	s.shows(at+"/script", "at 140 words a minute")
	s.shows(at+"/release", "of 4,000 characters", "No free goods.", "https://quay.example")
}

func TestARefusedShowKeepsEverythingTyped(t *testing.T) {
	s := newSite(t)
	for _, c := range []struct{ field, typed, says string }{
		{"zone", "Pacific/Atlantis", "not a time zone"},
		{"zone", "Local", "not a time zone"},
		{"currency", "shells", "not a currency code"},
		{"pace", "10", "between 60 and 300"},
		{"limit", "5", "number of characters"},
		{"name", "", "Give the show a name"},
		{"mixer", "large", "not a whole number"},
		{"oven", "wood", "Choose one of"},
	} {
		t.Run(c.field+" "+c.typed, func(t *testing.T) {
			got := s.post("/show", append(append([]string{"revision", "1"}, quay...), c.field, c.typed)...)
			if got.status != http.StatusUnprocessableEntity || !strings.Contains(words(got.body), c.says) {
				t.Errorf("status %d, want 422 that says %q", got.status, c.says)
			}
			for i := 0; i < len(quay); i += 2 {
				if name := quay[i]; name != c.field && !strings.Contains(got.body, quay[i+1]) {
					t.Errorf("%s %q is lost", name, quay[i+1])
				}
			}
			if c.typed != "" && c.field != "oven" && !strings.Contains(got.body, c.typed) {
				t.Errorf("the wrong %q is lost: it could not be put right", c.typed)
			}
		})
	}
	if strings.Contains(s.get("/show").body, "Quay Kitchen") {
		t.Error("a refused show was saved")
	}
}

func TestAStaleShowShowsBothTexts(t *testing.T) {
	s := newSite(t)
	revision := value(t, s.get("/show").body, "revision")
	s.post("/show", append([]string{"revision", revision}, quay...)...)
	late := s.post("/show", append(append([]string{"revision", revision}, quay...), "name", "Harbour Kitchen")...)
	if late.status != http.StatusConflict {
		t.Fatalf("the second save = %d, want 409", late.status)
	}
	for _, text := range []string{"Quay Kitchen", "Harbour Kitchen"} {
		if !strings.Contains(late.body, text) {
			t.Errorf("the page does not hold %q", text)
		}
	}
	s.shows("/show", "Quay Kitchen")
}

func TestStaleBriefReleaseAndCutShowBothTexts(t *testing.T) {
	for _, c := range []struct {
		sheet     string
		one, two  []string
		both      [2]string
		hasRecord bool
	}{
		{"brief", []string{"title", "Scones", "stage", "pitched", "look", "tall and pale"}, []string{"title", "Scones", "stage", "pitched", "look", "flat and dark"}, [2]string{"tall and pale", "flat and dark"}, true},
		{"release", []string{"title", "One", "opening", "First words."}, []string{"title", "Two", "opening", "Other words."}, [2]string{"First words.", "Other words."}, false},
		{"cut", []string{"name", "cut A", "captions", saidCaptions}, []string{"name", "cut B", "captions", saidCaptions}, [2]string{"cut A", "cut B"}, false},
	} {
		t.Run(c.sheet, func(t *testing.T) {
			s := newSite(t)
			at := s.start("Scones", scones) + "/" + c.sheet
			if c.sheet == "cut" {
				s.post(at, "name", "cut 0", "captions", saidCaptions)
			}
			revision := "0"
			if page := s.get(at).body; strings.Contains(page, `name="revision"`) {
				revision = value(t, page, "revision")
			}
			if got := s.post(at, append([]string{"revision", revision}, c.one...)...); got.status != http.StatusSeeOther {
				t.Fatalf("the first save = %d", got.status)
			}
			late := s.post(at, append([]string{"revision", revision}, c.two...)...)
			if late.status != http.StatusConflict {
				t.Fatalf("the second save = %d, want 409", late.status)
			}
			for _, text := range c.both {
				if !strings.Contains(late.body, text) {
					t.Errorf("the page does not hold %q", text)
				}
			}
			if kept := s.get(at).body; !strings.Contains(kept, c.both[0]) || strings.Contains(kept, c.both[1]) {
				t.Error("the late save was taken")
			}
		})
	}
}
