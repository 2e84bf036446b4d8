package demo_test

import (
	"slices"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
	"benchproof/seed/demo"
)

// aWednesday is the day on which most tests look at the show.
var aWednesday = time.Date(2027, time.March, 10, 21, 30, 0, 0, time.UTC)

func newShow(t testing.TB) demo.Show {
	t.Helper()
	show, err := demo.New(aWednesday)
	if err != nil {
		t.Fatalf("New: %v", err)
	}
	return show
}

func TestShowHasEveryStageAndEnoughOfEverything(t *testing.T) {
	show := newShow(t)
	stages := map[episode.Stage]int{}
	for _, e := range show.Episodes {
		stages[e.Brief.Stage]++
	}
	for _, stage := range episode.Stages {
		if stages[stage] == 0 {
			t.Errorf("no episode is %q", stage)
		}
	}
	if stages[episode.Released] != 2 {
		t.Errorf("%d episodes are released, want 2", stages[episode.Released])
	}
	if len(show.Recipes) < 8 || len(show.Pitches) < 6 {
		t.Errorf("%d recipes and %d pitches, want at least 8 and 6", len(show.Recipes), len(show.Pitches))
	}
	several := 0
	for _, r := range show.Recipes {
		if len(r.Versions) > 1 {
			several++
		}
	}
	if several < 3 {
		t.Errorf("%d recipes have several versions, want at least 3", several)
	}
}

// On every day of the week, what is released has come out, what is not has not,
// and nothing was made in the future.
func TestDatesFitTheDay(t *testing.T) {
	for offset := range 7 {
		day := aWednesday.AddDate(0, 0, offset)
		t.Run(day.Weekday().String(), func(t *testing.T) {
			show, err := demo.New(day)
			if err != nil {
				t.Fatal(err)
			}
			today := time.Date(day.Year(), day.Month(), day.Day(), 0, 0, 0, 0, time.UTC)
			for _, e := range show.Episodes {
				on := e.Brief.ReleaseOn
				if !on.IsZero() && (e.Brief.Stage == episode.Released) != !on.After(today) {
					t.Errorf("episode %d, %s, is out on %s; today is %s", e.Brief.Number, e.Brief.Stage, on, today)
				}
				if e.Brief.Stage == episode.InTheEdit && on.Sub(today) > 7*24*time.Hour {
					t.Errorf("episode %d is in the edit and more than a week off", e.Brief.Number)
				}
				checkTrialDates(t, e, versions(show, e.Recipe), today)
			}
		})
	}
}

func checkTrialDates(t *testing.T, e demo.Episode, versions []demo.Version, today time.Time) {
	t.Helper()
	last := time.Time{}
	for i, trial := range e.Trials {
		if trial.MadeOn.After(today) || trial.MadeOn.Before(last) || trial.MadeOn.Before(versions[trial.Version-1].MadeOn) {
			t.Errorf("episode %d, trial %d was made on %s", e.Brief.Number, i+1, trial.MadeOn)
		}
		last = trial.MadeOn
	}
	for i, v := range versions {
		if v.MadeOn.IsZero() || v.MadeOn.After(today) || i > 0 && !v.MadeOn.After(versions[i-1].MadeOn) {
			t.Errorf("recipe %s, version %d was made on %s", e.Recipe, i+1, v.MadeOn)
		}
	}
}

func versions(show demo.Show, key string) []demo.Version {
	for _, r := range show.Recipes {
		if r.Key == key {
			return r.Versions
		}
	}
	return nil
}

// The day is the one on the host's calendar, not the one in Greenwich.
func TestTodayIsReadInItsOwnZone(t *testing.T) {
	zone := time.FixedZone("east", 13*60*60)
	east, err := demo.New(time.Date(2027, time.March, 14, 1, 0, 0, 0, zone)) // a Sunday there, a Saturday in UTC
	if err != nil {
		t.Fatal(err)
	}
	sunday, err := demo.New(time.Date(2027, time.March, 14, 12, 0, 0, 0, time.UTC))
	if err != nil {
		t.Fatal(err)
	}
	if got, want := east.Episodes[0].Brief.ReleaseOn, sunday.Episodes[0].Brief.ReleaseOn; !got.Equal(want) {
		t.Errorf("released on %s, want %s", got, want)
	}
}

