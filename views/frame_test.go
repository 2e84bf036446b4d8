package views_test

import (
	"testing"

	"github.com/a-h/templ"
	"github.com/google/go-cmp/cmp"

	"benchproof/views"
)

func TestSheetName(t *testing.T) {
	tests := map[views.Sheet]string{
		views.SheetBrief: "Brief", views.SheetShootDay: "Shoot day", views.SheetRelease: "Release", "": "",
	}
	for sheet, want := range tests {
		if got := sheet.Name(); got != want {
			t.Errorf("Sheet(%q).Name() = %q, want %q", sheet, got, want)
		}
	}
}

// TestSheetLinks: every sheet in the order of the week, the current one said,
// counts only where there is something to look at.
func TestSheetLinks(t *testing.T) {
	doc := parse(t, views.Script(views.ScriptSheet{EpisodeFrame: views.EpisodeFrame{
		Path: "/episodes/31", Sheet: views.SheetScript, Marks: map[views.Sheet]int{views.SheetShots: 2, views.SheetCut: 0},
	}}))
	type link struct{ Text, Path, Current string }
	var got []link
	for n := range byClass(doc, "sheets")[0].Descendants() {
		if n.Data == "a" {
			got = append(got, link{words(n), attr(n, "href"), attr(n, "aria-current")})
		}
	}
	want := []link{
		{"Brief", "/episodes/31/brief", ""}, {"Recipe", "/episodes/31/recipe", ""}, {"Trials", "/episodes/31/trials", ""},
		{"Shop", "/episodes/31/shop", ""}, {"Shoot day", "/episodes/31/shoot-day", ""}, {"Script", "/episodes/31/script", "page"},
		{"Shots 2 to look at", "/episodes/31/shots", ""}, {"Cut", "/episodes/31/cut", ""}, {"Release", "/episodes/31/release", ""},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("sheet links (-want +got):\n%s", diff)
	}
}

func TestStillOpen(t *testing.T) {
	one := views.OpenLink{Text: "try it once", Path: "/t"}
	bad := views.OpenLink{Text: "settle the pair", Path: "/p", Wrong: true}
	tests := []struct {
		name string
		open []views.OpenLink
		want string
	}{
		{"nothing", nil, "nothing open Nothing stands between this episode and its release."},
		{"one", []views.OpenLink{one}, "1 still open Before release: try it once."},
		{"several", []views.OpenLink{one, bad, one}, "3 still open Before release: try it once, settle the pair, try it once."},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			doc := parse(t, views.Cut(views.CutSheet{EpisodeFrame: views.EpisodeFrame{Open: tt.open}}))
			still := byClass(doc, "still")
			if len(still) != 1 {
				t.Fatalf("%d feet", len(still))
			}
			if got := words(still[0]); got != tt.want {
				t.Errorf("the foot reads %q, want %q", got, tt.want)
			}
		})
	}
}

func TestSeasonRowSaysHowManyMore(t *testing.T) {
	one := views.OpenLink{Text: "try it", Path: "/t"}
	tests := []struct {
		name string
		row  views.EpisodeRow
		want string
	}{
		{"one", views.EpisodeRow{Open: []views.OpenLink{one}}, "Still open: try it."},
		{"two", views.EpisodeRow{Open: []views.OpenLink{one, one}}, "Still open: try it, try it."},
		{"more", views.EpisodeRow{Open: []views.OpenLink{one, one}, More: 3}, "Still open: try it, try it and 3 more."},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			p := views.SeasonPage{Groups: []views.SeasonGroup{{Title: "Coming", Episodes: []views.EpisodeRow{tt.row}}}}
			if got := words(byClass(parse(t, views.Season(p)), "open")[0]); got != tt.want {
				t.Errorf("reads %q, want %q", got, tt.want)
			}
		})
	}
}

func TestWindowTitle(t *testing.T) {
	tests := []struct {
		name string
		page views.Page
		want string
	}{
		{"of a show", views.Page{Title: "Season", Show: "Ferry Stop Kitchen"}, "Season · Ferry Stop Kitchen"},
		{"before it is set up", views.Page{Title: "Set up"}, "Set up · Benchproof"},
		{"without a title", views.Page{Show: "Ferry Stop Kitchen"}, "Ferry Stop Kitchen"},
		{"without anything", views.Page{}, "Benchproof"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			for n := range parse(t, views.Show(views.ShowPage{Page: tt.page})).Descendants() {
				if n.Data == "title" {
					if got := words(n); got != tt.want {
						t.Errorf("the title is %q, want %q", got, tt.want)
					}
				}
			}
		})
	}
}

// TestHeadFollowsThePerson: nobody signed in sees no link into the house.
func TestHeadFollowsThePerson(t *testing.T) {
	out := parse(t, views.SignIn(views.SignInPage{Page: views.Page{Show: "Ferry Stop Kitchen"}}))
	if got := count(out, "nav"); got != 0 {
		t.Errorf("signed out: %d rows of links, want none", got)
	}
	in := parse(t, views.Show(views.ShowPage{Page: views.Page{Person: "Odile", Section: views.SectionShow}}))
	if got := count(in, "nav"); got != 1 {
		t.Errorf("signed in: %d rows of links, want 1", got)
	}
}

func TestFlash(t *testing.T) {
	draw := func(f views.Flash) templ.Component {
		return views.Show(views.ShowPage{Page: views.Page{Flash: f}})
	}
	if got := byClass(parse(t, draw(views.Flash{})), "flash"); len(got) != 0 {
		t.Error("an empty flash is drawn")
	}
	with := byClass(parse(t, draw(views.Flash{Text: "Deleted.", UndoAction: "/deleted/4/restore"})), "flash")
	if len(with) != 1 || spaced(with[0]) != "Deleted. Undo" {
		t.Fatalf("the flash is drawn %d times", len(with))
	}
	if attr(with[0], "role") != "status" {
		t.Error("the flash is not said aloud")
	}
	without := byClass(parse(t, draw(views.Flash{Text: "Saved."})), "flash")
	if words(without[0]) != "Saved." {
		t.Errorf("without an undo it reads %q", words(without[0]))
	}
}
