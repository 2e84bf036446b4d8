package web_test

import (
	"net/http"
	"slices"
	"strings"
	"testing"
)

// partCase is one kind of part: a good form, and one with a mistake.
type partCase struct {
	name, many, sheet string
	good              []string
	shows             string
	wrongField, wrong string
	says              string
}

var partCases = []partCase{
	{"segment", "segments", "script", []string{"title", "The pastry", "narration", "Cold butter, warm hands.", "planned", "1:30"}, "The pastry", "title", "", "Give the segment a title"},
	{"shot", "shots", "shots", []string{"title", "Butter cubes fall", "kind", "overhead", "setup", "bench, lamp", "status", "missing"}, "Butter cubes fall", "kind", "drone", "Choose one of"},
	{"batch", "batches", "shop", []string{"kind", "swap-out", "makes", "1½", "note", "for the cut"}, "1½ ×", "makes", "many", "not a number"},
	{"trial", "trials", "trials", []string{"made", "2027-02-20", "scale", "1", "dough", "909", "baked", "800", "verdict", "nearly", "version", "1"}, "12.0 %", "made", "yesterday", "not a date"},
	{"correction", "corrections", "release", []string{"at", "4:12", "said", "160 degrees fan", "right", "170 degrees fan"}, "160 degrees fan", "right", "", "Write what is right"},
}

func TestPartsAreAddedChangedDeletedAndHadBack(t *testing.T) {
	for _, c := range partCases {
		t.Run(c.name, func(t *testing.T) {
			s := newSite(t)
			episode := s.start("Plum tart", typedRecipe(t, "plum-tart"))
			sheet := episode + "/" + c.sheet
			if got := s.post(episode+"/"+c.many, c.good...); got.status != http.StatusSeeOther {
				t.Fatalf("add = %d\n%s", got.status, words(got.body))
			}
			s.shows(sheet, c.shows)
			form := s.shows(sheet+"?change="+c.name+"-"+c.id(), "Change this "+c.name)
			saved := append([]string{"revision", value(t, form, "revision")}, c.good...)
			one := episode + "/" + c.many + "/" + c.id()
			if got := s.post(one, saved...); got.status != http.StatusSeeOther {
				t.Fatalf("save = %d\n%s", got.status, words(got.body))
			}
			if got := s.post(one + "/delete"); got.status != http.StatusSeeOther {
				t.Fatalf("delete = %d", got.status)
			}
			page := s.shows(sheet, "The "+c.name+" is deleted")
			undo := "/deleted/" + c.name + "/" + c.id() + "/restore"
			if !strings.Contains(page, undo) {
				t.Fatalf("no undo at %s", undo)
			}
			s.post(undo)
			s.shows(sheet, c.shows)
		})
	}
}

// id is the part's id in an episode made the short way, which plans one batch.
func (c partCase) id() string {
	if c.name == "batch" {
		return "2"
	}
	return "1"
}

func TestARefusedPartKeepsWhatWasTyped(t *testing.T) {
	for _, c := range partCases {
		t.Run(c.name, func(t *testing.T) {
			s := newSite(t)
			episode := s.start("Plum tart", typedRecipe(t, "plum-tart"))
			got := s.post(episode+"/"+c.many, append(append([]string{}, c.good...), c.wrongField, c.wrong)...)
			if got.status != http.StatusUnprocessableEntity {
				t.Fatalf("status %d, want 422", got.status)
			}
			if !strings.Contains(words(got.body), c.says) {
				t.Errorf("the page does not say %q", c.says)
			}
			for i := 0; i < len(c.good); i += 2 {
				if name, typed := c.good[i], c.good[i+1]; name != c.wrongField && !strings.Contains(got.body, typed) {
					t.Errorf("%s %q is lost", name, typed)
				}
			}
		})
	}
}

func TestTheSecondOfTwoStaleSavesShowsBothTexts(t *testing.T) {
	for _, c := range partCases {
		t.Run(c.name, func(t *testing.T) {
			s := newSite(t)
			episode := s.start("Plum tart", typedRecipe(t, "plum-tart"))
			s.post(episode+"/"+c.many, c.good...)
			revision := value(t, s.get(episode+"/"+c.sheet+"?change="+c.name+"-"+c.id()).body, "revision")
			one := episode + "/" + c.many + "/" + c.id()
			first := append([]string{"revision", revision}, c.good...)
			if got := s.post(one, first...); got.status != http.StatusSeeOther {
				t.Fatalf("first save = %d", got.status)
			}
			second := s.post(one, first...)
			if second.status != http.StatusConflict {
				t.Fatalf("second save = %d, want 409", second.status)
			}
			newer := value(t, second.body, "revision")
			if newer == revision {
				t.Error("the conflict page would save over an old revision again")
			}
			if got := s.post(one, append([]string{"revision", newer}, c.good...)...); got.status != http.StatusSeeOther {
				t.Errorf("saving mine over it = %d, want a redirect", got.status)
			}
		})
	}
}

