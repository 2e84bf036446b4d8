package specimen_test

import (
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"

	"benchproof/views/specimen"
)

// everyPage runs a check on each page's parsed document.
func everyPage(t *testing.T, check func(t *testing.T, doc *html.Node)) {
	t.Helper()
	for _, s := range specimen.Pages() {
		t.Run(s.Name, func(t *testing.T) {
			doc, err := html.Parse(strings.NewReader(render(t, s)))
			if err != nil {
				t.Fatal(err)
			}
			check(t, doc)
		})
	}
}

// TestNothingInline holds the pages to the Content-Security-Policy: no inline
// script, no inline style, no handler in an attribute.
func TestNothingInline(t *testing.T) {
	everyPage(t, func(t *testing.T, doc *html.Node) {
		for n := range elements(doc) {
			switch {
			case n.Data == "style":
				t.Error("has a style element")
			case n.Data == "script" && attr(n, "src") == "" && attr(n, "type") != "application/ld+json":
				t.Error("has an inline script")
			}
			for _, a := range n.Attr {
				if a.Key == "style" || strings.HasPrefix(a.Key, "on") {
					t.Errorf("%s has the attribute %s", n.Data, a.Key)
				}
				if strings.HasPrefix(strings.ToLower(strings.TrimSpace(a.Val)), "javascript:") {
					t.Errorf("%s %s is a script", n.Data, a.Key)
				}
			}
		}
	})
}

// TestFieldsAreLabelled: each field that is drawn has a label with words, or
// is named otherwise. WCAG 2.2, 1.3.1 and 4.1.2.
func TestFieldsAreLabelled(t *testing.T) {
	everyPage(t, func(t *testing.T, doc *html.Node) {
		labels := map[string]string{}
		for n := range elements(doc) {
			if n.Data == "label" && attr(n, "for") != "" {
				labels[attr(n, "for")] = words(n)
			}
		}
		for n := range elements(doc) {
			if !isField(n) {
				continue
			}
			name := labels[attr(n, "id")]
			if name == "" {
				name = words(ancestor(n, "label"))
			}
			if name == "" && attr(n, "aria-label") == "" {
				t.Errorf("the field %q has no label", attr(n, "name"))
			}
		}
	})
}

// TestReferencesLead: every id is there once, and whatever names an id finds it.
func TestReferencesLead(t *testing.T) {
	everyPage(t, func(t *testing.T, doc *html.Node) {
		ids := map[string]int{}
		for n := range elements(doc) {
			if id := attr(n, "id"); id != "" {
				ids[id]++
			}
		}
		for id, count := range ids {
			if count > 1 {
				t.Errorf("the id %s stands %d times", id, count)
			}
		}
		for n := range elements(doc) {
			for _, key := range []string{"for", "aria-describedby", "aria-labelledby", "data-copy", "data-count"} {
				for _, id := range strings.Fields(attr(n, key)) {
					if ids[id] == 0 {
						t.Errorf("%s %s=%q finds nothing", n.Data, key, id)
					}
				}
			}
		}
	})
}

// TestErrorsAreTied: each refused field says so and is described by its error,
// and the form begins with a list that leads to it. WCAG 2.2, 3.3.1.
func TestErrorsAreTied(t *testing.T) {
	refused := 0
	everyPage(t, func(t *testing.T, doc *html.Node) {
		var summaries []string
		for n := range elements(doc) {
			if n.Data == "a" && ancestorClass(n, "refused") {
				summaries = append(summaries, strings.TrimPrefix(attr(n, "href"), "#"))
			}
		}
		for n := range elements(doc) {
			if !isField(n) || attr(n, "aria-invalid") != "true" {
				continue
			}
			refused++
			if !strings.HasSuffix(attr(n, "aria-describedby"), "-error") {
				t.Errorf("the refused field %s is not described by its error", attr(n, "id"))
			}
			if !strings.HasPrefix(attr(n, "id"), "scale-") && !slices.Contains(summaries, attr(n, "id")) {
				t.Errorf("no list at the top leads to the refused field %s", attr(n, "id"))
			}
		}
	})
	if refused < 6 {
		t.Errorf("only %d refused fields in the specimens: the check sees too little", refused)
	}
}

// TestHeadings: one h1, and no level left out. WCAG 2.2, 1.3.1.
func TestHeadings(t *testing.T) {
	everyPage(t, func(t *testing.T, doc *html.Node) {
		before, firsts := 0, 0
		for n := range elements(doc) {
			if len(n.Data) != 2 || n.Data[0] != 'h' || n.Data[1] < '1' || n.Data[1] > '6' {
				continue
			}
			level := int(n.Data[1] - '0')
			if level == 1 {
				firsts++
			}
			if level > before+1 {
				t.Errorf("the heading %q is an h%d after an h%d", words(n), level, before)
			}
			before = level
		}
		if firsts != 1 {
			t.Errorf("%d h1", firsts)
		}
	})
}

// TestEveryControlHasAName: links and buttons have words, and no two buttons
// of a page that post to different places have the same ones.
func TestEveryControlHasAName(t *testing.T) {
	everyPage(t, func(t *testing.T, doc *html.Node) {
		goes := map[string]string{}
		for n := range elements(doc) {
			if n.Data != "a" && n.Data != "button" {
				continue
			}
			name := words(n)
			if name == "" {
				t.Errorf("a %s without words: href %q", n.Data, attr(n, "href"))
			}
			if n.Data == "a" {
				if attr(n, "href") == "" {
					t.Errorf("the link %q leads nowhere", name)
				}
				continue
			}
			form := ancestor(n, "form")
			to := attr(n, "formaction")
			if to == "" && form != nil {
				to = attr(form, "action")
			}
			if form == nil || strings.Contains(to, "correction") || ancestorClass(n, "shopping") {
				continue // each correction stands with its own line
			}
			if other, ok := goes[name]; ok && other != to {
				t.Errorf("two buttons named %q post to %s and %s", name, other, to)
			}
			goes[name] = to
		}
	})
}

// TestPageFrame: language, title, a way past the head, one main.
func TestPageFrame(t *testing.T) {
	titles := map[string]string{}
	everyPage(t, func(t *testing.T, doc *html.Node) {
		mains := 0
		for n := range elements(doc) {
			switch n.Data {
			case "html":
				if attr(n, "lang") != "en" {
					t.Error("no language")
				}
			case "title":
				if words(n) == "" {
					t.Error("no title")
				}
				titles[words(n)] = t.Name()
			case "main":
				mains++
			}
		}
		if mains != 1 {
			t.Errorf("%d main elements", mains)
		}
	})
	if len(titles) < 25 {
		t.Errorf("only %d different titles: pages share theirs", len(titles))
	}
}
