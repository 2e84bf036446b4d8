package views_test

import (
	"bytes"
	"context"
	"strings"
	"testing"

	"github.com/a-h/templ"
	"golang.org/x/net/html"
)

// parse draws a component and reads it as a browser would.
func parse(t *testing.T, c templ.Component) *html.Node {
	t.Helper()
	var b bytes.Buffer
	if err := c.Render(context.Background(), &b); err != nil {
		t.Fatal(err)
	}
	doc, err := html.Parse(&b)
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

func attr(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

func has(n *html.Node, key string) bool {
	for _, a := range n.Attr {
		if a.Key == key {
			return true
		}
	}
	return false
}

func byID(doc *html.Node, id string) *html.Node {
	for n := range doc.Descendants() {
		if attr(n, "id") == id {
			return n
		}
	}
	return nil
}

// byClass are the elements of a class, in order.
func byClass(doc *html.Node, class string) []*html.Node {
	var all []*html.Node
	for n := range doc.Descendants() {
		if strings.Contains(" "+attr(n, "class")+" ", " "+class+" ") {
			all = append(all, n)
		}
	}
	return all
}

// words is an element's text with its spaces tidied.
func words(n *html.Node) string {
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == html.TextNode {
			b.WriteString(d.Data)
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

// count is how many elements of a name there are.
func count(doc *html.Node, name string) int {
	n := 0
	for d := range doc.Descendants() {
		if d.Type == html.ElementNode && d.Data == name {
			n++
		}
	}
	return n
}

// spaced is an element's text with a space between its pieces.
func spaced(n *html.Node) string {
	var all []string
	for d := range n.Descendants() {
		if d.Type == html.TextNode {
			all = append(all, strings.Fields(d.Data)...)
		}
	}
	return strings.Join(all, " ")
}