func TestAPartOfAnotherEpisodeIsNotFound(t *testing.T) {
	s := newSite(t)
	mine := s.start("Plum tart", typedRecipe(t, "plum-tart"))
	other := s.start("Stew", typedRecipe(t, "barley-stew"))
	s.post(mine+"/segments", "title", "Mine")
	if got := s.post(other + "/segments/1/delete"); got.status != http.StatusNotFound {
		t.Errorf("deleting another episode's segment = %d, want 404", got.status)
	}
	for _, path := range []string{"/episodes/0/brief", "/episodes/x/brief", "/episodes/99999999999999999999/brief", "/episodes/77/brief", "/recipes/1/versions/9"} {
		if got := s.get(path); got.status != http.StatusNotFound {
			t.Errorf("GET %s = %d, want 404", path, got.status)
		}
	}
}

func TestSegmentsAndShotsMove(t *testing.T) {
	s := newSite(t)
	episode := s.start("Plum tart", typedRecipe(t, "plum-tart"))
	for _, title := range []string{"First", "Second", "Third"} {
		s.post(episode+"/segments", "title", title, "planned", "10")
	}
	s.post(episode + "/segments/3/move?way=up")
	text := words(s.get(episode + "/script").body)
	if first, third := strings.Index(text, "Second"), strings.Index(text, "Third"); third > first {
		t.Error("the third segment did not move up")
	}
}

// order is the order in which titles stand on a page.
func order(page string, titles ...string) string {
	text, at := words(page), map[string]int{}
	for _, title := range titles {
		at[title] = strings.Index(text, title)
	}
	slices.SortFunc(titles, func(a, b string) int { return at[a] - at[b] })
	return strings.Join(titles, " ")
}

func TestMovingAtTheEndsDoesNoHarm(t *testing.T) {
	for _, c := range []struct{ many, sheet string }{{"segments", "script"}, {"shots", "shots"}} {
		t.Run(c.many, func(t *testing.T) {
			s := newSite(t)
			at := s.start("Scones", scones)
			for _, title := range []string{"Aaa", "Bbb", "Ccc"} {
				s.post(at+"/"+c.many, "title", title, "kind", "hero", "status", "missing", "setup", "one")
			}
			for _, step := range []struct{ move, want string }{
				{"1/move?way=up", "Aaa Bbb Ccc"}, {"3/move?way=down", "Aaa Bbb Ccc"}, {"1/move?way=down", "Bbb Aaa Ccc"},
				{"3/move?way=up", "Bbb Ccc Aaa"}, {"3/move?way=up", "Ccc Bbb Aaa"}, {"3/move?way=up", "Ccc Bbb Aaa"}, {"1/move?way=up", "Ccc Aaa Bbb"},
			} {
				got := s.post(at + "/" + c.many + "/" + step.move)
				if got.status != http.StatusSeeOther {
					t.Fatalf("%s = %d", step.move, got.status)
				}
				if is := order(s.get(at+"/"+c.sheet).body, "Aaa", "Bbb", "Ccc"); is != step.want {
					t.Errorf("after %s they stand %s, want %s", step.move, is, step.want)
				}
			}
			s.post(at + "/" + c.many + "/1/delete")
			s.post(at + "/" + c.many + "/2/move?way=up")
			if is := order(s.get(at+"/"+c.sheet).body, "Bbb", "Ccc"); is != "Bbb Ccc" {
				t.Errorf("over the gap of a deleted one they stand %s", is)
			}
		})
	}
}

func TestStaleSavesShowBothTexts(t *testing.T) {
	for _, c := range []struct{ name, many, sheet, field, mine, theirs string }{
		{"segment", "segments", "script", "narration", "My own words.", "Their own words."},
		{"shot", "shots", "shots", "note", "My own note.", "Their own note."},
		{"batch", "batches", "shop", "note", "My own note.", "Their own note."},
		{"trial", "trials", "trials", "setting", "180 °C mine", "170 °C theirs"},
		{"correction", "corrections", "release", "said", "my 160", "their 150"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := furnished(t)
			var good []string
			id := "1"
			for _, each := range partCases {
				if each.name == c.name {
					good, id = each.good, each.id()
				}
			}
			one := "/episodes/1/" + c.many + "/" + id
			revision := value(t, s.get("/episodes/1/"+c.sheet+"?change="+c.name+"-"+id).body, "revision")
			form := func(text string) []string {
				return append(append([]string{"revision", revision}, good...), c.field, text)
			}
			if got := s.post(one, form(c.theirs)...); got.status != http.StatusSeeOther {
				t.Fatalf("first save = %d", got.status)
			}
			late := s.post(one, form(c.mine)...)
			if late.status != http.StatusConflict || !strings.Contains(late.body, c.mine) || !strings.Contains(late.body, c.theirs) {
				t.Errorf("second save = %d, want 409 with both texts", late.status)
			}
			if kept := s.get("/episodes/1/" + c.sheet).body; strings.Contains(kept, c.mine) {
				t.Error("the late save was taken")
			}
		})
	}
}
