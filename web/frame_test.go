package web_test

import (
	"bytes"
	"io"
	"net/http"
	"net/http/httptest"
	"regexp"
	"strings"
	"testing"

	"benchproof/static"
	"benchproof/web"
)

// ask sends a bare request with headers as name, value pairs.
func (s *site) ask(method, path string, body io.Reader, headers ...string) answer {
	s.t.Helper()
	r, err := http.NewRequest(method, s.url+path, body)
	if err != nil {
		s.t.Fatal(err)
	}
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	for i := 0; i < len(headers); i += 2 {
		r.Header.Set(headers[i], headers[i+1])
	}
	return s.do(r)
}

const formType = "application/x-www-form-urlencoded"

func TestAFormTooLargeIsRefusedWhole(t *testing.T) {
	s := newSite(t)
	large := append([]byte("title=Flan&recipe="), bytes.Repeat([]byte("a"), web.MaxForm)...)
	for _, path := range []string{"/episodes", "/pitches", "/recipes", "/show"} {
		got := s.ask(http.MethodPost, path, bytes.NewReader(large), "Content-Type", formType)
		if got.status != http.StatusRequestEntityTooLarge || !strings.Contains(got.body, "4 MB") {
			t.Errorf("POST %s of %d bytes = %d, want 413 with the limit", path, len(large), got.status)
		}
	}
	if page := s.get("/").body; strings.Contains(page, "Flan") {
		t.Error("half of the form was taken")
	}
}

func TestAFormAtTheLimitIsTaken(t *testing.T) {
	s := newSite(t)
	lead := "title=Flan&notes="
	body := lead + strings.Repeat("a", web.MaxForm-len(lead))
	if got := s.ask(http.MethodPost, "/episodes", strings.NewReader(body), "Content-Type", formType); got.status != http.StatusSeeOther {
		t.Errorf("a form of just the limit = %d, want it taken", got.status)
	}
}

func TestAMalformedFormIsRefused(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	for _, path := range []string{"/episodes", "/pitches", "/show", "/recipes", "/recipes/1/versions", at + "/brief", at + "/segments", at + "/cut", at + "/ticks", "/shopping/ticks"} {
		got := s.ask(http.MethodPost, path, strings.NewReader("title=%zz"), "Content-Type", formType)
		if got.status != http.StatusBadRequest || !strings.Contains(got.body, "cannot read") {
			t.Errorf("POST %s with a broken escape = %d, want 400 and a sentence", path, got.status)
		}
	}
}

// The store is closed under the running server: every page meets a failure of
// our own.
func TestAFailureOfOursShowsNoCause(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	if err := s.store.Close(); err != nil {
		t.Fatal(err)
	}
	for _, path := range []string{"/", at + "/recipe", "/pitches", "/show", "/s/ANYTOKEN"} {
		got := s.get(path)
		if got.status < 500 {
			t.Errorf("GET %s over a closed store = %d, want 5xx", path, got.status)
		}
		for _, cause := range []string{"sql", "database", "closed", "SELECT", ".go:", "goroutine"} {
			if strings.Contains(got.body, cause) {
				t.Errorf("GET %s shows the cause: it holds %q", path, cause)
			}
		}
		if got.header.Get("Content-Security-Policy") == "" {
			t.Errorf("GET %s fails without a content policy", path)
		}
	}
}

func TestEveryAnswerCarriesTheHeaders(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	shared := s.share(at)
	for _, path := range []string{"/", at, at + "/cut", at + "/card", at + "/card.pdf", "/recipes/1", "/no-such", at + "/nothing", shared, "/favicon.ico", static.URL("icons/icon.svg"), "/assets/x/none.css", "/sign-in"} {
		got := s.get(path)
		for name, want := range map[string]string{"X-Content-Type-Options": "nosniff", "Referrer-Policy": "same-origin", "Cross-Origin-Opener-Policy": "same-origin"} {
			if got.header.Get(name) != want {
				t.Errorf("GET %s (%d): %s = %q, want %q", path, got.status, name, got.header.Get(name), want)
			}
		}
		policy := got.header.Get("Content-Security-Policy")
		for _, part := range []string{"default-src 'none'", "frame-ancestors 'none'", "form-action 'self'", "base-uri 'none'"} {
			if !strings.Contains(policy, part) {
				t.Errorf("GET %s: the content policy lacks %q", path, part)
			}
		}
	}
	if got := s.post(at+"/segments", "title", ""); !strings.Contains(got.header.Get("Content-Security-Policy"), "default-src 'none'") {
		t.Error("a refused form has no content policy")
	}
}

var inline = regexp.MustCompile(`(?i)\son[a-z]+="|\sstyle="|<style|<script(?:\s+type="module")?>`)

func TestNoPageHasWhatItsPolicyForbids(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	for _, path := range []string{"/", "/recipes", "/recipes/1", "/recipes/1/edit", "/larder", "/pitches", "/show", "/shopping", "/deleted", at + "/brief", at + "/recipe", at + "/trials", at + "/shop", at + "/script", at + "/shots", at + "/cut", at + "/release", at + "/card", s.share(at)} {
		if found := inline.FindString(s.get(path).body); found != "" {
			t.Errorf("GET %s holds %q, which no browser will run under its policy", path, found)
		}
	}
}

func TestSignedInPagesAreKeptByNoCache(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	for _, path := range []string{"/", at + "/recipe", at + "/card.pdf", "/show", at + "/nothing"} {
		if got := s.get(path).header.Get("Cache-Control"); !strings.Contains(got, "no-store") {
			t.Errorf("GET %s: Cache-Control = %q, want no-store", path, got)
		}
	}
	s.client = s.newClient()
	if got := s.get("/sign-in").header.Get("Cache-Control"); !strings.Contains(got, "no-store") {
		t.Errorf("the sign-in page: Cache-Control = %q, want no-store", got)
	}
}

