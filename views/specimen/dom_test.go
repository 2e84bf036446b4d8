package specimen_test

import (
	"iter"
	"slices"
	"strings"

	"golang.org/x/net/html"
)

// elements are all elements of a document, in order.
func elements(doc *html.Node) iter.Seq[*html.Node] {
	return func(yield func(*html.Node) bool) {
		for n := range doc.Descendants() {
			if n.Type == html.ElementNode && !yield(n) {
				return
			}
		}
	}
}

// attr is an attribute's value, "" if it is not there.
func attr(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

// words are what is read aloud of an element; "" for none.
func words(n *html.Node) string {
	if n == nil {
		return ""
	}
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == html.TextNode && !hiddenAloud(d, n) {
			b.WriteString(d.Data)
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

func hiddenAloud(n, within *html.Node) bool {
	for p := n.Parent; p != nil && p != within; p = p.Parent {
		if attr(p, "aria-hidden") == "true" {
			return true
		}
	}
	return false
}

// ancestor is the nearest element of that name around n, nil if none.
func ancestor(n *html.Node, name string) *html.Node {
	for p := n.Parent; p != nil; p = p.Parent {
		if p.Data == name {
			return p
		}
	}
	return nil
}

// ancestorClass tells whether something of that class is around n.
func ancestorClass(n *html.Node, class string) bool {
	for p := n.Parent; p != nil; p = p.Parent {
		if slices.Contains(strings.Fields(attr(p, "class")), class) {
			return true
		}
	}
	return false
}

// isField tells whether a person fills the element in.
func isField(n *html.Node) bool {
	switch n.Data {
	case "textarea", "select":
		return true
	case "input":
		return attr(n, "type") != "hidden"
	}
	return false
}
