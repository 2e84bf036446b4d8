package browser

import (
	"bytes"
	"fmt"
	"io"
	"maps"
	"net/http"
	"net/http/cookiejar"
	"net/url"
	"path"
	"slices"
	"strings"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
	"golang.org/x/net/html"
)

// The bounds of a crawl: how many addresses in all, how many below one folder
// (of a long list the first few stand for the rest), and how many that differ
// only in the values of their query.
const (
	MaxPages    = 300
	maxSiblings = 24
	maxQueries  = 4
)

// maxBody bounds what is read of one answer, in bytes.
const maxBody = 8 << 20

// Crawl follows links from start and gives every answer of the same origin, in
// the order it asked for them, start first. It goes breadth-first, but what is of
// a shape seen least comes before the next of many alike, so that no kind of
// page is crowded out when it stops at its bounds. It sends GET only: it follows
// the href of a and link elements, never a form, a script or an address that
// signs out. It ends the test when an address cannot be had at all; an answer
// of 404 is a Page like others, and From tells where the dead link stands.
//
// The client carries what signs in: take Tab.Client of a tab that is signed
// in. A nil client has cookies of its own, which does where the start address
// signs its visitor in.
func Crawl(tb TB, client *http.Client, start string) []Page {
	tb.Helper()
	if client == nil {
		client = newClient(tb)
	}
	first, err := url.Parse(start)
	if err != nil || first.Host == "" {
		tb.Fatalf("crawl from %q: not an absolute address (%v)", start, err)
	}
	c := crawl{origin: first, seen: map[string]bool{}, alike: map[string]int{}, visited: map[string]int{}}
	c.add(step{to: first})
	for asked := 0; len(c.queue) > 0; asked++ {
		if asked == MaxPages {
			tb.Logf("crawl: stopped at %d addresses, %d more were found", MaxPages, len(c.queue))
			break
		}
		next := c.next()
		page, err := get(client, next)
		if err != nil {
			tb.Fatalf("crawl %s, linked from %q: %v", next.to, next.from, err)
		}
		c.arrive(page)
	}
	return c.pages
}

// step is an address to visit, the path that links to it, and its shape.
type step struct {
	to    *url.URL
	from  string
	shape string
}

type crawl struct {
	origin  *url.URL
	queue   []step
	seen    map[string]bool
	alike   map[string]int // addresses found, by what bounds them
	visited map[string]int // addresses asked for, by shape
	pages   []Page
}

// add queues an address of the same origin that is new.
func (c *crawl) add(s step) {
	address := *s.to
	address.Fragment, address.RawFragment = "", ""
	if address.Path == "" {
		address.Path = "/"
	}
	address.RawQuery = address.Query().Encode() // one order for one query
	key := address.String()
	if address.Scheme != c.origin.Scheme || address.Host != c.origin.Host || c.seen[key] || signsOut(address.Path) {
		return
	}
	c.seen[key] = true
	if c.hasRoom(&address) {
		c.queue = append(c.queue, step{&address, s.from, Page{URL: &address}.shape(false)})
	}
}

// next takes the step out of the queue whose shape was asked for least, the
// first of them where there are several.
func (c *crawl) next() step {
	best := 0
	for i, s := range c.queue {
		if c.visited[s.shape] < c.visited[c.queue[best].shape] {
			best = i
		}
	}
	s := c.queue[best]
	c.queue = slices.Delete(c.queue, best, best+1)
	c.visited[s.shape]++
	return s
}

// hasRoom tells whether an address is among the first of its like, and counts it.
func (c *crawl) hasRoom(address *url.URL) bool {
	like, most := path.Dir(address.Path)+"/", maxSiblings
	if address.RawQuery != "" {
		like, most = address.Path+"?"+strings.Join(sortedKeys(address.Query()), "&"), maxQueries
	}
	c.alike[like]++
	return c.alike[like] <= most
}

// arrive keeps a page and queues what it links to. A page that was reached
// before, by another way round, is not kept twice.
func (c *crawl) arrive(p Page) {
	final := *p.URL
	final.Fragment = ""
	if slices.ContainsFunc(c.pages, func(q Page) bool { return q.URL.String() == final.String() }) {
		return
	}
	p.URL = &final
	c.seen[final.String()] = true
	c.pages = append(c.pages, p)
	if !p.IsHTML() {
		return
	}
	for _, link := range links(p) {
		c.add(step{to: link, from: p.Name()})
	}
}

// signsOut tells whether a path would end the session by its name.
func signsOut(address string) bool {
	address = strings.ToLower(address)
	for _, word := range []string{"sign-out", "signout", "log-out", "logout"} {
		if strings.Contains(address, word) {
			return true
		}
	}
	return false
}

func get(client *http.Client, s step) (Page, error) {
	answer, err := client.Get(s.to.String())
	if err != nil {
		return Page{}, err
	}
	defer answer.Body.Close()
	body, err := io.ReadAll(io.LimitReader(answer.Body, maxBody))
	if err != nil {
		return Page{}, err
	}
	return Page{
		URL:    answer.Request.URL,
		From:   s.from,
		Status: answer.StatusCode,
		Type:   mediaType(answer.Header.Get("Content-Type")),
		Body:   body,
	}, nil
}

// links gives the addresses of a and link elements, absolute, in the order of
// the page.
func links(p Page) []*url.URL {
	tree, err := html.Parse(bytes.NewReader(p.Body))
	if err != nil {
		return nil // cannot be: the parser takes anything, and reads from memory
	}
	var found []*url.URL
	for n := range tree.Descendants() {
		if n.Type != html.ElementNode || n.Data != "a" && n.Data != "link" {
			continue
		}
		for _, a := range n.Attr {
			if a.Key != "href" {
				continue
			}
			if to, err := p.URL.Parse(strings.TrimSpace(a.Val)); err == nil {
				found = append(found, to)
			}
		}
	}
	return found
}

func newClient(tb TB) *http.Client {
	tb.Helper()
	jar, err := cookiejar.New(nil)
	if err != nil {
		tb.Fatalf("%v", err)
	}
	return &http.Client{Jar: jar, Timeout: patience, CheckRedirect: stayHere}
}

// stayHere follows redirects within one origin only.
func stayHere(next *http.Request, before []*http.Request) error {
	if next.URL.Host != before[0].URL.Host {
		return http.ErrUseLastResponse
	}
	if len(before) >= 10 {
		return fmt.Errorf("%d redirects", len(before))
	}
	return nil
}

// Client gives an HTTP client that carries the tab's cookies as they are now,
// so that what is signed in there is signed in here.
func (t *Tab) Client() *http.Client {
	t.tb.Helper()
	client := newClient(t.tb)
	got, err := chromedp.Call(t.ctx, network.GetCookies, network.GetCookiesParams{})
	if err != nil {
		t.tb.Fatalf("read the cookies: %v", err)
	}
	var cookies []*http.Cookie
	for _, c := range got.Cookies {
		cookies = append(cookies, &http.Cookie{Name: c.Name, Value: c.Value, Path: c.Path, Secure: c.Secure})
	}
	client.Jar.SetCookies(t.Address(), cookies)
	return client
}

func sortedKeys[V any](m map[string]V) []string {
	return slices.Sorted(maps.Keys(m))
}
