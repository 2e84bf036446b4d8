package web_test

import (
	"encoding/json"
	"net/http"
	"regexp"
	"strings"
	"testing"
)

var sharedAddress = regexp.MustCompile(`http://kitchen\.example(/s/[A-Z0-9]{26})`)

// share makes a share link and gives its path.
func (s *site) share(episode string) string {
	s.t.Helper()
	if got := s.post(episode + "/shares"); got.status != http.StatusSeeOther {
		s.t.Fatalf("making a link = %d", got.status)
	}
	found := sharedAddress.FindStringSubmatch(s.get(episode + "/release").body)
	if found == nil {
		s.t.Fatal("the new address is not shown")
	}
	return found[1]
}

func TestAShareLinkOpensWithoutSigningIn(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	s.post(episode+"/corrections", "at", "2:10", "said", "200 degrees", "right", "220 degrees")
	path := s.share(episode)
	if sharedAddress.MatchString(words(s.get(episode + "/cut").body)) {
		t.Error("the address is shown more than once")
	}

	s.client = s.newClient()
	page := s.get(path)
	if page.status != http.StatusOK {
		t.Fatalf("GET %s = %d", path, page.status)
	}
	for _, text := range []string{"Scones", "250 g", "220 degrees", "milk"} {
		if !strings.Contains(words(page.body), text) {
			t.Errorf("the viewers' page does not show %q", text)
		}
	}
	if got := page.header.Get("Set-Cookie"); got != "" {
		t.Errorf("the viewers' page sets a cookie: %s", got)
	}
	if got := page.header.Get("Cache-Control"); got != "public, max-age=60" {
		t.Errorf("Cache-Control = %q", got)
	}
	if strings.Contains(page.header.Get("Vary"), "Cookie") {
		t.Error("the viewers' page varies by cookie")
	}
	s.shows(path+"?measure=us", "2 cups")
	s.shows(path+"?factor=2", "500 g")
	s.shows(path+"/card", "Scones", "250 g")
	if pdf := s.get(path + "/card.pdf?paper=a5"); !strings.HasPrefix(pdf.body, "%PDF-") {
		t.Errorf("the card = %d %.20q, want a PDF", pdf.status, pdf.body)
	}
}

func TestAnUnchangedViewersPageIsNotSentAgain(t *testing.T) {
	s := newSite(t)
	path := s.share(s.start("Scones", scones))
	r, err := http.NewRequest(http.MethodGet, s.url+path, nil)
	if err != nil {
		t.Fatal(err)
	}
	r.Header.Set("If-None-Match", s.get(path).header.Get("ETag"))
	if got := s.do(r); got.status != http.StatusNotModified || got.body != "" {
		t.Errorf("status %d with %d bytes, want 304 and none", got.status, len(got.body))
	}
}

func TestHeadIsAnsweredAsGetWithoutABody(t *testing.T) {
	s := newSite(t)
	path := s.share(s.start("Scones", scones))
	r, err := http.NewRequest(http.MethodHead, s.url+path, nil)
	if err != nil {
		t.Fatal(err)
	}
	if got := s.do(r); got.status != http.StatusOK || got.body != "" || got.header.Get("ETag") == "" {
		t.Errorf("HEAD %s = %d, %d bytes, ETag %q", path, got.status, len(got.body), got.header.Get("ETag"))
	}
}

func TestAWithdrawnLinkIsGone(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	path := s.share(episode)
	if got := s.post(episode + "/shares/1/revoke"); got.status != http.StatusSeeOther {
		t.Fatalf("revoke = %d", got.status)
	}
	for _, gone := range []string{path, path + "/card", path + "/card.pdf", "/s/NEVERWAS"} {
		if got := s.get(gone); got.status != http.StatusNotFound {
			t.Errorf("GET %s = %d, want 404", gone, got.status)
		}
	}
}

