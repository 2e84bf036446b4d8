package web_test

import (
	"net/http"
	"strings"
	"testing"
)

// correcting is the form of the lard's line, the editor's text sent along.
func correcting(amount, food string, more ...string) []string {
	return append([]string{"version", "1", "revision", "1", "text", scones, "correct", "l", "l-line", "2 knobs lard", "l-amount", amount, "l-food", food}, more...)
}

func TestACorrectionReadsWhatCooksWrite(t *testing.T) {
	for amount, shows := range map[string]string{"30 g": "30 g", "1½ tbsp": "1½ tbsp", "2": "2", "": "lard", "to taste": "lard", "TO TASTE": "lard", "2–3 tbsp": "2–3 tbsp"} {
		t.Run(amount, func(t *testing.T) {
			s := newSite(t)
			at := s.start("Scones", scones)
			if got := s.post("/recipes/1/corrections", correcting(amount, "lard")...); got.status != http.StatusOK {
				t.Fatalf("correction = %d\n%s", got.status, words(got.body))
			}
			s.shows(at+"/recipe", shows)
			s.shows("/recipes/1/edit", "as you put it", "4 of 4 lines read")
		})
	}
}

func TestARefusedCorrectionIsKeptInItsForm(t *testing.T) {
	for _, c := range []struct{ name, amount, food, says string }{
		{"no food", "30 g", " ", "Name the food."},
		{"no amount that is one", "a bit", "lard", "“a bit” is not an amount"},
		{"an amount with more behind", "30 g of it", "lard", "“30 g of it” is not an amount"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := newSite(t)
			at := s.start("Scones", scones)
			got := s.post("/recipes/1/corrections", correcting(c.amount, c.food)...)
			if got.status != http.StatusUnprocessableEntity || !strings.Contains(words(got.body), c.says) {
				t.Errorf("status %d, want 422 that says %q\n%s", got.status, c.says, words(got.body))
			}
			if strings.Contains(s.get("/recipes/1/edit").body, "as you put it") {
				t.Error("the refused correction was kept")
			}
			s.shows(at+"/recipe", "knobs")
		})
	}
}

func TestACorrectionThatNamesNoLineIsRefused(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	for _, pairs := range [][]string{{"version", "1", "text", scones}, {"version", "1", "text", scones, "correct", "l", "l-line", " "}} {
		if got := s.post("/recipes/1/corrections", pairs...); got.status != http.StatusBadRequest {
			t.Errorf("%d pairs = %d, want 400", len(pairs), got.status)
		}
	}
}

func TestForgettingWhatWasNeverCorrectedDoesNoHarm(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	for range 2 {
		got := s.post("/recipes/1/corrections/forget", "version", "1", "revision", "1", "text", scones+"typed on\n", "correct", "l", "l-line", "2 knobs lard")
		if got.status >= 500 {
			t.Fatalf("forget = %d", got.status)
		}
	}
	s.shows(at+"/recipe", "knobs")
}

func TestForgettingKeepsTheTextThatIsNotSavedYet(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	s.post("/recipes/1/corrections", correcting("30 g", "lard")...)
	got := s.post("/recipes/1/corrections/forget", "version", "1", "revision", "2", "text", scones+"1 egg, typed on\n", "note", "wip", "correct", "l", "l-line", "2 knobs lard")
	if got.status != http.StatusOK || !strings.Contains(got.body, "1 egg, typed on") || !strings.Contains(got.body, `value="wip"`) {
		t.Errorf("forget = %d, want the typed text and note kept", got.status)
	}
	if strings.Contains(s.get("/recipes/1").body, "typed on") {
		t.Error("forgetting saved the text")
	}
}

func TestALearnedNameIsReadInOtherRecipes(t *testing.T) {
	s := newSite(t)
	s.start("Buns", "Buns\n\n200 g auntie's dust\n")
	got := s.post("/recipes/1/corrections", "version", "1", "revision", "1", "text", "Buns\n\n200 g auntie's dust\n", "correct", "l",
		"l-line", "200 g auntie's dust", "l-amount", "200 g", "l-food", "plain flour", "l-learn", "yes")
	if got.status != http.StatusOK {
		t.Fatalf("correction = %d\n%s", got.status, words(got.body))
	}
	at := s.start("Pie", "Pie\n\n300 g auntie's dust\n")
	s.shows(at+"/shop", "300 g plain flour")
}

func TestACorrectionOfOneRecipeLeavesOthersAlone(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	other := s.start("Other scones", scones)
	s.post("/recipes/1/corrections", correcting("30 g", "lard")...)
	s.shows("/recipes/1", "30 g")
	if page := words(s.get(other + "/recipe").body); !strings.Contains(page, "knobs") || strings.Contains(page, "30 g") {
		t.Error("the other recipe's line was corrected too")
	}
}

func TestSavingAfterACorrectionIsNoConflict(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	revision := value(t, s.get("/recipes/1/edit").body, "revision")
	corrected := s.post("/recipes/1/corrections", append(correcting("30 g", "lard"), "revision", revision)...)
	got := s.post("/recipes/1/versions/1", "version", "1", "revision", value(t, corrected.body, "revision"), "text", scones+"1 egg\n")
	if got.status != http.StatusSeeOther {
		t.Errorf("saving = %d, want it taken\n%.300s", got.status, words(got.body))
	}
}
