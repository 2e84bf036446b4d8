package browser_test

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"net/url"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/cmd/check/browser"
)

// harbour is a site with everything a crawl can stumble over: a door that sets
// the cookie every page asks for, loops, a dead link, a way out, a redirect,
// a file, and links to elsewhere.
func harbour(t *testing.T) (base string, asked func() []string) {
	t.Helper()
	var mu sync.Mutex // a browser asks for several things at once
	var requests []string
	links := map[string]string{
		"/":         `<a href="/quay">q</a> <a href="./quay#top">q</a> <a href="https://elsewhere.example/">e</a> <a href="mailto:a@b.example">m</a>`,
		"/quay":     `<a href="/">home</a><a href="/gone">dead</a><a href="/sign-out">out</a><a href="/old">old</a><a href="/card.pdf">card</a>`,
		"/new":      `<form action="/delete" method="post"><button>Delete</button></form><a href="/list?b=2&amp;a=1">l</a><a href="/list?a=1&amp;b=2">l</a>`,
		"/list":     `<p>The list</p>`,
		"/sign-out": `<p>Gone</p>`,
		"/delete":   `<p>Gone</p>`,
	}
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		mu.Lock()
		requests = append(requests, r.Method+" "+r.URL.RequestURI())
		mu.Unlock()
		_, err := r.Cookie("key")
		switch {
		case r.URL.Path == "/door":
			http.SetCookie(w, &http.Cookie{Name: "key", Value: "1", Path: "/"})
			http.Redirect(w, r, "/", http.StatusSeeOther)
		case err != nil:
			http.Error(w, "no key", http.StatusForbidden)
		case r.URL.Path == "/old":
			http.Redirect(w, r, "/new", http.StatusMovedPermanently)
		case r.URL.Path == "/card.pdf":
			w.Header().Set("Content-Type", "application/pdf")
			fmt.Fprint(w, `%PDF <a href="/not-a-link">`)
		case links[r.URL.Path] == "":
			http.NotFound(w, r)
		default:
			w.Header().Set("Content-Type", "text/html; charset=utf-8")
			fmt.Fprint(w, "<!doctype html>", links[r.URL.Path])
		}
	}))
	t.Cleanup(server.Close)
	return server.URL, func() []string {
		mu.Lock()
		defer mu.Unlock()
		return slices.Clone(requests)
	}
}

func TestCrawl(t *testing.T) {
	base, asked := harbour(t)
	pages := browser.Crawl(t, nil, base+"/door")
	var got []string
	for _, p := range pages {
		got = append(got, fmt.Sprintf("%d %s from %q", p.Status, p.Name(), p.From))
	}
	want := []string{
		`200 / from ""`,
		`200 /quay from "/"`,
		`404 /gone from "/quay"`,
		`200 /new from "/quay"`,
		`200 /card.pdf from "/quay"`,
		`200 /list?a=1&b=2 from "/new"`,
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("Crawl() pages (-want +got):\n%s", diff)
	}
	for _, request := range asked() {
		if !strings.HasPrefix(request, "GET ") || strings.Contains(request, "sign-out") || strings.Contains(request, "delete") {
			t.Errorf("the crawl asked %s", request)
		}
	}
	if got := len(browser.HTML(pages)); got != 4 {
		t.Errorf("HTML() gives %d pages, want the 4 that are HTML and not 404", got)
	}
}

func TestCrawlWithTheTabsCookies(t *testing.T) {
	base, _ := harbour(t)
	tab := browser.Start(t, browser.Desk)
	tab.Open(base + "/door")
	pages := browser.Crawl(t, tab.Client(), tab.Address().String())
	if len(pages) != 6 || pages[0].Status != 200 {
		t.Errorf("Crawl() with the tab's cookies gives %d pages, the first %d; want 6, 200", len(pages), pages[0].Status)
	}
}

func TestCrawlIsBounded(t *testing.T) {
	deep := func(path string) string { return fmt.Sprintf(`<a href="%s1/">on</a><a href="%[1]s2/">on</a>`, path) }
	wide := func(string) string {
		var b strings.Builder
		for i := range 1000 {
			fmt.Fprintf(&b, `<a href="/food/%d">food</a>`, i)
		}
		return b.String()
	}
	queries := func(string) string {
		var b strings.Builder
		for i := range 1000 {
			fmt.Fprintf(&b, `<a href="/?by=%d">by</a>`, i)
		}
		return b.String()
	}
	tests := []struct {
		name string
		body func(path string) string
		want int
	}{
		{"endlessly deep", deep, browser.MaxPages},
		{"a thousand in one folder", wide, 1 + 24},
		{"a thousand values of one query", queries, 1 + 4},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
				w.Header().Set("Content-Type", "text/html")
				fmt.Fprint(w, tt.body(r.URL.Path))
			}))
			t.Cleanup(server.Close)
			if got := len(browser.Crawl(t, nil, server.URL)); got != tt.want {
				t.Errorf("Crawl() gives %d pages, want %d", got, tt.want)
			}
		})
	}
}

// TestCrawlFindsTheRareAmongTheMany hides one page behind the last of very many
// that are alike.
func TestCrawlFindsTheRareAmongTheMany(t *testing.T) {
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/html")
		switch depth := strings.Count(r.URL.Path, "/"); {
		case r.URL.Path == "/":
			for i := range 400 {
				fmt.Fprintf(w, `<a href="/show/%d/1">a show</a>`, i)
			}
			fmt.Fprint(w, `<a href="/about">about</a>`)
		case r.URL.Path == "/about":
			fmt.Fprint(w, `<a href="/about/us">us</a>`)
		case depth == 3:
			fmt.Fprint(w, `<p>A show</p>`)
		}
	}))
	t.Cleanup(server.Close)
	pages := browser.Crawl(t, nil, server.URL)
	if len(pages) != browser.MaxPages || !slices.ContainsFunc(pages, func(p browser.Page) bool { return p.Name() == "/about/us" }) {
		t.Errorf("Crawl() gives %d pages and not /about/us among them", len(pages))
	}
}

func TestSample(t *testing.T) {
	origin := &url.URL{Scheme: "http", Host: "127.0.0.1"}
	var pages []browser.Page
	add := func(paths ...string) {
		for _, path := range paths {
			u, err := origin.Parse(path)
			if err != nil {
				t.Fatal(err)
			}
			pages = append(pages, browser.Page{URL: u})
		}
	}
	add("/episodes/1", "/episodes/2", "/episodes/1/shop", "/episodes/1/brief", "/episodes/2/shop")
	add("/r/Zk3-aQ0_9xTvLw2PpYeu5A", "/r/0000000000000000")
	add("/list?a=1", "/list?a=2", "/list?b=1&a=1", "/list")
	for _, food := range strings.Fields("apple bran carrot dulse egg fig ghee honey ice jam kale leek mace") {
		add("/larder/" + food)
	}
	add("/pitches/new", "/pitches/old")
	var got []string
	for _, p := range browser.Sample(pages, 1) {
		got = append(got, p.Name())
	}
	want := []string{
		"/episodes/1", "/episodes/1/shop", "/episodes/1/brief", "/r/Zk3-aQ0_9xTvLw2PpYeu5A",
		"/list?a=1", "/list?b=1&a=1", "/list", "/larder/apple", "/pitches/new", "/pitches/old",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("Sample() (-want +got):\n%s", diff)
	}
	if got := len(browser.Sample(pages, 2)); got != len(want)+5 {
		t.Errorf("Sample() of two each gives %d pages, want %d", got, len(want)+5)
	}
}
