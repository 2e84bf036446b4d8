package web_test

import (
	"net/http"
	"net/url"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"benchproof/kitchen/episode"
)

// fix sends what is fixed about a step of the loaf's only make.
func (s *site) fix(path string, step int, pairs ...string) answer {
	s.t.Helper()
	query := url.Values{"batch": {"shoot"}, "step": {strconv.Itoa(step) + " "}}.Encode()
	return s.post(path+"/shoot-day/steps?"+query, pairs...)
}

// addMoment sends something at a fixed time; pairs are put over an empty one.
func (s *site) addMoment(path string, pairs ...string) answer {
	s.t.Helper()
	return s.post(path+"/moments", append([]string{"name", "Something", "at", "", "until", "", "takes", "", "holds", "", "step", ""}, pairs...)...)
}

// The loaf alone: kneaded at 09:00, proved from 09:10, shaped at 11:10, baked
// from 11:25 to 12:05, sliced until 12:10.
func TestAStepIsFixed(t *testing.T) {
	tests := []struct {
		name  string
		step  int
		pairs []string
		want  []string
	}{
		{"pinned: 12:00 + 15 + 40 + 5", 3, []string{"pin", "12:00"},
			[]string{"13:00 wraps ✓", "12:00 Shape the dough for 15 minutes. ▪ pinned to 12:00", "What changed: 3 steps are at another time", "12:00 Shape the dough for 15 minutes. was 11:10"}},
		{"barred: baked from 12:30", 4, []string{"barred", "11:00–12:00, 12:10-12:30"},
			[]string{"13:15 wraps ✓", "▪ not 11:00–12:00 ▪ not 12:10–12:30", "What changed: 2 steps"}},
		{"barred where it is not", 4, []string{"barred", "09:00 to 10:00"}, []string{"12:10 wraps ✓", "▪ not 09:00–10:00"}},
		{"waits at least half an hour: baked from 11:55", 4, []string{"least", "30"}, []string{"12:40 wraps ✓", "▪ waits at least 30 min"}},
		{"waits at most as long as it does", 4, []string{"most", "10"}, []string{"12:10 wraps ✓", "▪ waits at most 10 min"}},
		{"at once", 4, []string{"most", "0"}, []string{"12:10 wraps ✓", "▪ at once"}},
		{"pinned and barred together", 5, []string{"pin", "14:00", "barred", "12:00–13:00"}, []string{"14:05 wraps ✓", "▪ pinned to 14:00 ▪ not 12:00–13:00"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, path := startLoaf(t, 1)
			if got := s.fix(path, tt.step, tt.pairs...); got.status != http.StatusSeeOther {
				t.Fatalf("fixing = %d\n%s", got.status, words(got.body))
			}
			s.shows(path+"/shoot-day", tt.want...)
			form := s.get(path + "/shoot-day?" + url.Values{"batch": {"shoot"}, "step": {strconv.Itoa(tt.step) + " "}}.Encode()).body
			for i := 0; i < len(tt.pairs); i += 2 {
				if got := value(t, form, tt.pairs[i]); got == "" {
					t.Errorf("the form has lost its %s", tt.pairs[i])
				}
			}
		})
	}
}

// What is fixed can be let go: then the plan is as it was.
func TestAStepIsLetGo(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.fix(path, 3, "pin", "12:00")
	s.fix(path, 3, "pin", "", "barred", "")
	page := words(s.shows(path+"/shoot-day", "12:10 wraps ✓"))
	if strings.Contains(page, "pinned") {
		t.Errorf("the pin is still there:\n%s", page)
	}
}

// A pin that cannot be kept leaves no plan; the step is named and can be put
// right on the spot.
func TestAPinThatCannotBeKept(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.fix(path, 5, "pin", "10:00")
	page := s.shows(path+"/shoot-day", "no plan", "What to change 10:00 Slice the loaf for 5 minutes. ▪ pinned to 10:00 ✗ \"shoot 5: Slice the loaf for 5 minutes.\" is pinned to 10:00 and cannot begin before 12:05.")
	if !strings.Contains(page, "step=5+#step") {
		t.Errorf("no link to put the step right:\n%s", words(page))
	}
	s.fix(path, 5, "pin", "")
	s.shows(path+"/shoot-day", "12:10 wraps ✓")
}

func TestBadWordsAboutAStepAreKept(t *testing.T) {
	tests := []struct{ name, field, typed, want string }{
		{"no time", "pin", "soonish", "“soonish” is not a time of day"},
		{"before the day", "pin", "05:00", "The day does not reach back to 05:00"},
		{"no stretch", "barred", "12:00", "“12:00” is not a stretch of the day"},
		{"waits for days", "least", "2000", "Let it wait a day at most"},
		{"no number", "most", "a bit", "is not a whole number"},
		{"backwards", "barred", "13:00–12:00", "“13:00–12:00” is not a stretch of the day"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, path := startLoaf(t, 1)
			got := s.fix(path, 3, tt.field, tt.typed)
			if got.status != http.StatusUnprocessableEntity || !strings.Contains(words(got.body), tt.want) {
				t.Errorf("%q = %d, want 422 with %q\n%s", tt.typed, got.status, tt.want, words(got.body))
			}
			if kept := value(t, got.body, tt.field); kept != tt.typed {
				t.Errorf("the form has %q, want what was typed", kept)
			}
		})
	}
}