// RFC 9110 § 13.1.2 for If-None-Match, RFC 8246 for immutable.
func TestAssetsAreKeptForGood(t *testing.T) {
	s := newSite(t)
	page := s.get("/").body
	found := regexp.MustCompile(`/assets/[^"]+`).FindAllString(page, -1)
	if len(found) == 0 {
		t.Fatal("the page names no assets")
	}
	s.client = s.newClient()
	for _, path := range found {
		got := s.get(path)
		if got.status != http.StatusOK || got.body == "" {
			t.Errorf("GET %s = %d with %d bytes", path, got.status, len(got.body))
			continue
		}
		if cache := got.header.Get("Cache-Control"); !strings.Contains(cache, "immutable") || !strings.Contains(cache, "public") {
			t.Errorf("GET %s: Cache-Control = %q", path, cache)
		}
		if cookie := got.header.Get("Set-Cookie"); cookie != "" {
			t.Errorf("GET %s sets the cookie %s", path, cookie)
		}
		tag := got.header.Get("ETag")
		again := s.ask(http.MethodGet, path, nil, "If-None-Match", tag)
		if tag == "" || again.status != http.StatusNotModified || again.body != "" {
			t.Errorf("GET %s with its ETag %q = %d, want 304", path, tag, again.status)
		}
		if other := s.ask(http.MethodGet, path, nil, "If-None-Match", `"another"`); other.status != http.StatusOK {
			t.Errorf("GET %s with another ETag = %d, want 200", path, other.status)
		}
		head := s.ask(http.MethodHead, path, nil)
		if head.status != http.StatusOK || head.body != "" || head.header.Get("Content-Type") != got.header.Get("Content-Type") {
			t.Errorf("HEAD %s = %d %q", path, head.status, head.header.Get("Content-Type"))
		}
	}
}

func TestAnAssetOfAnotherBuildIsNotPassedOffAsThisOne(t *testing.T) {
	s := newSite(t)
	for _, path := range []string{"/assets/x/", "/assets/0000/none.css", "/assets/x/../../server.go", "/assets/x/%2e%2e/asset.go"} {
		if got := s.get(path); got.status == http.StatusOK {
			t.Errorf("GET %s = 200 with %.40q", path, got.body)
		} else if strings.Contains(got.header.Get("Cache-Control"), "immutable") {
			t.Errorf("GET %s: a missing file may be kept for good", path)
		}
	}
}

func TestHeadOfASignedInPage(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	for path, want := range map[string]int{"/": 200, at + "/brief": 200, "/episodes/77/brief": 404, "/nothing": 404} {
		if got := s.ask(http.MethodHead, path, nil); got.status != want || got.body != "" {
			t.Errorf("HEAD %s = %d with %d bytes, want %d and none", path, got.status, len(got.body), want)
		}
	}
}

func TestPagesAreNotChangedByOtherMethods(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	for _, c := range [][2]string{{"GET", at + "/delete"}, {"PUT", at + "/brief"}, {"DELETE", at}, {"DELETE", "/recipes/1"}, {"GET", "/shopping/ticks"}, {"PATCH", "/show"}, {"GET", "/deleted/episode/1/restore"}} {
		if got := s.ask(c[0], c[1], nil); got.status != http.StatusNotFound {
			t.Errorf("%s %s = %d, want 404", c[0], c[1], got.status)
		}
	}
	s.shows(at+"/brief", "Scones")
}

func TestSigningOutByGetDoesNothing(t *testing.T) {
	s := openSite(t, web.Config{SetupCode: code})
	s.post("/setup", "code", code, "name", "Ottoline", "password", "a short sentence", "show", "Quay Kitchen")
	if got := s.get("/sign-out"); got.status != http.StatusNotFound {
		t.Errorf("GET /sign-out = %d, want 404", got.status)
	}
	s.shows("/", "Quay Kitchen")
}

func TestTheFavicon(t *testing.T) {
	s := newSite(t)
	to := s.get("/favicon.ico").to
	if got := s.get(to); got.status != http.StatusOK || !strings.HasPrefix(got.header.Get("Content-Type"), "image/") {
		t.Errorf("the icon at %q = %d %s", to, got.status, got.header.Get("Content-Type"))
	}
}

func TestAPanicIsAnsweredWithoutItsCause(t *testing.T) {
	handler := web.RecoverPanic(http.HandlerFunc(func(http.ResponseWriter, *http.Request) { panic("secret cause") }))
	w := httptest.NewRecorder()
	handler.ServeHTTP(w, httptest.NewRequest(http.MethodGet, "/", nil))
	if w.Code != http.StatusInternalServerError || strings.Contains(w.Body.String(), "secret") {
		t.Errorf("a panic = %d %q, want 500 without the cause", w.Code, w.Body)
	}
}

// net/http ends the connection on ErrAbortHandler: it must get it.
func TestAnAbortedAnswerStaysAborted(t *testing.T) {
	handler := web.RecoverPanic(http.HandlerFunc(func(http.ResponseWriter, *http.Request) { panic(http.ErrAbortHandler) }))
	defer func() {
		if cause := recover(); cause != http.ErrAbortHandler {
			t.Errorf("the server gets %v, want ErrAbortHandler", cause)
		}
	}()
	handler.ServeHTTP(httptest.NewRecorder(), httptest.NewRequest(http.MethodGet, "/", nil))
	t.Error("the abort was swallowed")
}
