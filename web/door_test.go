package web_test

import (
	"net/http"
	"strings"
	"testing"

	"benchproof/web"
)

const code = "ONETIMECODE"

func TestTheFirstVisitorSetsUpTheOwner(t *testing.T) {
	s := openSite(t, web.Config{SetupCode: code})
	if got := s.get("/"); got.to != "/setup" {
		t.Fatalf("first visit goes to %q, want /setup", got.to)
	}
	wrong := s.post("/setup", "code", "GUESS", "name", "Ottoline", "password", "a short sentence", "show", "Quay Kitchen")
	if wrong.status != http.StatusUnprocessableEntity || !strings.Contains(wrong.body, "not the one-time code") {
		t.Errorf("a wrong code = %d, want 422 with the reason", wrong.status)
	}
	if !strings.Contains(wrong.body, "Quay Kitchen") {
		t.Error("what was typed is lost with a wrong code")
	}
	if strings.Contains(wrong.body, "a short sentence") {
		t.Error("the password is drawn back")
	}
	if got := s.post("/setup", "code", code, "name", "Ottoline", "password", "a short sentence", "show", "Quay Kitchen"); got.to != "/" {
		t.Fatalf("set up = %d to %q, want a redirect to /\n%s", got.status, got.to, got.body)
	}
	s.shows("/", "Quay Kitchen", "Ottoline")
	s.client = s.newClient()
	if got := s.get("/setup"); got.to != "/sign-in" {
		t.Errorf("set-up once more goes to %q, want /sign-in", got.to)
	}
	if got := s.post("/setup", "code", code, "name", "Intruder", "password", "a short sentence", "show", "Mine"); got.status == http.StatusSeeOther && got.to == "/" {
		t.Error("a second owner was let in")
	}
}

func TestSigningInAndOut(t *testing.T) {
	s := openSite(t, web.Config{SetupCode: code})
	s.post("/setup", "code", code, "name", "Ottoline", "password", "a short sentence", "show", "Quay Kitchen")
	s.client = s.newClient()
	if got := s.get("/recipes"); got.to != "/sign-in" {
		t.Errorf("a stranger at /recipes goes to %q, want /sign-in", got.to)
	}
	for name, pair := range map[string][2]string{
		"wrong password": {"Ottoline", "another sentence"},
		"unknown name":   {"Nobody", "a short sentence"},
	} {
		if got := s.post("/sign-in", "name", pair[0], "password", pair[1]); got.status != http.StatusUnprocessableEntity {
			t.Errorf("%s: status %d, want 422", name, got.status)
		}
	}
	if got := s.post("/sign-in", "name", "Ottoline", "password", "a short sentence"); got.to != "/" {
		t.Fatalf("sign in goes to %q, want /", got.to)
	}
	s.shows("/", "Quay Kitchen")
	if got := s.post("/sign-out"); got.to != "/sign-in" {
		t.Errorf("sign out goes to %q, want /sign-in", got.to)
	}
	if got := s.get("/"); got.to != "/sign-in" {
		t.Error("still signed in after signing out")
	}
}

func TestTooManyTriesAtTheDoorAreRefused(t *testing.T) {
	s := openSite(t, web.Config{SetupCode: code})
	var last answer
	for range 11 {
		last = s.post("/setup", "code", "GUESS")
	}
	if last.status != http.StatusTooManyRequests {
		t.Errorf("the eleventh try = %d, want 429", last.status)
	}
}

func TestAFormFromAnotherSiteIsRefused(t *testing.T) {
	s := newSite(t)
	r, err := http.NewRequest(http.MethodPost, s.url+"/pitches", strings.NewReader("dish=Flan"))
	if err != nil {
		t.Fatal(err)
	}
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	r.Header.Set("Sec-Fetch-Site", "cross-site")
	if got := s.do(r); got.status != http.StatusForbidden {
		t.Errorf("status %d, want 403", got.status)
	}
	if strings.Contains(s.get("/pitches").body, "Flan") {
		t.Error("the form was taken all the same")
	}
}

