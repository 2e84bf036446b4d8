package browser

import (
	"mime"
	"net/url"
	"regexp"
	"strings"
)

// Page is one answer to a GET, found by following links.
type Page struct {
	URL    *url.URL // absolute, after redirects
	From   string   // the path that links to it; "" for the start
	Status int
	Type   string // the media type without parameters: "text/html"
	Body   []byte // as served
}

// Name tells the page by its path and query: "/episodes/3/shop?print=a5".
func (p Page) Name() string { return p.URL.RequestURI() }

// IsHTML tells whether the page is one that people read in a browser.
func (p Page) IsHTML() bool { return p.Type == "text/html" }

// Shape is the name with everything that counts or names one of many taken
// out, so that the pages of two episodes have one shape: digits and long
// random tokens become "*", and the values of the query go.
func (p Page) Shape() string {
	segments := strings.Split(p.URL.Path, "/")
	for i, s := range segments {
		if numbered.MatchString(s) || token.MatchString(s) {
			segments[i] = "*"
		}
	}
	shape := strings.Join(segments, "/")
	for i, key := range sortedKeys(p.URL.Query()) {
		shape += map[bool]string{true: "?", false: "&"}[i == 0] + key
	}
	return shape
}

var (
	numbered = regexp.MustCompile(`^[0-9]+$`)
	token    = regexp.MustCompile(`^[0-9A-Za-z_-]{16,}$`)
)

// Sample gives at most each pages of one shape, in the order they came.
func Sample(pages []Page, each int) []Page {
	seen := map[string]int{}
	var some []Page
	for _, p := range pages {
		shape := p.Shape()
		if seen[shape] < each {
			some = append(some, p)
		}
		seen[shape]++
	}
	return some
}

// HTML gives the pages that are HTML and were answered with 200.
func HTML(pages []Page) []Page {
	var some []Page
	for _, p := range pages {
		if p.IsHTML() && p.Status == 200 {
			some = append(some, p)
		}
	}
	return some
}

// mediaType drops the parameters of a Content-Type.
func mediaType(header string) string {
	t, _, err := mime.ParseMediaType(header)
	if err != nil {
		return header
	}
	return t
}
