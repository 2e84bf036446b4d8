package web_test

import (
	"net/http"
	"net/url"
	"strings"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/web"
)

var flan = []string{"dish", "Flan", "who", "Odalys", "place", "a letter", "times", "3", "note", "With burnt honey."}

func TestAPitchIsKeptChangedAndMadeAnEpisode(t *testing.T) {
	s := newSite(t)
	s.shows("/pitches", "Nobody has asked for anything yet")
	if got := s.post("/pitches", flan...); got.to != "/pitches" {
		t.Fatalf("add = %d to %q", got.status, got.to)
	}
	s.shows("/pitches", "3 ×", "Flan", "Odalys, a letter", "With burnt honey.")
	form := s.shows("/pitches?change=1", "Change this pitch")
	saved := append([]string{"revision", value(t, form, "revision")}, flan...)
	if got := s.post("/pitches/1", append(saved, "times", "4")...); got.to != "/pitches" {
		t.Fatalf("save = %d\n%s", got.status, words(got.body))
	}
	s.shows("/pitches", "4 ×")
	made := s.post("/pitches/1/episode")
	if made.to != "/episodes/1/brief" {
		t.Fatalf("made = %d to %q", made.status, made.to)
	}
	page := s.shows("/episodes/1/brief", "Flan", "With burnt honey.", "pitched")
	if value(t, page, "dish") != "Flan" {
		t.Error("the dish is not in the brief")
	}
	s.shows("/pitches", "became an episode")
	if again := s.post("/pitches/1/episode"); again.to != "/episodes/1" {
		t.Errorf("made twice = %d to %q, want the first one", again.status, again.to)
	}
}

func TestARefusedPitchKeepsWhatWasTyped(t *testing.T) {
	s := newSite(t)
	s.post("/pitches", flan...)
	for _, path := range []string{"/pitches", "/pitches/1"} {
		got := s.post(path, "dish", " ", "who", "Odalys B.", "place", "in person", "times", "often", "note", "Keep me.", "revision", "1")
		if got.status != http.StatusUnprocessableEntity {
			t.Errorf("POST %s = %d, want 422", path, got.status)
		}
		for _, text := range []string{"Say which dish was asked for", "“often” is not a whole number", `value="often"`, "Odalys B.", "in person", "Keep me."} {
			if !strings.Contains(got.body, text) {
				t.Errorf("POST %s: the page does not hold %q", path, text)
			}
		}
	}
	s.shows("/pitches", "Flan", "3 ×")
}

func TestAStalePitchShowsBothTexts(t *testing.T) {
	s := newSite(t)
	s.post("/pitches", flan...)
	revision := value(t, s.get("/pitches?change=1").body, "revision")
	s.post("/pitches/1", "revision", revision, "dish", "Flan with figs", "times", "3")
	late := s.post("/pitches/1", "revision", revision, "dish", "Flan with pears", "times", "3")
	if late.status != http.StatusConflict {
		t.Fatalf("the second save = %d, want 409", late.status)
	}
	for _, text := range []string{"Flan with figs", "Flan with pears", "this pitch"} {
		if !strings.Contains(late.body, text) {
			t.Errorf("the page does not hold %q", text)
		}
	}
	if got := s.post("/pitches/1", "revision", value(t, late.body, "revision"), "dish", "Flan with pears"); got.status != http.StatusSeeOther {
		t.Errorf("mine over it = %d", got.status)
	}
	s.shows("/pitches", "Flan with pears")
}

func TestAPitchIsDeletedAndHadBack(t *testing.T) {
	s := newSite(t)
	s.post("/pitches", flan...)
	if got := s.post("/pitches/1/delete"); got.to != "/pitches" {
		t.Fatalf("delete = %d to %q", got.status, got.to)
	}
	if page := s.shows("/pitches", "The pitch is deleted"); !strings.Contains(page, "/deleted/pitch/1/restore") {
		t.Error("the page offers no undo")
	}
	s.shows("/deleted", "Flan", "kept for 30 days")
	if again := s.post("/pitches/1/delete"); again.status != http.StatusNotFound {
		t.Errorf("deleted twice = %d, want 404", again.status)
	}
	s.post("/deleted/pitch/1/restore")
	s.shows("/pitches", "Flan", "It is back")
}

func TestAFlashIsSaidOnce(t *testing.T) {
	s := newSite(t)
	s.post("/pitches", flan...)
	s.post("/pitches/1/delete")
	s.shows("/pitches", "The pitch is deleted")
	if strings.Contains(words(s.get("/pitches").body), "The pitch is deleted") {
		t.Error("it is said again on the next page")
	}
}

func TestAPitchWasAskedForAtLeastOnce(t *testing.T) {
	for typed, want := range map[string]int{"": 1, "0": 1, "1": 1, "12": 12} {
		form := web.NewTyped(url.Values{"dish": {"Flan"}, "times": {typed}})
		var p episode.Pitch
		web.ReadPitch(form, &p)
		if p.Times != want || form.Err() != nil {
			t.Errorf("%q times is read as %d (%v), want %d", typed, p.Times, form.Err(), want)
		}
	}
}
