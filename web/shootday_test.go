package web_test

import (
	"math"
	"net/http"
	"net/url"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
)

// wholeLoaf takes one pair of hands 10 + 15 + 5 minutes, proves for 120 and bakes
// for 40: 190 in all, each step waiting for the one before.
const wholeLoaf = `Loaf

Makes 1

500 g bread flour
350 ml water

Knead the flour and water for 10 minutes.
Leave the dough to prove for 2 hours.
Shape the dough for 15 minutes.
Bake the loaf at 220 °C for 40 minutes.
Slice the loaf for 5 minutes.
`

// startLoaf is an episode with so many makes of the loaf for the shoot.
func startLoaf(t *testing.T, makes int64) (s *site, path string) {
	t.Helper()
	s = newSite(t)
	path = s.start("Loaf", wholeLoaf)
	s.setMakes(makes)
	return s, path
}

// setMakes makes the first episode's batches one of the shoot of so many makes.
func (s *site) setMakes(makes int64) {
	s.t.Helper()
	batches, err := s.store.Batches(s.t.Context(), 1)
	if err != nil {
		s.t.Fatal(err)
	}
	for _, b := range batches {
		if err := s.store.DeleteBatch(s.t.Context(), b.ID); err != nil {
			s.t.Fatal(err)
		}
	}
	s.addBatch(episode.ShootBatch, makes)
}

func (s *site) addBatch(kind episode.BatchKind, makes int64) {
	s.t.Helper()
	if _, err := s.store.AddBatch(s.t.Context(), episode.Batch{EpisodeID: 1, Kind: kind, Makes: measure.Whole(makes)}); err != nil {
		s.t.Fatal(err)
	}
}

// setDay saves what the day is planned with; pairs are put over a usual day.
func (s *site) setDay(path string, pairs ...string) answer {
	s.t.Helper()
	all := []string{"begin", "09:00", "done", "", "hands", "1", "helper", "", "light", "", "setup", "5"}
	if page := s.get(path + "/shoot-day").body; strings.Contains(page, `name="revision"`) {
		all = append(all, "revision", value(s.t, page, "revision"))
	}
	return s.post(path+"/shoot-day", append(all, pairs...)...)
}

// film ties a shot to a step of the recipe, counted from 1.
func (s *site) film(step int, setup string) {
	s.t.Helper()
	shot := episode.Shot{EpisodeID: 1, Title: "the step", Kind: "overhead", Setup: setup, Step: step, Status: episode.Missing}
	if _, err := s.store.AddShot(s.t.Context(), shot); err != nil {
		s.t.Fatal(err)
	}
}

func TestTheLoafOnTheClock(t *testing.T) {
	tests := []struct {
		name  string
		makes int64
		day   []string
		want  []string
	}{
		{"forwards, one make: 09:00 + 190 minutes", 1, nil,
			[]string{"09:00 begins", "12:10 wraps ✓ nothing can wrap earlier", "2 h free: B-roll, eat, rest until 11:10", "40 min free: B-roll, eat until 12:05", "30 min hands-on"}},
		{"another beginning", 1, []string{"begin", "7.30"}, []string{"07:30 begins", "10:40 wraps"}},
		{"backwards from 16:00", 1, []string{"done", "16:00"}, []string{"12:50 begins ✓ nothing can begin later", "16:00 wraps"}},
		// The first is baked from 11:25 at the earliest; one oven bakes until
		// 12:45, and the second is sliced then.
		{"two makes in one oven", 2, nil, []string{"12:50 wraps ✓ nothing can wrap earlier", "shoot 2 · oven"}},
		{"past midnight", 1, []string{"begin", "22:00"}, []string{"22:00 begins", "01:10 next day wraps"}},
		{"the light stays long enough", 1, []string{"light", "12:10"}, []string{"12:10 wraps ✓"}},
		{"done by, with time to spare for two makes", 2, []string{"done", "24:00"}, []string{"20:10 begins ✓ nothing can begin later", "24:00 wraps"}},
		{"more makes than a plan holds", 6, nil, []string{"6 makes are planned on the Shop sheet; the plan holds the first 4", "shoot 4 · oven"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, path := startLoaf(t, tt.makes)
			if got := s.setDay(path, tt.day...); got.status != http.StatusSeeOther {
				t.Fatalf("saving the day = %d\n%s", got.status, words(got.body))
			}
			s.shows(path+"/shoot-day", tt.want...)
		})
	}
}

