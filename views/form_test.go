package views_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"golang.org/x/net/html"

	"benchproof/views"
)

func TestFormRefused(t *testing.T) {
	tests := []struct {
		name string
		form views.Form
		want bool
	}{
		{"nothing wrong", views.Form{Fields: []views.Field{{Name: "a"}}}, false},
		{"the whole", views.Form{Problem: "No."}, true},
		{"one field", views.Form{Fields: []views.Field{{Name: "a"}, {Name: "b", Error: "No."}}}, true},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if got := tt.form.Refused(); got != tt.want {
				t.Errorf("Refused() = %v, want %v", got, tt.want)
			}
		})
	}
}

// TestFormSendsWhatItWasGiven reads a drawn form as a browser would before it
// is sent: nothing typed may change on the way.
func TestFormSendsWhatItWasGiven(t *testing.T) {
	odd := "\n  first line empty\n\n½ < ⅓ & \"quoted\" </textarea><b>\n"
	f := views.Form{
		ID: "x", Action: "/x", Revision: 7, Submit: "Save",
		Fields: []views.Field{
			{Name: "text", Label: "Text", Value: `a "b" & <c>`},
			{Name: "area", Label: "Area", Kind: views.FieldArea, Value: odd},
			{Name: "plain", Label: "Plain", Kind: views.FieldPlain, Value: "\n\ntwo empty lines"},
			{Name: "select", Label: "Select", Kind: views.FieldSelect, Value: "2", Options: []views.Option{{Value: "1", Label: "one"}, {Value: "2", Label: "two"}}},
			{Name: "on", Label: "On", Kind: views.FieldCheck, Value: "yes"},
			{Name: "off", Label: "Off", Kind: views.FieldCheck},
			{Name: "secret", Label: "Secret", Kind: views.FieldPassword, Value: "never drawn back"},
			{Name: "date", Label: "Date", Kind: views.FieldDate, Value: "2027-03-14"},
			{Name: "kept", Kind: views.FieldHidden, Value: "31"},
		},
	}
	want := map[string]string{
		"revision": "7", "text": `a "b" & <c>`, "area": odd, "plain": "\n\ntwo empty lines", "select": "2", "on": "yes",
		"secret": "", "date": "2027-03-14", "kept": "31",
	}
	if diff := cmp.Diff(want, sent(parse(t, views.DrawForm(f)))); diff != "" {
		t.Errorf("what the form sends (-want +got):\n%s", diff)
	}
}

func TestFormOfANewThingSendsNoRevision(t *testing.T) {
	got := sent(parse(t, views.DrawForm(views.Form{Action: "/x", Submit: "Add", Fields: []views.Field{{Name: "a", Label: "A"}}})))
	if diff := cmp.Diff(map[string]string{"a": ""}, got); diff != "" {
		t.Errorf("what the form sends (-want +got):\n%s", diff)
	}
}

func TestFormAttributes(t *testing.T) {
	f := views.Form{
		ID: "pitch", Action: "/pitches", Submit: "Add", Guard: true,
		Buttons: []views.Button{{Text: "Elsewhere", Action: "/else"}, {Text: "Then", Name: "then", Value: "more"}},
		Fields: []views.Field{
			{Name: "plain", Label: "Plain"},
			{Name: "hinted", Label: "Hinted", Hint: "How."},
			{Name: "wrong", Label: "Wrong", Error: "Not so."},
			{Name: "both", Label: "Both", Hint: "How.", Error: "Not so.", Kind: views.FieldArea, Rows: 9},
			{Name: "count", Label: "Count", Kind: views.FieldWhole, Required: true},
			{Name: "much", Label: "Much", Kind: views.FieldDecimal},
		},
	}
	doc := parse(t, views.DrawForm(f))
	tests := []struct{ name, id, key, want string }{
		{"no hint, no error", "pitch-plain", "aria-describedby", ""},
		{"not refused", "pitch-plain", "aria-invalid", ""},
		{"a hint", "pitch-hinted", "aria-describedby", "pitch-hinted-hint"},
		{"an error", "pitch-wrong", "aria-describedby", "pitch-wrong-error"},
		{"an error is said", "pitch-wrong", "aria-invalid", "true"},
		{"hint, then error", "pitch-both", "aria-describedby", "pitch-both-hint pitch-both-error"},
		{"rows", "pitch-both", "rows", "9"},
		{"whole numbers", "pitch-count", "inputmode", "numeric"},
		{"needed", "pitch-count", "aria-required", "true"},
		{"fractions can be typed", "pitch-much", "type", "text"},
		{"a number pad", "pitch-much", "inputmode", "decimal"},
		{"the form has its id", "pitch", "action", "/pitches"},
		{"no browser's own bubbles", "pitch", "method", "post"},
		{"the list of what to change", "pitch-refused", "role", "alert"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			n := byID(doc, tt.id)
			if n == nil {
				t.Fatalf("nothing has the id %s", tt.id)
			}
			if got := attr(n, tt.key); got != tt.want {
				t.Errorf("%s of #%s = %q, want %q", tt.key, tt.id, got, tt.want)
			}
		})
	}
}

// TestFormSummary lists each refused field in order with its sentence.
func TestFormSummary(t *testing.T) {
	f := views.Form{ID: "x", Problem: "Two things.", Fields: []views.Field{
		{Name: "a", Label: "First", Error: "Write a."}, {Name: "b", Label: "Second"}, {Name: "c", Label: "Third", Error: "Write c."},
	}}
	n := byID(parse(t, views.DrawForm(f)), "x-refused")
	if n == nil {
		t.Fatal("no list of what to change")
	}
	if got, want := spaced(n), "not saved Two things. First : Write a. Third : Write c."; got != want {
		t.Errorf("the list reads %q, want %q", got, want)
	}
}

// TestCharacterCount counts characters, not bytes.
func TestCharacterCount(t *testing.T) {
	doc := parse(t, views.DrawForm(views.Form{Fields: []views.Field{{Name: "title", Label: "Title", Value: "½ crêpe", Limit: 100}}}))
	for n := range doc.Descendants() {
		if attr(n, "data-limit") == "100" {
			if got, want := words(n), "7 of 100 characters"; got != want {
				t.Errorf("the count reads %q, want %q", got, want)
			}
			return
		}
	}
	t.Error("no count")
}

// sent is what a browser sends of the drawn fields: name to value.
func sent(doc *html.Node) map[string]string {
	all := map[string]string{}
	for n := range doc.Descendants() {
		name := attr(n, "name")
		switch n.Data {
		case "textarea":
			all[name] = raw(n)
		case "select":
			for o := range n.Descendants() {
				if has(o, "selected") {
					all[name] = attr(o, "value")
				}
			}
		case "input":
			if attr(n, "type") != "checkbox" || has(n, "checked") {
				all[name] = attr(n, "value")
			}
		}
	}
	return all
}

// raw is an element's text untouched.
func raw(n *html.Node) string {
	var b strings.Builder
	for d := range n.Descendants() {
		if d.Type == html.TextNode {
			b.WriteString(d.Data)
		}
	}
	return b.String()
}