func TestTheDemoAnswersOnlyOnThisMachine(t *testing.T) {
	s := newSite(t)
	r, err := http.NewRequest(http.MethodGet, s.url+"/", nil)
	if err != nil {
		t.Fatal(err)
	}
	r.Host = "kitchen.example"
	if got := s.do(r); got.status != http.StatusForbidden {
		t.Errorf("the demo under a foreign name = %d, want 403", got.status)
	}
}

func TestEveryAnswerCarriesTheContentPolicy(t *testing.T) {
	s := newSite(t)
	for _, path := range []string{"/", "/no-such-page", "/s/no-such-token"} {
		policy := s.get(path).header.Get("Content-Security-Policy")
		if !strings.Contains(policy, "default-src 'none'") || strings.Contains(policy, "unsafe") {
			t.Errorf("GET %s: Content-Security-Policy = %q", path, policy)
		}
	}
}

// doorConfig is a kitchen that nobody owns yet.
var doorConfig = web.Config{SetupCode: code}

func TestTheDoorKeepsWhatWasTypedButThePassword(t *testing.T) {
	s := openSite(t, doorConfig)
	s.post("/setup", "code", code, "name", "Ottoline", "password", "a short sentence", "show", "Quay Kitchen")
	s.client = s.newClient()
	got := s.post("/sign-in", "name", "Ottoline <b>", "password", "guess-work-42")
	if !strings.Contains(got.body, "Ottoline &lt;b&gt;") || strings.Contains(got.body, "guess-work-42") {
		t.Error("the name is lost, or the password drawn back")
	}
}

func TestSetUpSaysEverythingThatIsMissing(t *testing.T) {
	s := openSite(t, doorConfig)
	got := s.post("/setup", "code", "GUESS", "password", "short")
	for _, say := range []string{"not the one-time code", "the name you will sign in with", "at least 8 characters", "Give the show a name"} {
		if !strings.Contains(words(got.body), say) {
			t.Errorf("the page does not say %q", say)
		}
	}
}

func TestTheCodeMayBeTypedInSmallLetters(t *testing.T) {
	s := openSite(t, doorConfig)
	if got := s.post("/setup", "code", strings.ToLower(" "+code+" "), "name", "Ottoline", "password", "a short sentence", "show", "Quay Kitchen"); got.to != "/" {
		t.Errorf("set up = %d to %q", got.status, got.to)
	}
}

func TestASessionHasAFreshTokenOutOfReachOfScripts(t *testing.T) {
	s := openSite(t, web.Config{SetupCode: code, PublicURL: "https://kitchen.example"})
	got := s.post("/setup", "code", code, "name", "Ottoline", "password", "a short sentence", "show", "Quay Kitchen")
	cookie := got.header.Get("Set-Cookie")
	for _, part := range []string{"benchproof=", "HttpOnly", "SameSite=Lax", "Secure", "Path=/"} {
		if !strings.Contains(cookie, part) {
			t.Errorf("the cookie %q lacks %s", cookie, part)
		}
	}
}

func TestWithoutACodeNobodySetsUp(t *testing.T) {
	s := openSite(t, web.Config{})
	if got := s.post("/setup", "code", "", "name", "Intruder", "password", "a short sentence", "show", "Mine"); got.status != http.StatusUnprocessableEntity {
		t.Errorf("set-up with an empty code = %d, want 422", got.status)
	}
}

func TestAServerNeedsAPublicAddress(t *testing.T) {
	for address, good := range map[string]bool{"https://kitchen.example/": true, "http://127.0.0.1:8080": true, "": false, "kitchen.example": false, "ftp://kitchen.example": false, "https://": false, "::": false} {
		if _, err := web.New(nil, web.Config{PublicURL: address}); (err == nil) != good {
			t.Errorf("a server at %q: %v", address, err)
		}
	}
}
