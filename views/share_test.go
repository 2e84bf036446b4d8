package views_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"golang.org/x/net/html"

	"benchproof/views"
)

// TestStructuredDataCannotLeaveItsElement: whatever stands in a recipe, a
// machine reads back the same and a browser sees one block of data. HTML
// Living Standard, "Restrictions for contents of script elements".
func TestStructuredDataCannotLeaveItsElement(t *testing.T) {
	tests := []struct{ name, text string }{
		{"plain", "Rye knots"},
		{"an end tag", "</script><script>alert(1)</script>"},
		{"a comment and a start tag", "<!-- <script> -->"},
		{"ampersands and quotes", `salt & "pepper" 'n' <b>butter</b>`},
		{"line separators", "one\u2028two\u2029three"},
		{"letters", "½ ⅓ ° × – é ō"},
		{"backslashes", `a\b\\c \u003c`},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			want := map[string]string{"name": tt.text}
			data, err := json.Marshal(want)
			if err != nil {
				t.Fatal(err)
			}
			loose := strings.NewReplacer(`\u003c`, "<", `\u003e`, ">", `\u0026`, "&").Replace(string(data))
			if strings.Contains(tt.text, `\u003c`) {
				loose = string(data)
			}
			doc := parse(t, views.Share(views.SharePage{Structured: loose}))
			var scripts []*html.Node
			for n := range doc.Descendants() {
				if n.Data == "script" {
					scripts = append(scripts, n)
				}
			}
			if len(scripts) != 1 || attr(scripts[0], "type") != "application/ld+json" {
				t.Fatalf("%d scripts", len(scripts))
			}
			var got map[string]string
			if err := json.Unmarshal([]byte(raw(scripts[0])), &got); err != nil {
				t.Fatalf("a machine cannot read %q: %v", raw(scripts[0]), err)
			}
			if diff := cmp.Diff(want, got); diff != "" {
				t.Errorf("read back (-want +got):\n%s", diff)
			}
		})
	}
}

// TestViewersSeeNoWorkshop: the shared page leads nowhere into the house.
func TestViewersSeeNoWorkshop(t *testing.T) {
	doc := parse(t, views.Share(views.SharePage{
		Show: "Ferry Stop Kitchen", Recipe: views.RecipeBody{Name: "Rye knots"}, VideoURL: "https://video.example/1",
		Corrections: []views.AirRow{{At: "4:12", Said: "200", Right: "190"}},
	}))
	for n := range doc.Descendants() {
		if n.Data == "form" {
			t.Error("has a form")
		}
		if to := attr(n, "href"); n.Data == "a" && !strings.HasPrefix(to, "#") && to != "https://video.example/1" {
			t.Errorf("leads to %s", to)
		}
		if n.Data == "script" {
			t.Error("has a script")
		}
	}
}

// TestAddressesAreMadeSafe: an address that is a script is not drawn as one.
func TestAddressesAreMadeSafe(t *testing.T) {
	doc := parse(t, views.Share(views.SharePage{VideoURL: "javascript:alert(1)"}))
	for n := range doc.Descendants() {
		if strings.HasPrefix(attr(n, "href"), "javascript:") {
			t.Errorf("a link leads to %s", attr(n, "href"))
		}
	}
}

func TestAllergensUnsure(t *testing.T) {
	tests := []struct {
		name   string
		unsure []string
		want   string
	}{
		{"one", []string{"smoked salt"}, "? check the label of smoked salt"},
		{"two", []string{"a", "b"}, "? check the label of a and b"},
		{"three", []string{"a", "b", "c"}, "? check the label of a, b and c"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			doc := parse(t, views.Share(views.SharePage{Allergens: views.Allergens{Lists: []views.AllergenList{{Law: "EU 14", Names: "milk"}}, Unsure: tt.unsure}}))
			got := words(byClass(byClass(doc, "allergens")[0], "mark")[0])
			if got != tt.want {
				t.Errorf("reads %q, want %q", got, tt.want)
			}
		})
	}
}

// TestPaperDecidesTheStylesheet: each size prints by its own.
func TestPaperDecidesTheStylesheet(t *testing.T) {
	for _, paper := range []string{"a4", "letter", "a5"} {
		found := false
		for n := range parse(t, views.Card(views.CardPage{Paper: paper})).Descendants() {
			if n.Data == "link" && strings.HasSuffix(attr(n, "href"), "/card-"+paper+".css") {
				found = true
			}
		}
		if !found {
			t.Errorf("the card on %s links no stylesheet of its own", paper)
		}
	}
}
