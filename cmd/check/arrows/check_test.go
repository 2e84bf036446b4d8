package arrows_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/cmd/check/arrows"
)

func TestCheck(t *testing.T) {
	tests := []struct {
		name     string
		from, to string
		test     bool   // the import stands in a test
		want     string // in the one problem; "" for none
	}{
		// The kitchen's floors.
		{"up one floor is fine", "m/kitchen/food", "m/kitchen/measure", false, ""},
		{"up several floors is fine", "m/kitchen/release", "m/kitchen/fault", false, ""},
		{"down a floor", "m/kitchen/measure", "m/kitchen/food", false, "kitchen/measure imports kitchen/food, which is on a higher floor"},
		{"down from the ground", "m/kitchen/fault", "m/kitchen/measure", false, "higher floor"},
		{"side by side", "m/kitchen/shop", "m/kitchen/script", false, "side by side"},
		{"down a floor in a test", "m/kitchen/measure", "m/kitchen/recipe", true, "a test of kitchen/measure imports kitchen/recipe"},
		{"the rooms above and the episode's nouns", "m/kitchen/script", "m/kitchen/episode", false, ""},
		{"the episode and a room above", "m/kitchen/episode", "m/kitchen/safety", false, "higher floor"},
		{"two parts of one room", "m/kitchen/recipe/page", "m/kitchen/recipe/method", false, ""},
		{"a part of the room itself", "m/kitchen/recipe", "m/kitchen/recipe/reading", false, ""},
		{"a part of a room of a higher floor", "m/kitchen/food", "m/kitchen/recipe/reading", false, "higher floor"},
		{"the package under test", "m/kitchen/food", "m/kitchen/food", true, ""},

		// The kitchen and what is outside it.
		{"the kitchen and the store", "m/kitchen/shop", "m/store", false, "arrows run cmd"},
		{"the kitchen and the web", "m/kitchen/shop", "m/web", false, "arrows run cmd"},
		{"the kitchen and the seed", "m/kitchen/shop", "m/seed", false, "arrows run cmd"},
		{"a test of the kitchen and the seed", "m/kitchen/shop", "m/seed", true, ""},
		{"the kitchen and SQL", "m/kitchen/shop", "database/sql", false, "must not know"},
		{"the kitchen and SQL's drivers", "m/kitchen/shop", "database/sql/driver", false, "must not know"},
		{"the kitchen and HTTP", "m/kitchen/release", "net/http", false, "must not know"},
		{"the kitchen's tests and HTTP", "m/kitchen/release", "net/http/httptest", true, "must not know"},
		{"the kitchen and addresses", "m/kitchen/release", "net/url", false, ""},
		{"the kitchen and SQLite", "m/kitchen/food", "modernc.org/sqlite", false, "must not know"},
		{"the kitchen and templates", "m/kitchen/release", "github.com/a-h/templ", false, "must not know"},
		{"the kitchen and a general library", "m/kitchen/release", "github.com/yuin/goldmark", false, ""},

		// The rooms above.
		{"web and store", "m/web", "m/store", false, ""},
		{"web and its parts", "m/web", "m/web/form", false, ""},
		{"web and SQL", "m/web", "database/sql", false, "must not know"},
		{"web and cmd", "m/web", "m/cmd/benchproof", false, "arrows run cmd"},
		{"web's tests and the browser", "m/web", "m/cmd/check/browser", true, ""},
		{"views and store", "m/views", "m/store", false, "views imports store"},
		{"views and requests", "m/views", "net/http", false, "must not know"},
		{"views' tests and a server", "m/views", "net/http/httptest", true, ""},
		{"views' tests and SQL", "m/views", "database/sql", true, "must not know"},
		{"views and templates", "m/views", "github.com/a-h/templ", false, ""},
		{"store and views", "m/store", "m/views", false, "store imports views"},
		{"store and web", "m/store", "m/web", false, "store imports web"},
		{"store and HTTP", "m/store", "net/http", false, "must not know"},
		{"store's tests and sessions", "m/store", "github.com/alexedwards/scs/v2", true, ""},
		{"store and migrations", "m/store", "m/migrations", false, ""},
		{"store and SQL", "m/store", "database/sql", false, ""},
		{"seed and the kitchen", "m/seed", "m/kitchen/recipe", false, ""},
		{"seed and the store", "m/seed", "m/store", false, "seed imports store"},
		{"static and anything", "m/static", "m/kitchen/fault", false, "static imports kitchen/fault"},
		{"cmd and everything", "m/cmd/benchproof", "m/store", false, ""},
		{"cmd and HTTP", "m/cmd/benchproof", "net/http", false, ""},

		// Names that only look alike.
		{"another module of a like name", "m/kitchen/food", "mm/store", false, ""},
		{"a package that begins like a banned one", "m/kitchen/food", "net/httpish", false, ""},
		{"a package outside the module", "other/kitchen/fault", "m/store", false, ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			p := arrows.Package{Path: tt.from, Imports: []string{"fmt", tt.to}}
			if tt.test {
				p = arrows.Package{Path: tt.from, TestImports: []string{"testing", tt.to}}
			}
			got := arrows.Check("m", []arrows.Package{p})
			switch {
			case tt.want == "" && len(got) > 0:
				t.Errorf("Check(%s → %s) = %q, want nothing", tt.from, tt.to, got)
			case tt.want != "" && (len(got) != 1 || !strings.Contains(got[0], tt.want)):
				t.Errorf("Check(%s → %s) = %q, want one problem with %q", tt.from, tt.to, got, tt.want)
			}
		})
	}
}

func TestCheckRoomsWithoutAPlace(t *testing.T) {
	got := arrows.Check("m", []arrows.Package{
		{Path: "m/kitchen/cellar"},
		{Path: "m/util"},
		{Path: "m/kitchen/food"},
		{Path: "m"},
	})
	for i, got := range got {
		got, _, _ = strings.Cut(got, ":")
		if want := []string{"kitchen/cellar", "util", "."}[i]; got != want {
			t.Errorf("problem %d is about %s, want %s", i, got, want)
		}
	}
	if len(got) != 3 {
		t.Errorf("Check() = %q, want three rooms without a place", got)
	}
}

// TestCheckGraph runs a whole invented house with two faults in it.
func TestCheckGraph(t *testing.T) {
	got := arrows.Check("m", []arrows.Package{
		{Path: "m/cmd/m", Imports: []string{"m/web", "m/store", "m/seed"}},
		{Path: "m/kitchen/fault"},
		{Path: "m/kitchen/measure", Imports: []string{"math/big", "m/kitchen/fault"}, TestImports: []string{"m/kitchen/measure"}},
		{Path: "m/store", Imports: []string{"m/kitchen/measure", "m/web"}},
		{Path: "m/views", Imports: []string{"m/kitchen/measure", "m/static"}},
		{Path: "m/web", Imports: []string{"m/views", "m/store", "net/http"}, TestImports: []string{"database/sql"}},
		{Path: "m/static", Imports: []string{"embed"}},
	})
	want := []string{
		"store imports web: arrows run cmd → web → {views, store} → kitchen",
		"a test of web imports database/sql, which web must not know",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("Check() (-want +got):\n%s", diff)
	}
}