func TestNoSuchStep(t *testing.T) {
	s, path := startLoaf(t, 1)
	for _, query := range []string{"batch=shoot&step=9+", "batch=nobody&step=1+", "batch=shoot&step=1+Crust", "batch=shoot&step=x", ""} {
		if got := s.post(path+"/shoot-day/steps?"+query, "pin", "10:00"); got.status != http.StatusNotFound {
			t.Errorf("fixing %q = %d, want 404", query, got.status)
		}
	}
	if got := s.get(path + "/shoot-day?batch=nobody&step=1+"); got.status != http.StatusNotFound {
		t.Errorf("the form of no step = %d, want 404", got.status)
	}
}

// A recipe that changes leaves what was fixed behind, and the sheet says so.
func TestWhatIsFixedForAStepThatIsGone(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.fix(path, 5, "pin", "14:00")
	s.setMakes(2) // the make is called "shoot 1" now
	s.shows(path+"/shoot-day", "No longer in the plan, so not kept to: shoot, step 5", "12:50 wraps ✓")
}

func TestMoments(t *testing.T) {
	tests := []struct {
		name  string
		pairs []string
		want  []string
	}{
		{"flour comes at 10:00: 10:00 + 190 minutes", []string{"name", "Delivery", "at", "10:00", "holds", "not before it", "step", "1 "},
			[]string{"10:00 begins", "13:10 wraps ✓", "10:00 Delivery step 1 begins no earlier"}},
		{"lunch in the oven: baked from 12:30", []string{"name", "Lunch", "at", "11:00", "until", "12:30", "takes", "oven"},
			[]string{"13:15 wraps ✓", "11:00 Lunch takes the oven until 12:30"}},
		{"away from the bench: shaped from 11:40", []string{"name", "A call", "at", "11:00", "until", "11:40", "takes", "hands"},
			[]string{"12:40 wraps ✓", "takes a pair of hands until 11:40"}},
		{"guests in good time", []string{"name", "Guests", "at", "16:00", "holds", "done by then"},
			[]string{"12:10 wraps ✓", "16:00 Guests all that is made for the shoot is done by then"}},
		{"guests too early", []string{"name", "Guests", "at", "12:00", "holds", "done by then"},
			[]string{"no plan", "Guests", "12:00"}},
		{"only a note, before the day", []string{"name", "The market", "at", "06:00"},
			[]string{"12:10 wraps ✓", "06:00 The market"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, path := startLoaf(t, 1)
			if got := s.addMoment(path, tt.pairs...); got.status != http.StatusSeeOther {
				t.Fatalf("adding = %d\n%s", got.status, words(got.body))
			}
			s.shows(path+"/shoot-day", tt.want...)
			if got := s.post(path + "/moments/1/delete"); got.status != http.StatusSeeOther {
				t.Fatalf("deleting = %d", got.status)
			}
			s.shows(path+"/shoot-day", "09:00 begins", "12:10 wraps ✓", "The moment is deleted")
		})
	}
}

func TestBadMomentsAreKept(t *testing.T) {
	tests := []struct {
		name  string
		pairs []string
		want  string
	}{
		{"no name", []string{"name", "", "at", "11:00"}, "Say what is at that time"},
		{"no time", []string{"at", ""}, "Say when it is"},
		{"over before it begins", []string{"at", "11:00", "until", "10:00"}, "Let it end after it begins"},
		{"takes the oven for ever", []string{"at", "11:00", "takes", "oven"}, "Say until when the oven is taken"},
		{"takes what is not there", []string{"at", "11:00", "until", "12:00", "takes", "moon"}, "Choose one of"},
		{"no such step", []string{"at", "11:00", "holds", "done by then", "step", "x"}, "Choose a step of the recipe"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, path := startLoaf(t, 1)
			got := s.addMoment(path, tt.pairs...)
			if got.status != http.StatusUnprocessableEntity || !strings.Contains(words(got.body), tt.want) {
				t.Errorf("= %d, want 422 with %q\n%s", got.status, tt.want, words(got.body))
			}
		})
	}
}

