package web_test

import (
	"net/http"
	"strings"
	"testing"

	"benchproof/kitchen/episode"
)

func TestAShotIsTicked(t *testing.T) {
	s, path := filmedLoaf(t)
	for _, status := range []string{"got", "got", "retake", "missing", "got"} {
		answer := s.post(path+"/shots/ticks", "shot", "1", "status", status)
		if answer.status != http.StatusSeeOther || answer.to != path+"/shots#shot-1" {
			t.Fatalf("ticking %s = %d to %q", status, answer.status, answer.to)
		}
		shot, err := s.store.Shot(t.Context(), 1)
		if err != nil || string(shot.Status) != status {
			t.Errorf("ticked %s, the shot is %q (%v)", status, shot.Status, err)
		}
	}
	s.shows(path+"/shots", "1 of 2 got")
}

// keptTick is a tick as it is posted; an age of "form" is a press without scripts.
type keptTick struct{ age, by, nth, status string }

func (s *site) sends(path string, tick keptTick) answer {
	s.t.Helper()
	if tick.age == "form" {
		return s.post(path+"/shots/ticks", "shot", "1", "status", tick.status)
	}
	return s.post(path+"/shots/ticks/kept", "shot", "1", "status", tick.status, "age", tick.age, "by", tick.by, "nth", tick.nth)
}

// The ages are far longer than a test takes.
func TestAPhoneIsToldWhatHolds(t *testing.T) {
	for _, c := range []struct {
		name  string
		ticks []keptTick
		holds string // what is answered to the last
	}{
		{"the only one", []keptTick{{"0", "a", "1", "got"}}, "got"},
		{"an older one comes late", []keptTick{{"0", "b", "1", "retake"}, {"600000", "a", "1", "got"}}, "retake"},
		{"an older one, against the desk's form", []keptTick{{"form", "", "", "retake"}, {"600000", "a", "1", "got"}}, "retake"},
		{"a newer one comes late", []keptTick{{"900000", "b", "1", "retake"}, {"600000", "a", "1", "got"}}, "got"},
		{"a form has no age, whatever it says", []keptTick{{"0", "a", "1", "retake"}, {"form", "", "", "got"}, {"600000", "c", "1", "missing"}}, "got"},
		{"two of one phone, the second first", []keptTick{{"0", "a", "2", "retake"}, {"0", "a", "1", "got"}}, "retake"},
		{"two of one phone, the first by a slow way", []keptTick{{"0", "a", "1", "retake"}, {"5000", "a", "2", "got"}}, "got"},
		{"the same again", []keptTick{{"0", "a", "1", "retake"}, {"5000", "a", "1", "retake"}}, "retake"},
		{"without an age", []keptTick{{"0", "b", "1", "retake"}, {"", "a", "1", "got"}}, "got"},
		{"of an age below nothing", []keptTick{{"0", "b", "1", "retake"}, {"-600000", "a", "1", "got"}}, "got"},
		{"after one of an age below nothing", []keptTick{{"-86400000", "b", "1", "retake"}, {"0", "a", "1", "got"}}, "got"},
		{"older than the web", []keptTick{{"600000", "b", "1", "retake"}, {"1700000000000", "a", "1", "got"}}, "retake"},
		{"older than can be counted", []keptTick{{"600000", "b", "1", "retake"}, {"99999999999999999999", "a", "1", "got"}}, "retake"},
		{"younger than can be counted", []keptTick{{"600000", "b", "1", "retake"}, {"-99999999999999999999", "a", "1", "got"}}, "got"},
		{"older than can be counted, and the only one", []keptTick{{"9223372036854775807", "a", "1", "got"}}, "got"},
		{"from a phone without a name", []keptTick{{"0", "", "", "retake"}, {"0", "", "", "got"}}, "got"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s, path := filmedLoaf(t)
			var last answer
			for _, tick := range c.ticks {
				last = s.sends(path, tick)
			}
			want := `{"holds":"` + c.holds + `"}`
			if strings.TrimSpace(last.body) != want && c.ticks[len(c.ticks)-1].age != "form" {
				t.Errorf("the phone is told %s, want %s", last.body, want)
			}
			if shot, err := s.store.Shot(t.Context(), 1); err != nil || string(shot.Status) != c.holds {
				t.Errorf("%q is kept (%v), want %q", shot.Status, err, c.holds)
			}
		})
	}
}

func TestWhatAPhoneIsToldIsData(t *testing.T) {
	s, path := filmedLoaf(t)
	got := s.sends(path, keptTick{"0", "a", "1", "got"})
	if kind := got.header.Get("Content-Type"); got.status != http.StatusOK || kind != "application/json" {
		t.Errorf("= %d of type %q", got.status, kind)
	}
	if cache := got.header.Get("Cache-Control"); !strings.Contains(cache, "no-store") {
		t.Errorf("Cache-Control = %q", cache)
	}
}

func TestATickThatMakesNoSenseIsRefused(t *testing.T) {
	s, path := filmedLoaf(t)
	other := s.start("Scones", scones)
	for _, c := range []struct {
		name, path, shot, status string
		want                     int
	}{
		{"no such status", path, "1", "to shoot", http.StatusUnprocessableEntity},
		{"no status", path, "1", "", http.StatusUnprocessableEntity},
		{"no number", path, "one", "got", http.StatusUnprocessableEntity},
		{"no shot", path, "", "got", http.StatusNotFound},
		{"no such shot", path, "99", "got", http.StatusNotFound},
		{"of another episode", other, "1", "got", http.StatusNotFound},
		{"no such episode", "/episodes/99", "1", "got", http.StatusNotFound},
	} {
		t.Run(c.name, func(t *testing.T) {
			for _, to := range []string{"/shots/ticks", "/shots/ticks/kept"} {
				if got := s.post(c.path+to, "shot", c.shot, "status", c.status); got.status != c.want {
					t.Errorf("%s = %d, want %d", to, got.status, c.want)
				}
			}
			if shot, err := s.store.Shot(t.Context(), 1); err != nil || shot.Status != episode.Missing || shot.Revision != 1 {
				t.Errorf("the shot became %+v (%v)", shot, err)
			}
		})
	}
}

func TestAKeptTickThatMakesNoSenseIsRefused(t *testing.T) {
	s, path := filmedLoaf(t)
	for name, tick := range map[string]keptTick{
		"an age in words":    {"an hour", "a", "1", "got"},
		"an age in parts":    {"1.5", "a", "1", "got"},
		"a count in words":   {"0", "a", "first", "got"},
		"a count below none": {"0", "a", "-1", "got"},
		"a name of a page":   {"0", strings.Repeat("a", 41), "1", "got"},
	} {
		if got := s.sends(path, tick); got.status != http.StatusUnprocessableEntity {
			t.Errorf("%s = %d, want 422", name, got.status)
		}
	}
	if shot, err := s.store.Shot(t.Context(), 1); err != nil || shot.Status != episode.Missing {
		t.Errorf("the shot became %+v (%v)", shot, err)
	}
}

// A phone whose session has ended keeps its ticks: it must not take the door for
// an answer.
func TestATickOfAStrangerEndsAtTheDoor(t *testing.T) {
	s := openSite(t, doorConfig)
	if got := s.sends("/episodes/1", keptTick{"0", "a", "1", "got"}); got.status != http.StatusSeeOther || got.to != "/setup" {
		t.Errorf("= %d to %q, want the door", got.status, got.to)
	}
}
