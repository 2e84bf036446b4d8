package web_test

import (
	"net/http"
	"strings"
	"testing"
)

func TestTheListOfRecipes(t *testing.T) {
	s := newSite(t)
	s.shows("/recipes", "No recipes yet")
	if got := s.post("/recipes", "text", scones, "note", "as my aunt makes them"); got.status != http.StatusSeeOther {
		t.Fatalf("keeping a recipe = %d\n%s", got.status, words(got.body))
	}
	s.shows("/recipes", "Scones", "v1", "as my aunt makes them")
	at := s.start("Flan", "Flan\n\n4 eggs\n")
	page := s.shows("/recipes", "Scones", "Flan")
	if !strings.Contains(page, at+"/recipe") {
		t.Error("the list does not lead to the episode that uses a recipe")
	}
}

func TestAnEmptiedRecipeIsRefused(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	for path, version := range map[string]string{"/recipes": "", "/recipes/1/versions": "1", "/recipes/1/versions/1": "1"} {
		got := s.post(path, "version", version, "revision", "1", "text", " \r\n ", "note", "gone")
		if got.status != http.StatusUnprocessableEntity || !strings.Contains(got.body, `value="gone"`) {
			t.Errorf("POST %s with no text = %d, want 422 with the note kept", path, got.status)
		}
	}
	s.shows("/recipes/1", "self-raising flour")
}

func TestARecipeInUseIsNotDeleted(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	got := s.post("/recipes/1/delete")
	if got.status != http.StatusConflict || !strings.Contains(words(got.body), "“Scones” uses this recipe") {
		t.Errorf("delete = %d, want 409 that names the episode", got.status)
	}
	s.shows(at+"/recipe", "self-raising flour")
}

func TestARecipeIsDeletedAndHadBack(t *testing.T) {
	s := newSite(t)
	s.post("/recipes", "text", scones)
	if got := s.post("/recipes/1/delete"); got.to != "/recipes" {
		t.Fatalf("delete = %d to %q", got.status, got.to)
	}
	if page := s.shows("/recipes", "The recipe is deleted", "No recipes yet"); !strings.Contains(page, "/deleted/recipe/1/restore") {
		t.Error("the page offers no undo")
	}
	for _, path := range []string{"/recipes/1", "/recipes/1/edit", "/recipes/1/versions/1"} {
		if got := s.get(path); got.status != http.StatusNotFound {
			t.Errorf("GET %s of a deleted recipe = %d, want 404", path, got.status)
		}
	}
	s.post("/deleted/recipe/1/restore")
	s.shows("/recipes", "Scones")
	s.shows("/recipes/1", "self-raising flour")
}

func TestUndoLeadsBackToWhereItWasPressed(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	for referer, want := range map[string]string{s.url + at + "/script?change=segment-1": at + "/script", "http://evil.example/x": "/", s.url + "//evil.example": "/", "": "/"} {
		s.post(at+"/segments", "title", "Cold open")
		page := s.get(at + "/script").body
		_, id, _ := strings.Cut(page, at+"/segments/")
		id, _, _ = strings.Cut(id, "/")
		s.post(at + "/segments/" + id + "/delete")
		got := s.ask(http.MethodPost, "/deleted/segment/"+id+"/restore", nil, "Referer", referer)
		if got.to != want {
			t.Errorf("undo from %q leads to %q (%d), want %q", referer, got.to, got.status, want)
		}
	}
}

func TestARestoredThingIsNotRestoredTwice(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	s.post(at + "/delete")
	if got := s.post("/deleted/episode/1/restore"); got.status != http.StatusSeeOther {
		t.Fatalf("undo = %d", got.status)
	}
	if got := s.post("/deleted/episode/1/restore"); got.status != http.StatusNotFound {
		t.Errorf("undo once more = %d, want 404", got.status)
	}
	s.shows(at+"/shop", "1 × shoot") // its parts came back with it
}

func TestVersionsAreComparedEitherWay(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	s.post("/recipes/1/versions", "version", "1", "text", strings.Replace(scones, "2 knobs lard\n", "", 1), "note", "no lard")
	s.shows("/recipes/1/changes?from=1&to=2", "1 taken out", "2 knobs lard")
	s.shows("/recipes/1/changes?from=2&to=1", "1 added", "2 knobs lard")
	s.shows("/recipes/1/changes", "1 taken out") // the last with the one before it
	s.shows("/recipes/1/changes?from=1&to=1", "nothing changed")
	s.shows("/recipes/1/versions/1", "2 knobs lard")
	for _, query := range []string{"from=3&to=1", "from=1&to=3", "from=0&to=1", "from=x", "to=x", "from=-1&to=2", "from=1.0&to=2"} {
		if got := s.get("/recipes/1/changes?" + query); got.status != http.StatusNotFound {
			t.Errorf("%s = %d, want 404", query, got.status)
		}
	}
}

func TestAnOlderVersionSaysThatItIsOne(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	s.post("/recipes/1/versions", "version", "1", "text", scones+"1 egg\n")
	older, newer := s.get("/recipes/1/versions/1").body, s.get("/recipes/1/versions/2").body
	if older == newer || strings.Contains(words(older), "1 egg") {
		t.Error("both versions are drawn alike")
	}
	if !strings.Contains(words(newer), "v1") || !strings.Contains(newer, "/recipes/1/changes?from=1&amp;to=2") {
		t.Error("the newer one does not lead to what changed")
	}
}

func TestAVersionIsScaledOnItsOwnPage(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	s.shows("/recipes/1/versions/1?factor=2", "500 g")
	s.shows("/recipes/1?pieces=4", "125 g")
	if got := s.get("/recipes/1?factor=much"); got.status != http.StatusUnprocessableEntity || !strings.Contains(got.body, `value="much"`) {
		t.Errorf("a word for a factor = %d, want 422 with the word kept", got.status)
	}
}

func TestAnotherRecipeIsUsed(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	s.post("/recipes", "text", "Flan\n\n4 eggs\n")
	if got := s.post(at+"/version", "use", "2", "revision", value(t, s.get(at+"/recipe").body, "revision")); got.to != at+"/recipe" {
		t.Fatalf("use = %d\n%s", got.status, words(got.body))
	}
	s.shows(at+"/recipe", "4", "eggs", "now uses “Flan”")
	for _, use := range []string{"", "77", "x", "-1"} {
		if got := s.post(at+"/version", "use", use); got.status != http.StatusNotFound {
			t.Errorf("using %q = %d, want 404", use, got.status)
		}
	}
	if got := s.post(at+"/version", "use", "1", "revision", "1"); got.status != http.StatusConflict || !strings.Contains(got.body, "Flan") {
		t.Errorf("using from a stale page = %d, want 409", got.status)
	}
}

func TestWithoutARecipeThereIsNothingToTryOrShare(t *testing.T) {
	s := newSite(t)
	at := s.start("An idea", "")
	for path, want := range map[string]int{"/shares": 422, "/trials": 422} {
		got := s.post(at+path, "revision", "1", "made", "2027-01-01", "scale", "1", "verdict", "nearly")
		if got.status != want {
			t.Errorf("POST %s = %d, want %d\n%.300s", path, got.status, want, words(got.body))
		}
	}
	s.shows(at+"/recipe", "An idea")
	s.shows(at + "/trials")
	s.shows(at+"/shop", "asks for nothing to buy")
	s.shows(at + "/shots")
}
