package web_test

import (
	"net/http"
	"strings"
	"testing"
)

const scones = `Scones

Makes 8

250 g self-raising flour
50 g butter, cold
2 knobs lard
150 ml milk

Rub in the butter for 5 minutes. Bake at 220 °C / 200 °C fan for 12 minutes until risen.
`

func TestARecipeIsEditedInPlaceUntilItIsTried(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	form := s.shows("/recipes/1/edit?version=1", "Scones, version 1", "self-raising flour")
	edited := strings.Replace(scones, "150 ml milk", "160 ml milk", 1)
	got := s.post("/recipes/1/versions/1", "version", "1", "revision", value(t, form, "revision"), "text", edited, "note", "wetter")
	if got.to != "/recipes/1/versions/1" {
		t.Fatalf("save = %d to %q\n%s", got.status, got.to, words(got.body))
	}
	s.shows(episode+"/recipe", "160 mL")

	s.post(episode+"/trials", "version", "1", "made", "2027-03-01", "scale", "1", "verdict", "nearly")
	form = s.shows("/recipes/1/edit?version=1", "was tried and stays as it is")
	refused := s.post("/recipes/1/versions/1", "version", "1", "revision", value(t, form, "revision"), "text", scones+"1 egg\n")
	if refused.status != http.StatusUnprocessableEntity || !strings.Contains(refused.body, "1 egg") {
		t.Errorf("saving into a tried version = %d, want 422 with the text kept", refused.status)
	}
	s.shows(episode+"/recipe", "160 mL")
}

func TestANewVersionIsUsedAndCompared(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	second := strings.Replace(scones, "50 g butter", "60 g butter", 1) + "\n"
	got := s.post("/recipes/1/versions", "version", "1", "episode", "1", "text", second, "note", "richer")
	if got.to != episode+"/recipe" {
		t.Fatalf("save as new = %d to %q\n%s", got.status, got.to, words(got.body))
	}
	s.shows(episode+"/recipe", "version 2", "60 g", "richer")
	s.shows("/recipes/1/versions/1", "50 g")
	s.shows("/recipes/1/changes?from=1&to=2", "changed", "50 g", "60 g", "richer")
	if got := s.post(episode + "/version?use=1"); got.status != http.StatusSeeOther {
		t.Fatalf("going back to version 1 = %d", got.status)
	}
	s.shows(episode+"/recipe", "50 g")
}

func TestReadingAgainKeepsNothingAndLosesNothing(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	typed := scones + "3 tbsp sugar\n"
	got := s.post("/recipes/1/read", "version", "1", "revision", "1", "text", typed, "note", "sweeter")
	if got.status != http.StatusOK {
		t.Fatalf("read again = %d", got.status)
	}
	if page := words(got.body); !strings.Contains(page, "3 tbsp") || !strings.Contains(got.body, "sweeter") {
		t.Error("what was typed is not understood or not kept")
	}
	if strings.Contains(s.get("/recipes/1").body, "3 tbsp") {
		t.Error("reading again saved the text")
	}
}

func TestTheSecondOfTwoStaleRecipesShowsBothTexts(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	revision := value(t, s.get("/recipes/1/edit").body, "revision")
	one := strings.Replace(scones, "150 ml", "140 ml", 1)
	two := strings.Replace(scones, "150 ml", "170 ml", 1)
	s.post("/recipes/1/versions/1", "version", "1", "revision", revision, "text", one)
	got := s.post("/recipes/1/versions/1", "version", "1", "revision", revision, "text", two)
	if got.status != http.StatusConflict || !strings.Contains(got.body, "140 ml") || !strings.Contains(got.body, "170 ml") {
		t.Errorf("status %d, want 409 with both texts", got.status)
	}
}

func TestALineIsPutRightAndStaysSo(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	s.shows("/recipes/1/edit", "2 knobs lard")
	got := s.post("/recipes/1/corrections",
		"version", "1", "revision", "1", "text", scones, "correct", "l",
		"l-line", "2 knobs lard", "l-amount", "30 g", "l-food", "lard", "l-preparation", "", "l-note", "")
	if got.status != http.StatusOK || !strings.Contains(words(got.body), "30 g") {
		t.Fatalf("correction = %d\n%s", got.status, words(got.body))
	}
	s.shows(episode+"/recipe", "30 g")
	s.shows("/recipes/1/edit", "as you put it")
	s.post("/recipes/1/versions", "version", "1", "text", scones+"1 egg\n")
	s.shows("/recipes/1/versions/2", "30 g")
	s.post("/recipes/1/corrections/forget", "version", "2", "text", scones, "correct", "l", "l-line", "2 knobs lard")
	if page := words(s.get("/recipes/1/edit").body); strings.Contains(page, "as you put it") {
		t.Error("the correction was not forgotten")
	}
}