// The property names are those of schema.org's Recipe, release 30.0.
func TestTheViewersPageCarriesAStructuredRecipe(t *testing.T) {
	s := newSite(t)
	body := s.get(s.share(s.start("Scones", scones))).body
	_, after, found := strings.Cut(body, `<script type="application/ld+json">`)
	data, _, closed := strings.Cut(after, "</script>")
	if !found || !closed {
		t.Fatal("there is no structured data")
	}
	var recipe map[string]any
	if err := json.Unmarshal([]byte(data), &recipe); err != nil {
		t.Fatal(err)
	}
	for property, want := range map[string]any{"@context": "https://schema.org", "@type": "Recipe", "name": "Scones"} {
		if recipe[property] != want {
			t.Errorf("%s = %v, want %v", property, recipe[property], want)
		}
	}
	if list, _ := recipe["recipeIngredient"].([]any); len(list) != 4 {
		t.Errorf("recipeIngredient = %v, want 4", recipe["recipeIngredient"])
	}
}

func TestAHostileRecipeCannotBreakOutOfThePage(t *testing.T) {
	s := newSite(t)
	hostile := "</script><script>alert(1)</script>\n\n200 g flour <img src=x onerror=alert(1)>\n\nMix for 5 minutes. <b>Bake</b> </script>\n"
	episode := s.start("<script>alert(1)</script>", hostile)
	for _, path := range []string{episode + "/recipe", episode + "/release", episode + "/shop", "/", s.share(episode)} {
		body := s.get(path).body
		for _, bad := range []string{"<script>alert", "<img src=x"} {
			if strings.Contains(body, bad) {
				t.Errorf("%s holds %q as markup", path, bad)
			}
		}
	}
	s.post(episode+"/brief", "title", "X", "stage", "pitched", "notes", "hello <script>alert(1)</script> [x](javascript:alert(1))", "revision", value(t, s.get(episode+"/brief").body, "revision"))
	if body := s.get(episode + "/brief").body; strings.Contains(body, "<script>alert") || strings.Contains(body, `href="javascript:`) {
		t.Error("the notes are not sanitised")
	}
}

func TestTheReleaseSheetWritesTheDescription(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	for _, title := range []string{"Cold open", "The rub", "The bake"} {
		s.post(episode+"/segments", "title", title, "planned", "1:00")
	}
	form := s.get(episode + "/release").body
	got := s.post(episode+"/release", "revision", value(t, form, "revision"), "title", "Scones that rise", "opening", "Eight scones in half an hour.", "equipment", "a bowl\na tray", "credits", "", "disclosure", "", "video", "https://video.example/1")
	if got.status != http.StatusSeeOther {
		t.Fatalf("save = %d\n%s", got.status, words(got.body))
	}
	s.shows(episode+"/release", "Eight scones in half an hour.", "0:00 Cold open", "1:00 The rub", "250 g", "cups", "of 5,000 characters", "a tray")
	wrong := s.post(episode+"/release", "revision", "2", "title", "T", "video", "not an address")
	if wrong.status != http.StatusUnprocessableEntity || !strings.Contains(wrong.body, "not an address") {
		t.Errorf("a wrong address = %d, want 422 with what was typed", wrong.status)
	}
}

func TestCardsOfEverySize(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	for _, paper := range []string{"a4", "letter", "a5"} {
		s.shows(episode+"/card?paper="+paper, "Scones")
	}
	for _, paper := range []string{"a4", "letter", "a5", "4x6"} {
		pdf := s.get(episode + "/card.pdf?paper=" + paper)
		if pdf.status != http.StatusOK || pdf.header.Get("Content-Type") != "application/pdf" {
			t.Errorf("%s: %d %s", paper, pdf.status, pdf.header.Get("Content-Type"))
		}
	}
	if got := s.get(episode + "/card.pdf?paper=a0"); got.status != http.StatusNotFound {
		t.Errorf("a paper we do not have = %d, want 404", got.status)
	}
}
