package web_test

import (
	"fmt"
	"net/http"
	"net/url"
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/episode"
	"benchproof/web"
)

func TestASpanIsReadAsPeopleWriteIt(t *testing.T) {
	tests := []struct {
		typed string
		want  []episode.Span
		fails int
	}{
		{"", nil, 0},
		{"12:00–13:00", []episode.Span{{From: 720, To: 780}}, 0},
		{"12-13", []episode.Span{{From: 720, To: 780}}, 0},
		{"9.30 to 10.15", []episode.Span{{From: 570, To: 615}}, 0},
		{"0900—0930; 15:00-15:05", []episode.Span{{From: 540, To: 570}, {From: 900, To: 905}}, 0},
		{"12:00–13:00,\n14–15", []episode.Span{{From: 720, To: 780}, {From: 840, To: 900}}, 0},
		{"23:00–24:00", []episode.Span{{From: 1380, To: 1440}}, 0},
		{" , ", nil, 0},
		{"13–12", nil, 1},
		{"12–12", nil, 1},
		{"noon", nil, 1},
		{"12:00–13:00, later", []episode.Span{{From: 720, To: 780}}, 1},
	}
	for _, tt := range tests {
		t.Run(tt.typed, func(t *testing.T) {
			form := web.NewTyped(url.Values{"barred": {tt.typed}})
			if got := form.Spans("barred"); !slices.Equal(got, tt.want) {
				t.Errorf("spans %v, want %v", got, tt.want)
			}
			if err := form.Err(); (err != nil) != (tt.fails > 0) {
				t.Errorf("error %v, want %d", err, tt.fails)
			}
		})
	}
}

// What a span is written as is read back as it was.
func TestSpansReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := rapid.IntRange(0, episode.DayMinutes-1).Draw(t, "from")
		span := episode.Span{From: from, To: rapid.IntRange(from+1, episode.DayMinutes).Draw(t, "to")}
		form := web.NewTyped(url.Values{"barred": {web.SpanWords(span)}})
		if got := form.Spans("barred"); form.Err() != nil || len(got) != 1 || got[0] != span {
			t.Fatalf("%v is written %q and read as %v (%v)", span, web.SpanWords(span), got, form.Err())
		}
	})
}

// A step's name goes into an address and comes back, whatever a component is
// called.
func TestStepsReadBackFromAddresses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		name := episode.StepName{
			Batch: rapid.StringMatching(`[a-z0-9&=?# ]{1,12}`).Draw(t, "batch"), Component: rapid.String().Draw(t, "component"), Step: rapid.IntRange(1, 999).Draw(t, "step"),
		}
		query, err := url.ParseQuery(web.StepQuery(name))
		if err != nil {
			t.Fatal(err)
		}
		if got, ok := web.StepFrom(query); !ok || got != name {
			t.Fatalf("%q is read as %+v, %v", web.StepQuery(name), got, ok)
		}
	})
}

func TestNoStepInAnAddress(t *testing.T) {
	for _, query := range []string{"", "batch=shoot", "step=3+Dough", "batch=shoot&step=", "batch=shoot&step=0+", "batch=shoot&step=-1+", "batch=&step=1+", "batch=shoot&step=three+"} {
		values, err := url.ParseQuery(query)
		if err != nil {
			t.Fatal(err)
		}
		if got, ok := web.StepFrom(values); ok {
			t.Errorf("%q is read as %+v", query, got)
		}
	}
}

