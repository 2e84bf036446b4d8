package web_test

import (
	"net/http"
	"strings"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/web"
)

func TestAmountText(t *testing.T) {
	two := measure.Of(measure.Whole(2), measure.Each)
	for _, c := range []struct {
		name string
		line recipe.Line
		want string
	}{
		{"none", recipe.Line{}, ""},
		{"to taste", recipe.Line{ToTaste: true}, "to taste"},
		{"an amount", recipe.Line{HasAmount: true, Amount: two}, "2"},
		{"an amount, more to taste", recipe.Line{HasAmount: true, Amount: two, ToTaste: true}, "2"},
		{"an amount that is not meant", recipe.Line{Amount: two}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := web.AmountText(c.line); got != c.want {
				t.Errorf("AmountText = %q, want %q", got, c.want)
			}
		})
	}
}

func TestRecipeName(t *testing.T) {
	if got := web.RecipeName(recipe.Recipe{Title: "Scones"}, "Episode"); got != "Scones" {
		t.Errorf("a recipe with a title is named %q", got)
	}
	if got := web.RecipeName(recipe.Recipe{}, "Episode"); got != "Episode" {
		t.Errorf("a recipe without a title is named %q", got)
	}
}

func TestNamesOrNone(t *testing.T) {
	for _, c := range []struct {
		holds, may []string
		want       string
	}{
		{nil, nil, "none found"},
		{[]string{"milk", "egg"}, nil, "milk, egg"},
		{nil, []string{"soya"}, "none found; some makers' also soya: read the packs"},
		{[]string{"milk"}, []string{"soya", "nuts"}, "milk; some makers' also soya, nuts: read the packs"},
	} {
		if got := web.NamesOrNone(c.holds, c.may); got != c.want {
			t.Errorf("NamesOrNone(%q, %q) = %q, want %q", c.holds, c.may, got, c.want)
		}
	}
}

func TestTheEditorOfANewRecipe(t *testing.T) {
	s := newSite(t)
	at := s.start("An idea", "")
	page := s.shows("/recipes/new?episode=1", "A new recipe")
	if value(t, page, "episode") != "1" {
		t.Error("the editor forgets for which episode it is")
	}
	read := s.post("/recipes/read", "episode", "1", "text", scones, "note", "first")
	if read.status != http.StatusOK || !strings.Contains(words(read.body), "4 of 4 lines read") {
		t.Fatalf("read = %d\n%s", read.status, words(read.body))
	}
	if strings.Contains(words(s.get("/recipes").body), "Scones") {
		t.Error("reading kept the recipe")
	}
	if got := s.post("/recipes", "episode", "1", "text", scones, "note", "first"); got.to != at+"/recipe" {
		t.Fatalf("keep = %d to %q\n%s", got.status, got.to, words(got.body))
	}
	s.shows(at+"/recipe", "version 1", "250 g", "first")
}

func TestTheEditorCountsWhatIsRead(t *testing.T) {
	s := newSite(t)
	for _, c := range []struct{ name, text, says, not string }{
		{"nothing yet", "", "", "lines read"},
		{"one line", "Egg\n\n1 egg\n", "1 of 1 line read", ""},
		{"a food nobody knows", "Zorb\n\n2 zorbs\n", "The larder does not know this food", ""},
		{"an oven pair that disagrees", "Bun\n\n1 egg\n\nBake at 220 °C / 160 °C fan for 10 minutes.\n", "220 °C", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := s.post("/recipes/read", "text", c.text)
			page := words(got.body)
			if got.status != http.StatusOK || !strings.Contains(page, c.says) || (c.not != "" && strings.Contains(page, c.not)) {
				t.Errorf("read = %d, want it to say %q and not %q\n%s", got.status, c.says, c.not, page)
			}
		})
	}
}

func TestAnEditorOfATriedVersionOffersOnlyANewOne(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	if page := s.get("/recipes/1/edit").body; !strings.Contains(page, `"/recipes/1/versions/1"`) {
		t.Error("a version never tried cannot be saved into")
	}
	s.post(at+"/trials", "version", "1", "made", "2027-03-01", "scale", "1", "verdict", "proved")
	page := s.shows("/recipes/1/edit", "becomes version 2")
	if strings.Contains(page, `formaction="/recipes/1/versions/1"`) || strings.Contains(page, `action="/recipes/1/versions/1"`) {
		t.Error("a tried version can be saved into")
	}
	s.shows(at+"/recipe", "proved at × 1")
}

func TestTrialsTellTheirVersionAndLoss(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	s.post(at+"/trials", "version", "1", "made", "2026-12-30", "scale", "2", "dough", "1000", "baked", "900", "pieces", "16", "minutes", "12", "setting", "200 °C fan", "verdict", "proved")
	s.shows(at+"/trials", "version 1 at × 2", "30 Dec 2026", "10.0 %", "16", "200 °C fan", "proved")
	s.shows(at+"/recipe", "lost 10 % of its weight in cooking (1 trial)")
	s.post("/recipes", "text", "Flan\n\n4 eggs\n")
	s.post(at+"/version", "use", "2")
	s.shows(at+"/trials", "another recipe at × 2") // it was no trial of what is used now
	s.shows(at+"/recipe", "never tried")
}

func TestATrialOfAVersionThatIsNotThereIsRefused(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	for version, want := range map[string]int{"": 422, "0": 422, "x": 422, "77": 404} {
		got := s.post(at+"/trials", "version", version, "made", "2027-01-01", "scale", "1", "verdict", "nearly", "note", "keep me")
		if got.status != want {
			t.Errorf("version %q = %d, want %d", version, got.status, want)
		}
		if want == 422 && !strings.Contains(got.body, "keep me") {
			t.Errorf("version %q: the note is lost", version)
		}
	}
}