func TestASecondPairOfHandsUntilTheyLeave(t *testing.T) {
	// Two makes are kneaded at once by two; alone, the second waits 10 minutes,
	// but the oven is what both wait for, so the wrap stays.
	s, path := startLoaf(t, 2)
	s.setDay(path, "helper", "09:10")
	s.shows(path+"/shoot-day", "12:50 wraps ✓")
	if table := s.get(path + "/shoot-day.csv").body; strings.Count(table, "1,09:00,09:10,10,") != 2 {
		t.Errorf("the second make is kneaded after the first, though a helper is there:\n%s", table)
	}
}

// Shaping is filmed from 11:10 and slicing from 12:05. The first setup stands;
// the second is put up while the loaf is baked for 40 minutes. If that takes 50,
// slicing begins at 11:25 + 50 = 12:15.
func TestFilmedStepsShowTheirSetup(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.film(3, "table, low lamp")
	s.film(5, "overhead")
	s.shows(path+"/shoot-day", "● filmed: table, low lamp", "● filmed: overhead", "11:25 Put up the camera: overhead until 11:30", "12:10 wraps ✓")
	s.setDay(path, "setup", "50")
	s.shows(path+"/shoot-day", "11:25 Put up the camera: overhead until 12:15", "12:20 wraps ✓")
}

// A shot of a dough that proves for two hours keeps nobody behind the camera for
// two hours, and a swap-out may take its place once it has begun.
func TestOnlyTheBeginningOfALongWaitIsFilmed(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.film(2, "table, low lamp")
	s.shows(path+"/shoot-day", "09:10 Leave the dough to prove for 2 hours. ● its beginning filmed, until 09:15: table, low lamp shoot · waits · until 11:10", "09:15 1 h 55 min free: B-roll, eat, rest", "12:10 wraps ✓")
	if table := s.get(path + "/shoot-day.csv").body; !strings.Contains(table, "1,09:10,11:10,120,shoot,,Leave the dough to prove for 2 hours.,\"hands, camera\",\"table, low lamp\",") {
		t.Errorf("the table does not say that the wait is filmed:\n%s", table)
	}
	s.shows(path+"/shoot-day?swapouts=1", "made ahead to the end of “Leave the dough")
	s.send(path+"/shoot-day/swap-outs", url.Values{"stage": {"2 "}})
	s.shows(path+"/shoot-day", "10:10 wraps ✓", "its beginning filmed, until")
}

func TestADayThatDoesNotWorkOutSaysWhy(t *testing.T) {
	tests := []struct {
		name string
		day  []string
		want string
	}{
		{"done before it can be", []string{"done", "10:00"}, "The day takes until 12:10 at least, so it cannot finish by 10:00."},
		{"the light goes before slicing", []string{"light", "12:00"}, "Slice the loaf for 5 minutes."},
		{"both ends too near", []string{"done", "12:30", "light", "11:20"}, "✗"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, path := startLoaf(t, 1)
			s.film(5, "close")
			if got := s.setDay(path, tt.day...); got.status != http.StatusSeeOther {
				t.Fatalf("saving the day = %d", got.status)
			}
			page := words(s.shows(path+"/shoot-day", "no plan", tt.want, "30 min hands-on"))
			if strings.Contains(page, "minute 1") {
				t.Errorf("a time is not on the clock:\n%s", page)
			}
			if strings.Contains(page, "wraps") {
				t.Errorf("there is a plan:\n%s", page)
			}
			for _, file := range []string{".csv", ".ics"} {
				if got := s.get(path + "/shoot-day" + file); got.status != http.StatusUnprocessableEntity {
					t.Errorf("%s = %d, want 422", file, got.status)
				}
			}
		})
	}
}