func TestMomentWords(t *testing.T) {
	tests := []struct {
		name   string
		moment episode.Moment
		want   string
	}{
		{"a note", episode.Moment{At: 600}, ""},
		{"an oven", episode.Moment{At: 720, Until: 780, Takes: "oven"}, "takes the oven until 13:00"},
		{"hands", episode.Moment{At: 720, Until: 780, Takes: "hands"}, "takes a pair of hands until 13:00"},
		{"guests", episode.Moment{At: 960, Holds: episode.DoneBefore}, "all that is made for the shoot is done by then"},
		{"a delivery", episode.Moment{At: 600, Holds: episode.NotBefore, Component: "Dough", Step: 2}, "dough, step 2 begins no earlier"},
		{"both", episode.Moment{At: 600, Until: 660, Takes: "hob", Holds: episode.DoneBefore, Step: 1}, "takes the hob until 11:00 · step 1 is done by then"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if got := web.MomentWords(tt.moment); got != tt.want {
				t.Errorf("%q, want %q", got, tt.want)
			}
		})
	}
}

func TestTimeWithoutWorkIsNamed(t *testing.T) {
	for minutes, want := range map[int]string{10: "10 min free: wash up", 19: "19 min free: wash up", 20: "20 min free: B-roll, eat", 41: "41 min free: B-roll, eat", 60: "1 h free: B-roll, eat, rest", 150: "2 h 30 min free: B-roll, eat, rest"} {
		if got := words(web.FreeText(minutes)); got != want {
			t.Errorf("%d minutes: %q, want %q", minutes, got, want)
		}
	}
}

// Two who change the kitchen and the day at once: the second is told, and both
// texts are kept.
func TestTwoPeopleChangeTheKitchen(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.setKitchen(path, "people", "Ilse")
	late := s.post(path+"/shoot-day/kitchen", "ovens", "1", "holds", "1", "rings", "2", "mixers", "1", "people", "Tam", "revision", "0")
	if late.status != http.StatusConflict || !strings.Contains(late.body, "Tam") || !strings.Contains(late.body, "Ilse") {
		t.Errorf("a late save = %d, want 409 with both names\n%s", late.status, words(late.body))
	}
	if day := must(s.store.ShootDay(t.Context(), 1)); day.People != "Ilse" {
		t.Errorf("people %q, want those saved first", day.People)
	}
}

// The forms of one sheet keep each other's values.
func TestTheDayAndTheKitchenKeepEachOther(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.setKitchen(path, "ovens", "2", "gear", "a tripod")
	s.setDay(path, "begin", "08:00", "helper", "12:00")
	s.setKitchen(path, "ovens", "3", "gear", "a tripod")
	day := must(s.store.ShootDay(t.Context(), 1))
	if day.Begin != 480 || day.HelperUntil != 720 || day.Kitchen.Ovens != 3 || day.Gear != "a tripod" {
		t.Errorf("something is lost: %+v", day)
	}
}

func TestAMomentIsChanged(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.addMoment(path, "name", "Lunch", "at", "11:00", "until", "12:30", "takes", "oven")
	form := s.shows(path+"/shoot-day?change=moment-1", "Change this moment")
	for field, want := range map[string]string{"name": "Lunch", "at": "11:00", "until": "12:30"} {
		if got := value(t, form[strings.Index(form, `id="moment"`):], field); got != want {
			t.Errorf("the form has %s %q, want %q", field, got, want)
		}
	}
	got := s.post(path+"/moments/1", "name", "Late lunch", "at", "13:00", "until", "14:00", "takes", "oven", "holds", "", "step", "", "revision", "1")
	if got.status != http.StatusSeeOther {
		t.Fatalf("changing = %d\n%s", got.status, words(got.body))
	}
	s.shows(path+"/shoot-day", "13:00 to 14:00 Late lunch", "12:10 wraps ✓")
	late := s.post(path+"/moments/1", "name", "Early lunch", "at", "10:00", "until", "", "takes", "", "holds", "", "step", "", "revision", "1")
	if late.status != http.StatusConflict {
		t.Errorf("a stale change = %d, want 409", late.status)
	}
}