func TestReferencesInsideTheShow(t *testing.T) {
	show := newShow(t)
	numbers := map[int]bool{}
	last := 0
	for _, e := range show.Episodes {
		numbers[e.Brief.Number] = true
		if e.Brief.Number <= last {
			t.Errorf("episode %d stands after %d", e.Brief.Number, last)
		}
		last = e.Brief.Number
		made := versions(show, e.Recipe)
		if e.Version < 1 || e.Version > len(made) {
			t.Errorf("episode %d uses version %d of %q, which has %d", e.Brief.Number, e.Version, e.Recipe, len(made))
		}
		for _, trial := range e.Trials {
			if trial.Version < 1 || trial.Version > len(made) || !slices.Contains(episode.Verdicts, trial.Verdict) {
				t.Errorf("episode %d: trial of version %d, verdict %q", e.Brief.Number, trial.Version, trial.Verdict)
			}
		}
		for _, batch := range e.Batches {
			if !slices.Contains(episode.BatchKinds, batch.Kind) || batch.Makes.Sign() <= 0 {
				t.Errorf("episode %d: %s makes of kind %q", e.Brief.Number, batch.Makes, batch.Kind)
			}
		}
	}
	for _, p := range show.Pitches {
		if p.Episode != 0 && !numbers[p.Episode] {
			t.Errorf("%q became episode %d, which is not there", p.Dish, p.Episode)
		}
		if p.Times < 1 || p.Who == "" || p.Place == "" {
			t.Errorf("pitch %q: who %q, where %q, %d times", p.Dish, p.Who, p.Place, p.Times)
		}
	}
	for _, r := range show.Recipes {
		for i, v := range r.Versions {
			if strings.TrimSpace(v.Text) == "" {
				t.Errorf("recipe %s, version %d is empty", r.Key, i+1)
			}
			if (v.Note == "") != (i == 0) {
				t.Errorf("recipe %s, version %d: note %q", r.Key, i+1, v.Note)
			}
		}
	}
}

func TestBriefsAreFilledIn(t *testing.T) {
	for _, e := range newShow(t).Episodes {
		b := e.Brief
		if b.Title == "" || b.Dish == "" || b.InspiredBy == "" || b.Look == "" || b.Notes == "" || b.Scale.Sign() <= 0 {
			t.Errorf("episode %d lacks something: %+v", b.Number, b)
		}
		if b.ID != 0 || b.RecipeID != 0 || b.VersionID != 0 || b.Revision != 0 {
			t.Errorf("episode %d has an ID or a revision before it is stored", b.Number)
		}
	}
}

// later tells whether an episode is far enough to have script and shots whole.
func later(s episode.Stage) bool {
	return s == episode.ReadyToShoot || s == episode.InTheEdit || s == episode.Released
}

func TestSegments(t *testing.T) {
	show := newShow(t)
	for _, e := range show.Episodes {
		if later(e.Brief.Stage) && (len(e.Segments) < 6 || len(e.Segments) > 9) {
			t.Errorf("episode %d has %d segments, want 6 to 9", e.Brief.Number, len(e.Segments))
		}
		for i, s := range e.Segments {
			words := script.Words(s.Narration)
			written := words > 0 || later(e.Brief.Stage)
			if s.Title == "" || s.Position != i+1 || written && (words < 60 || words > 180) {
				t.Errorf("episode %d, segment %d %q at %d has %d words", e.Brief.Number, i+1, s.Title, s.Position, words)
			}
			if strings.Contains(s.Narration, "\n") {
				t.Errorf("episode %d, segment %q: narration is not one paragraph", e.Brief.Number, s.Title)
			}
			if spoken := script.Seconds(s.Narration, show.Show.WordsPerMinute); s.PlannedSeconds != 0 && s.PlannedSeconds < spoken {
				t.Errorf("episode %d, segment %q: %d s planned, %d s spoken", e.Brief.Number, s.Title, s.PlannedSeconds, spoken)
			}
		}
		target := e.Brief.TargetMinutes * 60
		length := script.Length(script.Outline(e.Segments, show.Show.WordsPerMinute))
		if later(e.Brief.Stage) && (length*10 < target*9 || length*10 > target*11) {
			t.Errorf("episode %d: running order of %d s, target %d s", e.Brief.Number, length, target)
		}
	}
}

