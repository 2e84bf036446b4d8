package web_test

import (
	"context"
	"io"
	"net/http"
	"net/http/cookiejar"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"time"

	"benchproof/seed"
	"benchproof/store"
	"benchproof/web"
)

// site is a running server over an empty store, and one browser at it.
type site struct {
	t      testing.TB
	store  *store.Store
	url    string
	client *http.Client
}

// today is the day on which every test takes place.
var today = time.Date(2027, 3, 2, 9, 0, 0, 0, time.UTC)

// newSite opens a site whose visitor is signed in.
func newSite(t testing.TB) *site { return openSite(t, web.Config{OpenDoor: true}) }

func openSite(t testing.TB, config web.Config) *site {
	t.Helper()
	now := func() time.Time { return today }
	path := filepath.Join(t.TempDir(), "test.db")
	if err := os.WriteFile(path, emptyStore(), 0o600); err != nil {
		t.Fatal(err)
	}
	st, err := store.Open(context.Background(), path, store.Options{Now: time.Now}) // sessions expire by the real clock
	if err != nil {
		t.Fatal(err)
	}
	larder, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	config.Larder, config.Now = larder, now
	if config.PublicURL == "" {
		config.PublicURL = "http://kitchen.example"
	}
	server, err := web.New(st, config)
	if err != nil {
		t.Fatal(err)
	}
	listening := httptest.NewServer(server.Handler())
	t.Cleanup(func() {
		listening.Close()
		if err := st.Close(); err != nil {
			t.Error(err)
		}
	})
	s := &site{t: t, store: st, url: listening.URL}
	s.client = s.newClient()
	return s
}

// emptyStore is the file of a store in which nothing is kept yet. It is made
// once: the migrations take longer than most tests.
var emptyStore = sync.OnceValue(func() []byte {
	folder := must(os.MkdirTemp("", "store"))
	defer os.RemoveAll(folder)
	path := filepath.Join(folder, "empty.db")
	if err := must(store.Open(context.Background(), path, store.Options{})).Close(); err != nil {
		panic(err)
	}
	return must(os.ReadFile(path))
})

// newClient is another browser: it keeps its own cookies and follows nothing.
func (s *site) newClient() *http.Client {
	jar, err := cookiejar.New(nil)
	if err != nil {
		s.t.Fatal(err)
	}
	return &http.Client{Jar: jar, CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse }}
}

// answer is one response, read.
type answer struct {
	status int
	to     string // where it sends the browser; "" if nowhere
	body   string
	header http.Header
}

func (s *site) do(r *http.Request) answer {
	s.t.Helper()
	response, err := s.client.Do(r)
	if err != nil {
		s.t.Fatal(err)
	}
	defer response.Body.Close()
	body, err := io.ReadAll(response.Body)
	if err != nil {
		s.t.Fatal(err)
	}
	return answer{response.StatusCode, response.Header.Get("Location"), string(body), response.Header}
}

func (s *site) get(path string) answer {
	s.t.Helper()
	r, err := http.NewRequest(http.MethodGet, s.url+path, nil)
	if err != nil {
		s.t.Fatal(err)
	}
	return s.do(r)
}

// post sends a form as a page of this site does. Its pairs are name, value.
func (s *site) post(path string, pairs ...string) answer {
	s.t.Helper()
	form := url.Values{}
	for i := 0; i < len(pairs); i += 2 {
		form.Set(pairs[i], pairs[i+1])
	}
	return s.send(path, form)
}

// send sends a form as a page of this site does.
func (s *site) send(path string, form url.Values) answer {
	s.t.Helper()
	r, err := http.NewRequest(http.MethodPost, s.url+path, strings.NewReader(form.Encode()))
	if err != nil {
		s.t.Fatal(err)
	}
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	return s.do(r)
}

// start makes an episode the short way and gives its address.
func (s *site) start(title, recipe string) string {
	s.t.Helper()
	made := s.post("/episodes", "title", title, "recipe", recipe)
	if made.status != http.StatusSeeOther {
		s.t.Fatalf("POST /episodes = %d, want a redirect\n%s", made.status, made.body)
	}
	return strings.TrimSuffix(strings.TrimSuffix(made.to, "/recipe"), "/brief")
}

// shows fails unless the page at path answers 200 and its words hold each text.
func (s *site) shows(path string, texts ...string) string {
	s.t.Helper()
	page := s.get(path)
	if page.status != http.StatusOK {
		s.t.Fatalf("GET %s = %d\n%s", path, page.status, page.body)
	}
	words := words(page.body)
	for _, text := range texts {
		if !strings.Contains(words, text) {
			s.t.Errorf("GET %s does not show %q:\n%s", path, text, words)
		}
	}
	return page.body
}

var (
	tag    = regexp.MustCompile(`(?s)<script.*?</script>|<[^>]*>`)
	blanks = regexp.MustCompile(`\s+`)
)

// words is what a person reads of a page, on one line.
func words(html string) string {
	text := tag.ReplaceAllString(html, " ")
	text = strings.NewReplacer("&amp;", "&", "&#39;", "'", "&#34;", `"`, "&lt;", "<", "&gt;", ">", "\u00a0", " ").Replace(text)
	return blanks.ReplaceAllString(text, " ")
}

// value is what a field of a page's form holds.
func value(t testing.TB, html, name string) string {
	t.Helper()
	input := regexp.MustCompile(`<input[^>]*name="` + regexp.QuoteMeta(name) + `"[^>]*>`).FindString(html)
	found := regexp.MustCompile(`value="([^"]*)"`).FindStringSubmatch(input)
	if found == nil {
		t.Fatalf("the page has no field %q with a value", name)
	}
	return found[1]
}