func TestWhatIsMissingForAPlanIsSaid(t *testing.T) {
	s, path := startLoaf(t, 1)
	for _, b := range must(s.store.Batches(t.Context(), 1)) {
		if err := s.store.DeleteBatch(t.Context(), b.ID); err != nil {
			t.Fatal(err)
		}
	}
	s.addBatch(episode.TrialBatch, 3)
	s.shows(path+"/shoot-day", "No batch is planned for the shoot. Plan one on the Shop sheet.")
	bare := newSite(t)
	path = bare.start("Only an idea", "")
	bare.addBatch(episode.ShootBatch, 1)
	bare.shows(path+"/shoot-day", "The recipe has no steps to plan yet.")
}

func must[T any](value T, err error) T {
	if err != nil {
		panic(err)
	}
	return value
}

func TestARefusedDayKeepsWhatWasTyped(t *testing.T) {
	tests := []struct{ name, field, typed, say string }{
		{"no time of day", "begin", "nine-ish", "“nine-ish” is not a time of day"},
		{"nothing", "begin", "", "Say when the day begins"},
		{"25 hours", "done", "25:00", "“25:00” is not a time of day"},
		{"done before it begins", "done", "08:00", "Be done later than the day begins"},
		{"the helper gone before", "helper", "07:00", "Let the helper leave after the day begins"},
		{"dark before", "light", "6:30", "Let the light go after the day begins"},
		{"midnight is before", "light", "0:00", "Let the light go after the day begins"},
		{"nobody", "hands", "0", "from 1 to 20"},
		{"half a person", "hands", "1.5", "is not a whole number"},
		{"a setup of a day", "setup", "1440", "at most 240 minutes"},
		{"no date", "on", "tomorrow", "is not a date"},
	}
	s, path := startLoaf(t, 1)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got := s.setDay(path, tt.field, tt.typed)
			if got.status != http.StatusUnprocessableEntity || !strings.Contains(words(got.body), tt.say) {
				t.Fatalf("%q = %d, want 422 saying %q\n%s", tt.typed, got.status, tt.say, words(got.body))
			}
			if kept := value(t, got.body, tt.field); kept != tt.typed {
				t.Errorf("the form holds %q, want %q as typed", kept, tt.typed)
			}
		})
	}
	if day := must(s.store.ShootDay(t.Context(), 1)); day.Revision != 0 {
		t.Errorf("a refused day was saved: %+v", day)
	}
}

func TestTwoPeoplePlanTheSameDay(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.setDay(path, "begin", "08:00")
	late := s.post(path+"/shoot-day", "begin", "10:00", "hands", "1", "setup", "5") // from a page opened before
	if late.status != http.StatusConflict || !strings.Contains(late.body, "10:00") || !strings.Contains(late.body, "08:00") {
		t.Errorf("a late save = %d, want 409 with both times\n%s", late.status, words(late.body))
	}
	s.shows(path+"/shoot-day", "08:00 begins")
}

// One make ahead, kneaded from 07:00 and proved by 09:10, leaves shaping, baking
// and slicing: 09:10 + 60 = 10:10. A second cannot be baked before that.
func TestWhatASwapOutSaves(t *testing.T) {
	s, path := startLoaf(t, 1)
	if page := s.shows(path+"/shoot-day", "What would a swap-out save?"); strings.Contains(words(page), "extra make: wraps") {
		t.Error("the trade is worked out before it is asked for")
	}
	s.shows(path+"/shoot-day?swapouts=1",
		"0 extra makes: wraps 12:10", "1 extra make: wraps 10:10", "made ahead to the end of “Leave the dough to prove for 2 hours.” from 07:00; it cuts a wait of 2 h",
		"2 no better")
}

func TestABatchMadeAheadIsMarked(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.addBatch(episode.SwapOut, 1)
	s.shows(path+"/shoot-day", "07:00 begins", "made ahead swap-out · bench")
	s.shows(path+"/shoot-day?swapouts=1", "0 extra makes: wraps 12:10", "Compared without the swap-outs planned already.")
}