func TestShots(t *testing.T) {
	for _, e := range newShow(t).Episodes {
		if later(e.Brief.Stage) && len(e.Shots) < 10 {
			t.Errorf("episode %d has %d shots, want at least 10", e.Brief.Number, len(e.Shots))
		}
		for i, s := range e.Shots {
			if s.Position != i+1 || s.Title == "" || s.Setup == "" ||
				!slices.Contains(episode.ShotKinds, s.Kind) || !slices.Contains(episode.ShotStatuses, s.Status) {
				t.Errorf("episode %d, shot %d is not whole: %+v", e.Brief.Number, i+1, s)
			}
			if !slices.ContainsFunc(e.Setups, func(u episode.Setup) bool {
				return u.Name == s.Setup && u.Camera != "" && u.Lens != "" && u.Light != ""
			}) {
				t.Errorf("episode %d: the setup of shot %q is not described", e.Brief.Number, s.Title)
			}
			if e.Brief.Stage == episode.Released && s.Status != episode.Got {
				t.Errorf("episode %d is released and shot %q is %s", e.Brief.Number, s.Title, s.Status)
			}
		}
	}
}

// What is at a fixed time on a shoot day stands on the clock, and its people are
// known to be inventions: see the README.
func TestShootDays(t *testing.T) {
	days := 0
	for _, e := range newShow(t).Episodes {
		if e.ShootDay.Hands == 0 {
			continue
		}
		days++
		if !e.ShootDay.On.Before(e.Brief.ReleaseOn) {
			t.Errorf("episode %d is shot on %v and released on %v", e.Brief.Number, e.ShootDay.On, e.Brief.ReleaseOn)
		}
		if e.ShootDay.People == "" || e.ShootDay.Gear == "" || e.ShootDay.Props == "" {
			t.Errorf("episode %d: nobody or nothing comes to the shoot", e.Brief.Number)
		}
		for _, m := range e.Moments {
			if m.Name == "" || m.At <= 0 || m.At > episode.DayMinutes || m.Until != 0 && m.Until <= m.At {
				t.Errorf("episode %d: moment %+v", e.Brief.Number, m)
			}
		}
	}
	if days == 0 {
		t.Error("no shoot day in the show")
	}
}

func TestReleases(t *testing.T) {
	corrected := 0
	for _, e := range newShow(t).Episodes {
		r := e.Release
		if n := utf8.RuneCountInString(r.Title); n > 100 {
			t.Errorf("episode %d: title of %d characters; platforms take 100 (platform help, common practice)", e.Brief.Number, n)
		}
		if e.Brief.Stage == episode.Released {
			if r.Title == "" || r.Opening == "" || r.Equipment == "" || r.Credits == "" || r.VideoURL == "" {
				t.Errorf("episode %d is released and its release lacks something: %+v", e.Brief.Number, r)
			}
			if len(e.Cuts) == 0 {
				t.Errorf("episode %d is released without a cut", e.Brief.Number)
			}
		}
		for _, c := range e.Corrections {
			corrected++
			if c.Said == "" || c.Right == "" || c.At <= 0 || c.At >= e.Cuts[0].Seconds {
				t.Errorf("episode %d: correction %+v", e.Brief.Number, c)
			}
		}
		if strings.ContainsAny(r.Title+r.Opening+r.Equipment+r.Credits+r.Disclosure, "<>") {
			t.Errorf("episode %d: angle brackets, which platforms refuse (from memory)", e.Brief.Number)
		}
	}
	if corrected == 0 {
		t.Error("no correction in the show")
	}
}