func TestAMomentOfAnotherEpisode(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.addMoment(path, "name", "Lunch", "at", "11:00")
	other := s.start("Second", wholeLoaf)
	for _, answer := range []answer{
		s.get(other + "/shoot-day?change=moment-1"), s.post(other + "/moments/1/delete"),
		s.post(other+"/moments/1", "name", "Mine", "at", "11:00", "until", "", "takes", "", "holds", "", "step", "", "revision", "1"),
	} {
		if answer.status != http.StatusNotFound {
			t.Errorf("= %d, want 404", answer.status)
		}
	}
	s.shows(path+"/shoot-day", "11:00 Lunch")
}

// A moment that is deleted can be put back, with what it holds.
func TestADeletedMomentComesBack(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.addMoment(path, "name", "Lunch", "at", "11:00", "until", "12:30", "takes", "oven")
	s.post(path + "/moments/1/delete")
	s.shows("/deleted", "Lunch")
	s.post("/deleted/moment/1/restore")
	s.shows(path+"/shoot-day", "11:00 to 12:30 Lunch", "13:15 wraps ✓")
}

// Kneaded by the helper, who leaves at 09:10: two makes cannot both be, so the
// second is left to the plan.
func TestAStepIsGivenToTheHelper(t *testing.T) {
	s, path := startLoaf(t, 2)
	s.setDay(path, "helper", "14:00")
	query := url.Values{"batch": {"shoot 1"}, "step": {"1 "}}.Encode()
	if got := s.post(path+"/shoot-day/steps?"+query, "helper", "yes", "pin", "", "barred", ""); got.status != http.StatusSeeOther {
		t.Fatalf("giving = %d\n%s", got.status, words(got.body))
	}
	s.shows(path+"/shoot-day", "▪ the helper’s", "12:50 wraps ✓")
	table := s.get(path + "/shoot-day.csv").body
	if !strings.Contains(table, `shoot 1,,Knead the flour and water for 10 minutes.,"hands, helper"`) {
		t.Errorf("the helper does not knead:\n%s", table)
	}
	s.setDay(path, "helper", "")
	s.shows(path+"/shoot-day", "not kept to: the helper's step 1 (nobody helps on this day)", "12:50 wraps ✓")
}

func TestAHelperWhoLeavesTooSoon(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.setDay(path, "helper", "12:00")
	s.fix(path, 5, "helper", "yes") // slicing, from 12:05
	s.shows(path+"/shoot-day", "no plan", "What to change", "Slice the loaf for 5 minutes. ▪ the helper’s")
}

// A plan stays as it was until something of the day changes; then it says what
// moved, and only then.
func TestThePlanIsKept(t *testing.T) {
	s, path := startLoaf(t, 4)
	first := s.get(path + "/shoot-day.csv").body
	kept := must(s.store.DayPlan(t.Context(), 1))
	for range 3 {
		if again := s.get(path + "/shoot-day.csv").body; again != first {
			t.Fatalf("another plan:\n%s\nthan before:\n%s", again, first)
		}
	}
	if again := must(s.store.DayPlan(t.Context(), 1)); fmt.Sprint(again) != fmt.Sprint(kept) {
		t.Errorf("the plan kept has changed: %v, before %v", again, kept)
	}
	s.setDay(path, "light", "23:00") // nothing is filmed
	if page := words(s.get(path + "/shoot-day").body); strings.Contains(page, "What changed") {
		t.Errorf("something moved, though the light concerns nothing:\n%s", page)
	}
	s.setDay(path, "begin", "10:00")
	s.shows(path+"/shoot-day", "10:00 begins", "What changed: 20 steps are at another time", "was 09:00")
}

