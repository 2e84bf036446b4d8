package web_test

import (
	"net/http"
	"regexp"
	"strings"
	"testing"

	"benchproof/static"
)

// A worker reaches the pages below its own address, and a browser that kept the
// script itself would never see a newer one.
// Source: Service Workers (W3C), "path restriction" and "soft update".
func TestTheWorkerIsServedForAllPages(t *testing.T) {
	s := newSite(t)
	got := s.get("/worker.js")
	if got.status != http.StatusOK || !strings.Contains(got.body, "No signal: this is the page as of") {
		t.Fatalf("= %d %.60q", got.status, got.body)
	}
	for name, want := range map[string]string{"Content-Type": "text/javascript; charset=utf-8", "Cache-Control": "no-cache", "Set-Cookie": ""} {
		if has := got.header.Get(name); has != want {
			t.Errorf("%s = %q, want %q", name, has, want)
		}
	}
	if again := s.ask(http.MethodGet, "/worker.js", nil, "If-None-Match", got.header.Get("ETag")); again.status != http.StatusNotModified {
		t.Errorf("asked again = %d, want 304", again.status)
	}
	policy := got.header.Get("Content-Security-Policy")
	for _, want := range []string{"worker-src 'self';", "connect-src 'self';"} {
		if !strings.Contains(policy, want) {
			t.Errorf("the policy %q lacks %s", policy, want)
		}
	}
}

// Only the sheets that are used while filming ask to be kept, and the worker
// knows the place where it says so.
func TestTwoSheetsAreKept(t *testing.T) {
	s := furnished(t)
	place := regexp.MustCompile(`text\.replace\('([^']+)'`).FindStringSubmatch(scriptOf(t, "worker.js"))
	if place == nil {
		t.Fatal("the worker fills nothing in")
	}
	for _, path := range pages {
		want := 0
		if strings.Contains(path, "/shots") || strings.Contains(path, "/shoot-day") {
			want = 1
		}
		page := s.get(path).body
		if got := strings.Count(page, place[1]); got != want {
			t.Errorf("%s has %d places to say that it is kept, want %d", path, got, want)
		}
		if got := strings.Count(page, `data-worker="/worker.js"`); got != want {
			t.Errorf("%s names the worker %d times, want %d", path, got, want)
		}
		if got := strings.Count(page, static.URL("kept.js")); got != want {
			t.Errorf("%s has kept.js %d times, want %d", path, got, want)
		}
	}
}

// Every asset that a kept page needs is found by the worker's pattern.
func TestTheWorkerFindsWhatASheetNeeds(t *testing.T) {
	pattern := regexp.MustCompile(`text\.match\(/(.*)/g\)`).FindStringSubmatch(scriptOf(t, "worker.js"))
	if pattern == nil {
		t.Fatal("the worker looks for no assets")
	}
	address := regexp.MustCompile(strings.ReplaceAll(pattern[1], `\/`, `/`))
	for _, name := range static.Names() {
		if at := static.URL(name); address.FindString(`"`+at+`"`) != at {
			t.Errorf("%s is not found, or not whole", at)
		}
	}
}

// What the worker keeps is dropped under the name that it is kept by.
func TestTheDoorDropsWhatTheWorkerKeeps(t *testing.T) {
	name := regexp.MustCompile(`cacheName = ("\w+");`).FindStringSubmatch(scriptOf(t, "worker.js"))
	if name == nil || !strings.Contains(scriptOf(t, "app.js"), "caches?.delete("+name[1]+")") {
		t.Errorf("the worker keeps pages in %v, and app.js does not delete that", name)
	}
	s := openSite(t, doorConfig)
	for _, page := range []string{"/setup", "/sign-in"} {
		if page == "/sign-in" {
			s.post("/setup", "code", code, "name", "Ottoline", "password", "a short sentence", "show", "Quay Kitchen")
			s.client = s.newClient()
		}
		body := s.get(page).body
		if !strings.Contains(body, `action="`+page+`"`) || !strings.Contains(body, static.URL("app.js")) {
			t.Errorf("%s has no form or no script by which to drop what is kept", page)
		}
	}
}

// scriptOf is one of our scripts.
func scriptOf(t *testing.T, name string) string {
	t.Helper()
	asset, ok := static.Open(static.URL(name))
	if !ok {
		t.Fatalf("there is no %s", name)
	}
	return string(asset.Body)
}