// Two makes in one oven that holds two: both are baked at once, if two ovens or
// one large one are there. Kneading one after the other takes 10 minutes, so the
// second is shaped 11:25 to 11:40 and baked until 12:20.
func TestTheKitchenHolds(t *testing.T) {
	tests := []struct {
		name  string
		pairs []string
		want  string
	}{
		{"one oven for one", nil, "12:50 wraps ✓"},
		{"one oven for two", []string{"holds", "2"}, "12:25 wraps ✓"},
		{"two ovens", []string{"ovens", "2"}, "12:25 wraps ✓"},
		{"the bench is cleaned for 4 minutes after the last slice", []string{"clean-bench", "4"}, "12:54 wraps ✓"},
		{"no oven", []string{"ovens", "0"}, "no plan"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, path := startLoaf(t, 2)
			got := s.setKitchen(path, tt.pairs...)
			if got.status != http.StatusSeeOther {
				t.Fatalf("saving = %d\n%s", got.status, words(got.body))
			}
			s.shows(path+"/shoot-day", tt.want)
		})
	}
}

// setKitchen saves what the kitchen holds; pairs are put over the usual one.
func (s *site) setKitchen(path string, pairs ...string) answer {
	s.t.Helper()
	all := []string{"ovens", "1", "holds", "1", "rings", "2", "mixers", "1", "clean-bench", "0", "clean-mixer", "0", "clean-hob", "0",
		"people", "Ilse", "gear", "", "props", ""}
	if page := s.get(path + "/shoot-day").body; strings.Contains(page, `name="revision"`) {
		all = append(all, "revision", value(s.t, page, "revision"))
	}
	return s.post(path+"/shoot-day/kitchen", append(all, pairs...)...)
}

func TestTheKitchenIsTheSameOnTheNextShootDay(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.setKitchen(path, "ovens", "3", "people", "Ilse\nTam")
	next := s.start("Second loaf", wholeLoaf)
	page := s.get(next + "/shoot-day").body
	if got := value(t, page, "ovens"); got != "3" || !strings.Contains(page, "Ilse\nTam") {
		t.Errorf("the next day has %s ovens, want 3 and the people", got)
	}
}

func TestABadKitchenIsKept(t *testing.T) {
	s, path := startLoaf(t, 1)
	for field, typed := range map[string]string{"holds": "0", "ovens": "21", "clean-hob": "241", "rings": "two"} {
		got := s.setKitchen(path, field, typed)
		if got.status != http.StatusUnprocessableEntity || value(t, got.body, field) != typed {
			t.Errorf("%s %s = %d, want 422 with what was typed", field, typed, got.status)
		}
	}
}

// Caramel that is to be poured at once is not melted before hands are free to
// pour it: the two makes are melted and poured one after the other.
func TestWhatCannotWaitDoesNot(t *testing.T) {
	s := newSite(t)
	path := s.start("Caramel", "Caramel\n\n100 g sugar\n\nMelt the sugar for 8 minutes.\nPour at once into moulds, 10 minutes.\n")
	s.setMakes(3)
	table := s.get(path + "/shoot-day.csv").body
	ends := map[string]int{}
	for _, row := range clockOfBatch.FindAllStringSubmatch(table, -1) {
		from, _ := episode.ReadClock(row[1])
		to, _ := episode.ReadClock(row[2])
		if row[4] == "Pour" && from-ends[row[3]] > 5 {
			t.Errorf("%s is poured at %s, melted at %s:\n%s", row[3], row[1], episode.Clock(ends[row[3]]), table)
		}
		ends[row[3]] = to
	}
	if len(ends) != 3 {
		t.Errorf("%d makes:\n%s", len(ends), table)
	}
	form := words(s.get(path + "/shoot-day?" + url.Values{"batch": {"shoot 1"}, "step": {"2 "}}.Encode()).body)
	if !strings.Contains(form, "Empty is 5: the step says that it cannot wait.") {
		t.Errorf("the form does not say what was read:\n%s", form)
	}
}

var clockOfBatch = regexp.MustCompile(`(?m)^1,(\d\d:\d\d),(\d\d:\d\d),\d+,(shoot \d),,"?(\w+)`)

// Where a step that is to be done at once cannot be, the day is planned all the
// same, and says so.
func TestWhatCannotBeDoneAtOnce(t *testing.T) {
	s := newSite(t)
	path := s.start("Caramel", "Caramel\n\n100 g sugar\n\nMelt the sugar for 8 minutes.\nPour at once into moulds, 10 minutes.\n")
	s.setMakes(1)
	s.fix(path, 1, "pin", "09:00")
	s.fix(path, 2, "pin", "12:00")
	const note = "Not all that is to be done at once can be"
	for range 2 { // the second look takes the plan that was kept
		s.shows(path+"/shoot-day", note, "12:10 wraps ✓")
	}
	s.fix(path, 2, "pin", "09:10")
	if page := words(s.shows(path+"/shoot-day", "09:20 wraps ✓")); strings.Contains(page, note) {
		t.Errorf("the plan still says that something waits:\n%s", page)
	}
}
