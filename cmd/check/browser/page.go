package browser

import (
	"mime"
	"net/url"
	"path"
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

// shape is the name with everything that counts or names one of many taken
// out, so that the pages of two episodes have one shape: digits and long random
// tokens become "*", the values of the query go, and where the last part is one
// of many names that becomes "*" too.
func (p Page) shape(ofMany bool) string {
	segments := strings.Split(p.URL.Path, "/")
	for i, s := range segments {
		if numbered.MatchString(s) || token.MatchString(s) || ofMany && i == len(segments)-1 {
			segments[i] = "*"
		}
	}
	shape := strings.Join(segments, "/")
	if keys := sortedKeys(p.URL.Query()); len(keys) > 0 {
		shape += "?" + strings.Join(keys, "&")
	}
	return shape
}

var (
	numbered = regexp.MustCompile(`^[0-9]+$`)
	token    = regexp.MustCompile(`^[0-9A-Za-z_-]{16,}$`)
)

// Sample gives at most each pages of one shape, in the order they came: of the
// pages of many episodes, say, those of the first. Where more than a dozen pages
// lie in one folder they have one shape, whatever their names: the foods of a
// larder.
func Sample(pages []Page, each int) []Page {
	const dozen = 12
	inFolder := map[string]map[string]bool{}
	for _, p := range pages {
		folder := path.Dir(p.URL.Path)
		if inFolder[folder] == nil {
			inFolder[folder] = map[string]bool{}
		}
		inFolder[folder][p.URL.Path] = true
	}
	seen := map[string]int{}
	var some []Page
	for _, p := range pages {
		folder := path.Dir(p.URL.Path)
		shape := p.shape(folder != "/" && len(inFolder[folder]) > dozen)
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