// A recipe that changes leaves the old plan behind.
func TestANewRecipeMakesANewPlan(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.fix(path, 3, "pin", "12:00")
	s.shows(path+"/shoot-day", "13:00 wraps ✓", "What changed")
	edit := s.get("/recipes/1/edit").body
	text := strings.Replace(wholeLoaf, "40 minutes", "70 minutes", 1)
	got := s.post("/recipes/1/versions/1", "version", "1", "revision", value(t, edit, "revision"), "text", text)
	if got.status != http.StatusSeeOther {
		t.Fatalf("changing the recipe = %d\n%s", got.status, words(got.body))
	}
	if page := words(s.shows(path+"/shoot-day", "13:30 wraps ✓", "▪ pinned to 12:00")); strings.Contains(page, "What changed") {
		t.Errorf("the old plan's changes are still told:\n%s", page)
	}
}

// Whatever is sent to the sheet's forms, the sheet stands afterwards.
func TestTheSheetStandsWhateverIsSent(t *testing.T) {
	s, path := startLoaf(t, 2)
	rubbish := []string{"", "09:00", "24:00", "99:99", "-1", "12–13", "‘’“”", strings.Repeat("9", 400), "\x00", "yes"}
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) string { return rapid.SampledFrom(rubbish).Draw(t, name) }
		form := url.Values{}
		for _, field := range []string{"pin", "barred", "helper", "now", "done", "begun", "stage", "name", "at", "until", "takes", "holds", "step", "begin", "hands", "revision"} {
			form.Set(field, draw(field))
		}
		to := rapid.SampledFrom([]string{"/shoot-day", "/shoot-day/kitchen", "/shoot-day/steps?batch=shoot+1&step=1+", "/shoot-day/late", "/shoot-day/swap-outs", "/moments"}).Draw(t, "to")
		if got := s.send(path+to, form); got.status >= 500 {
			t.Fatalf("%s with %v = %d", to, form, got.status)
		}
		if got := s.get(path + "/shoot-day"); got.status != http.StatusOK {
			t.Fatalf("the sheet = %d after %s with %v", got.status, to, form)
		}
	})
}

var clockOf = regexp.MustCompile(`(?m)^1,(\d\d:\d\d),(\d\d:\d\d),(\d+),shoot,,(\w+)`)

// Pins and barred times hold whatever they are, or the sheet says that they
// cannot: the loaf's table is checked by hand of its clock alone.
func TestWhatIsFixedHolds(t *testing.T) {
	s, path := startLoaf(t, 1)
	rapid.Check(t, func(t *rapid.T) {
		step := rapid.IntRange(1, 5).Draw(t, "step")
		pin := rapid.IntRange(9*60, 15*60).Draw(t, "pin")
		bar := rapid.IntRange(9*60, 15*60).Draw(t, "bar")
		barred := episode.Span{From: bar, To: bar + rapid.IntRange(1, 60).Draw(t, "minutes")}
		fixed := episode.DayStep{EpisodeID: 1, StepName: episode.StepName{Batch: "shoot", Step: step}}
		if rapid.Bool().Draw(t, "is pinned") {
			fixed.Pin = pin
		} else {
			fixed.Barred = []episode.Span{barred}
		}
		if err := s.store.SaveDayStep(t.Context(), fixed); err != nil {
			t.Fatal(err)
		}
		defer func() {
			if err := s.store.SaveDayStep(t.Context(), episode.DayStep{EpisodeID: 1, StepName: fixed.StepName}); err != nil {
				t.Fatal(err)
			}
		}()
		got := s.get(path + "/shoot-day.csv")
		rows := clockOf.FindAllStringSubmatch(got.body, -1)
		if got.status != http.StatusOK || len(rows) != 5 {
			if fixed.Pin == 0 {
				t.Fatalf("no plan for %+v: %s", fixed, words(got.body))
			}
			return // it cannot begin so early
		}
		from, _ := episode.ReadClock(rows[step-1][1])
		to, _ := episode.ReadClock(rows[step-1][2])
		if fixed.Pin > 0 && from != fixed.Pin || fixed.Pin == 0 && from < barred.To && to > barred.From {
			t.Fatalf("%+v, planned from %s to %s", fixed, rows[step-1][1], rows[step-1][2])
		}
	})
}
