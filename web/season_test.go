package web_test

import (
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// typedRecipe is one of the recipes that the browser test types in.
func typedRecipe(t testing.TB, name string) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "cmd", "benchproof", "testdata", "typed", name+".txt"))
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

func TestTheShortWayIn(t *testing.T) {
	s := newSite(t)
	s.shows("/", "A new episode")
	episode := s.start("Plum tart", typedRecipe(t, "plum-tart"))
	s.shows(episode+"/recipe", "Plum tart with almond pastry", "200 g", "plain flour", "Vanilla cream", "1–2 tbsp")
	s.shows(episode+"/shop", "1 ×", "shoot", "plain flour", "Dairy and eggs")
	s.shows(episode+"/release", "plain flour", "Contains")
	s.shows(episode+"/card", "Plum tart with almond pastry", "plain flour")
	s.shows("/", "Plum tart", "in development", "never tried at the bench")
}

func TestATitleAloneMakesAnEpisode(t *testing.T) {
	s := newSite(t)
	episode := s.start("Something with plums", "")
	s.shows(episode+"/brief", "Something with plums")
	s.shows(episode+"/recipe", "Something with plums")
	s.shows(episode + "/release")
	if got := s.get(episode + "/card"); got.status != http.StatusNotFound {
		t.Errorf("a card without a recipe = %d, want 404", got.status)
	}
}

func TestARecipeAloneGivesTheTitle(t *testing.T) {
	s := newSite(t)
	episode := s.start("", typedRecipe(t, "barley-stew"))
	s.shows(episode+"/brief", "Harbour beef and barley stew")
}

func TestNothingAtAllIsRefusedAndSaysWhatToType(t *testing.T) {
	s := newSite(t)
	got := s.post("/episodes", "title", "", "recipe", "")
	if got.status != http.StatusUnprocessableEntity || !strings.Contains(got.body, "working title") {
		t.Errorf("status %d, want 422 and a word on the title", got.status)
	}
}

func TestARecipeWithNothingReadableIsKeptAsTyped(t *testing.T) {
	s := newSite(t)
	const scribble = "zzz qqq?\n~~~\n§§ 17 §§ vv\n"
	episode := s.start("Scribble", scribble)
	s.shows(episode+"/recipe", "zzz qqq?", "§§ 17 §§ vv")
	if page := s.get("/recipes/1/edit").body; !strings.Contains(page, scribble) {
		t.Error("the editor does not hold the text as it was typed")
	}
}

func TestAnEpisodeIsDeletedAndHadBack(t *testing.T) {
	s := newSite(t)
	episode := s.start("Plum tart", typedRecipe(t, "plum-tart"))
	if got := s.post(episode + "/delete"); got.to != "/" {
		t.Fatalf("delete goes to %q", got.to)
	}
	season := s.shows("/", "Plum tart” is deleted")
	if got := s.get(episode + "/recipe"); got.status != http.StatusNotFound {
		t.Errorf("a deleted episode = %d, want 404", got.status)
	}
	s.shows("/deleted", "Plum tart")
	undo := "/deleted" + strings.Replace(episode, "/episodes", "/episode", 1) + "/restore"
	if !strings.Contains(season, undo) {
		t.Fatalf("the page offers no undo at %s", undo)
	}
	if got := s.post(undo); got.status != http.StatusSeeOther {
		t.Fatalf("undo = %d", got.status)
	}
	s.shows(episode+"/recipe", "Plum tart with almond pastry")
}

func TestTheBriefKeepsTheStage(t *testing.T) {
	s := newSite(t)
	episode := s.start("Plum tart", typedRecipe(t, "plum-tart"))
	form := s.get(episode + "/brief").body
	got := s.post(episode+"/brief", "revision", value(t, form, "revision"), "title", "Plum tart", "number", "31", "stage", "released",
		"release", "2027-03-14", "target", "9", "notes", "- **cold** butter")
	if got.status != http.StatusSeeOther {
		t.Fatalf("save = %d\n%s", got.status, words(got.body))
	}
	s.shows(episode+"/brief", "The brief is saved", "cold butter")
	s.shows("/", "Ep 31", "14 Mar", "released")
	if got := s.post(episode+"/brief", "title", "", "stage", "baked", "release", "soon", "target", "many", "link", "nowhere"); got.status != http.StatusUnprocessableEntity {
		t.Errorf("a form full of mistakes = %d, want 422", got.status)
	} else {
		for _, say := range []string{"Give the episode a working title", "Choose one of", "not a date", "not a whole number", "not a web address"} {
			if !strings.Contains(words(got.body), say) {
				t.Errorf("the page does not say %q", say)
			}
		}
	}
}