func TestAWrongCorrectionSaysWhyAndKeepsTheText(t *testing.T) {
	s := newSite(t)
	s.start("Scones", scones)
	got := s.post("/recipes/1/corrections", "version", "1", "revision", "1", "text", scones+"typed and not saved\n",
		"correct", "l", "l-line", "2 knobs lard", "l-amount", "some", "l-food", "lard")
	if got.status != http.StatusUnprocessableEntity {
		t.Errorf("status %d, want 422", got.status)
	}
	for _, text := range []string{"not an amount", "typed and not saved"} {
		if !strings.Contains(got.body, text) {
			t.Errorf("the page does not hold %q", text)
		}
	}
}

func TestScalingByFactorAndByPieces(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	s.shows(episode+"/recipe?factor=2", "500 g", "not kept")
	s.shows(episode+"/recipe?pieces=12", "375 g")
	s.shows(episode+"/recipe?factor=3&pieces=8&was=1", "750 g") // the factor was changed, the pieces were not
	s.shows(episode+"/recipe?factor=1&pieces=24&was=1", "750 g")
	s.shows(episode+"/recipe?from=20+cm+round&to=23+cm+round", "331 g") // 1.3225, the ratio of the areas
	s.shows(episode+"/recipe?have=100+g+butter", "500 g")
	s.shows(episode+"/recipe", "250 g")
	for _, wrong := range []string{"factor=much", "factor=0", "factor=-1", "factor=1001", "from=20+cm+round", "from=a+hat&to=a+boot", "have=3+herrings", "each=heavy", "pieces=none", "pieces=99999999"} {
		if got := s.get(episode + "/recipe?" + wrong); got.status != http.StatusUnprocessableEntity {
			t.Errorf("%s = %d, want 422", wrong, got.status)
		}
	}
	form := s.get(episode + "/recipe").body
	if got := s.post(episode+"/scale", "revision", value(t, form, "revision"), "factor", "1½"); got.status != http.StatusSeeOther {
		t.Fatalf("keeping a scale = %d\n%s", got.status, words(got.body))
	}
	s.shows(episode+"/recipe", "375 g")
	s.shows(episode+"/shop", "375 g", "12 pieces")
	if got := s.post(episode+"/scale", "revision", value(t, form, "revision"), "factor", "2"); got.status != http.StatusConflict {
		t.Errorf("keeping a scale from a stale page = %d, want 409", got.status)
	}
}

func TestTheMeasureSwitch(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	s.shows(episode+"/recipe?measure=us", "2 cups")
	s.shows(episode+"/recipe?measure=metric", "250 g")
}

func TestAnEmptyRecipeIsRefused(t *testing.T) {
	s := newSite(t)
	if got := s.post("/recipes", "text", "  \n "); got.status != http.StatusUnprocessableEntity {
		t.Errorf("status %d, want 422", got.status)
	}
	if got := s.post("/recipes", "text", scones); got.to != "/recipes/1/versions/1" {
		t.Errorf("a recipe of its own goes to %q", got.to)
	}
	s.shows("/recipes", "Scones")
}

func TestTwoPeopleChooseARecipeForOneEpisode(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	s.post("/recipes", "text", "Flan\n\n4 eggs\n500 ml milk\n")
	revision := value(t, s.get(episode+"/recipe").body, "revision")
	if got := s.post(episode+"/version", "revision", revision, "use", "2"); got.to != episode+"/recipe" {
		t.Fatalf("choosing = %d to %q", got.status, got.to)
	}
	late := s.post(episode+"/version", "revision", revision, "use", "1")
	if late.status != http.StatusConflict || !strings.Contains(words(late.body), "Flan, version 1") {
		t.Errorf("choosing from a stale page = %d, want 409 and what is in use now", late.status)
	}
	s.shows(episode+"/recipe", "Flan")
}

// USDA SR 26 gives per 100 g: self-rising flour 20082 354 kcal, butter 01145
// 717, whole milk 01077 61, and 244 g a cup of it, so 154.7 g for 150 mL. That is
// (250 × 3.54 + 50 × 7.17 + 154.7 × 0.61) ÷ 8 = 167 kcal; the lard's knobs have no
// weight, so they are named and not counted.
func TestTheRecipeSheetTellsTheNutrition(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	s.shows(episode+"/recipe", "Nutrition", "about 167 kcal in 1 of 8", "21 CFR 101.9", "1169/2011", "2 knobs lard", "of the weight is in these figures")
}