// The chart says with bars what the list says with words: every bar lies within
// the picture and within the hours of its entry.
func TestTheChartHoldsTheDay(t *testing.T) {
	s, path := startLoaf(t, 2)
	s.film(3, "table, low lamp")
	page := s.get(path + "/shoot-day").body
	svg := regexp.MustCompile(`(?s)<svg viewBox="0 0 720 (\d+)".*?</svg>`).FindStringSubmatch(page)
	if svg == nil {
		t.Fatalf("no chart:\n%s", page)
	}
	if strings.Contains(svg[0], "style=") || strings.Contains(svg[0], "<script") {
		t.Error("the chart has styles or scripts of its own, which the page forbids")
	}
	if !strings.Contains(svg[0], `role="img"`) || !strings.Contains(svg[0], "The plan from 09:00 to 12:50 by station") {
		t.Error("the chart has no name for those who hear it")
	}
	height := must(strconv.Atoi(svg[1]))
	bars := regexp.MustCompile(`(?s)<rect class="(bar[^"]*)" x="([\d.]+)" y="(\d+)" width="([\d.]+)" height="16" rx="2"><title>(\d\d):(\d\d) ([^<]*)</title>`).FindAllStringSubmatch(svg[0], -1)
	// Hands are in six steps, the camera in one, the oven in two, two prove.
	if len(bars) != 6+1+2+2 {
		t.Errorf("%d bars, want 11", len(bars))
	}
	hour := (720.0 - 72 - 16) / 4 // the plan's hours are 09:00 to 13:00
	for _, bar := range bars {
		x, y, width := must(strconv.ParseFloat(bar[2], 64)), must(strconv.Atoi(bar[3])), must(strconv.ParseFloat(bar[4], 64))
		from := float64(must(strconv.Atoi(bar[5]))-9) + float64(must(strconv.Atoi(bar[6])))/60
		if want := 72 + from*hour; math.Abs(x-want) > 0.1 {
			t.Errorf("%q begins at %.1f, want %.1f", bar[7], x, want)
		}
		if x+width > 720-16 || y+16 > height {
			t.Errorf("%q ends at %.1f, %d, beyond the chart's %d", bar[7], x+width, y+16, height)
		}
		if strings.HasPrefix(bar[7], "Leave the dough") && math.Abs(width-(2*hour-1)) > 0.1 {
			t.Errorf("two hours of proving are %.1f wide, want %.1f", width, 2*hour-1)
		}
	}
	for _, row := range []string{">hands</text>", ">camera</text>", ">oven</text>", ">waits</text>", ">09:00</text>", ">13:00</text>"} {
		if !strings.Contains(svg[0], row) {
			t.Errorf("the chart has no %s", row)
		}
	}
	if strings.Contains(svg[0], ">mixer</text>") {
		t.Error("the chart has a row for a station that nobody uses")
	}
}

// A step's own words stay as they are when a refusal puts its times on the clock.
func TestARefusalKeepsTheStepsWords(t *testing.T) {
	s := newSite(t)
	path := s.start("Loaf", "Loaf\n\n500 g bread flour\n\nBake until minute 12 of the loaf setting, for 15 minutes.\n")
	s.film(1, "close")
	s.setDay(path, "light", "09:03") // its beginning is filmed until 09:05
	s.shows(path+"/shoot-day", "no plan", "minute 12 of the loaf")
}

// BenchmarkShootDay bounds the sheet with a plan of four batches.
func BenchmarkShootDay(b *testing.B) {
	s := newSite(b)
	path := s.start("Loaf", wholeLoaf)
	s.setMakes(4)
	s.film(3, "table, low lamp")
	s.film(5, "overhead")
	b.ReportAllocs()
	for b.Loop() {
		if got := s.get(path + "/shoot-day"); got.status != http.StatusOK {
			b.Fatalf("the sheet = %d", got.status)
		}
	}
}
