package web_test

import (
	"net/http"
	"strings"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/web"
)

// describes saves a setup, as its form does.
func (s *site) describes(path, was string, pairs ...string) answer {
	s.t.Helper()
	return s.post(path+"/setups?was="+web.URLText(was), pairs...)
}

func TestASetupIsDescribedOnce(t *testing.T) {
	s, path := filmedLoaf(t)
	page := s.shows(path+"/shots?describe=overhead", "overhead 0 of 1 got Edit the setup overhead", "Save setup")
	if got := value(t, page, "name"); got != "overhead" {
		t.Errorf("the form names it %q", got)
	}
	saved := s.describes(path, "overhead", "name", "overhead", "camera", "Arm, straight down", "lens", "35 mm", "light", "Window left")
	if saved.status != http.StatusSeeOther || saved.to != path+"/shots" {
		t.Fatalf("saving = %d to %q", saved.status, saved.to)
	}
	s.shows(path+"/shots", "Arm, straight down · 35 mm · Window left")
	s.shows(path+"/call-sheet", "overhead Arm, straight down · 35 mm · Window left")
	page = s.get(path + "/shots?describe=overhead").body
	for field, want := range map[string]string{"camera": "Arm, straight down", "lens": "35 mm", "light": "Window left", "revision": "1"} {
		if got := value(t, page, field); got != want {
			t.Errorf("the form's %s is %q, want %q", field, got, want)
		}
	}
	s.describes(path, "overhead", "name", "overhead", "light", "Lamp", "revision", "1")
	if page := words(s.shows(path+"/shots", "Lamp")); strings.Contains(page, "35 mm") {
		t.Error("the emptied lens is still there")
	}
}

func TestASetupIsRenamedEverywhere(t *testing.T) {
	s, path := filmedLoaf(t)
	s.film(5, "overhead")
	s.describes(path, "overhead", "name", "overhead, window left", "light", "Window left")
	page := words(s.shows(path+"/shots", "overhead, window left 0 of 2 got"))
	if strings.Contains(page, "overhead 0 of") {
		t.Errorf("the old name is still there:\n%s", page)
	}
	s.describes(path, "table", "name", "overhead, window left")
	s.shows(path+"/shots", "overhead, window left 0 of 3 got", "Window left")
}

func TestASetupThatCannotBeSavedLosesNothing(t *testing.T) {
	s, path := filmedLoaf(t)
	s.describes(path, "table", "name", "table", "light", "Low lamp")
	for _, c := range []struct {
		name, was string
		pairs     []string
		status    int
		says      string
	}{
		{"no name", "overhead", []string{"name", " ", "camera", "Arm, typed"}, http.StatusUnprocessableEntity, "Give the setup a name."},
		{"the name of another that is described otherwise", "overhead", []string{"name", "table", "camera", "Arm, typed"}, http.StatusUnprocessableEntity, "described otherwise"},
		{"nobody's setup", "attic", []string{"name", "attic", "camera", "Arm, typed"}, http.StatusNotFound, "No shot of this episode has the setup “attic”"},
		{"no setup", "", []string{"name", "attic"}, http.StatusNotFound, "Go back to the shots"},
		{"an old page", "table", []string{"name", "table", "camera", "Arm, typed"}, http.StatusConflict, "Low lamp"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := s.describes(path, c.was, c.pairs...)
			if got.status != c.status || !strings.Contains(words(got.body), c.says) {
				t.Errorf("= %d, want %d and %q:\n%s", got.status, c.status, c.says, words(got.body))
			}
			if c.status != http.StatusNotFound && !strings.Contains(got.body, "Arm, typed") {
				t.Error("what was typed is lost")
			}
		})
	}
	setups, err := s.store.Setups(t.Context(), 1)
	if err != nil || len(setups) != 1 || setups[0] != (episode.Setup{EpisodeID: 1, Name: "table", Light: "Low lamp", Revision: 1}) {
		t.Errorf("setups %+v (%v)", setups, err)
	}
}

func TestOnlyASetupThatThereIsIsAskedFor(t *testing.T) {
	s, path := filmedLoaf(t)
	for _, name := range []string{"attic", "", "no+setup+yet"} {
		if page := s.shows(path + "/shots?describe=" + name); strings.Contains(page, "Save setup") {
			t.Errorf("a form for %q is drawn", name)
		}
	}
}

// Setups that are described are offered though no shot names them any more.
func TestSetupsAreOffered(t *testing.T) {
	s, path := filmedLoaf(t)
	s.describes(path, "table", "name", "table", "light", "Low lamp")
	s.post(path + "/shots/2/delete")
	page := s.shows(path + "/shots")
	for _, want := range []string{`list="shot-setup-list"`, `<datalist id="shot-setup-list">`, `<option value="overhead">`, `<option value="table">`} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %s", want)
		}
	}
}
