package web_test

import (
	"net/http"
	"net/url"
	"strings"
	"testing"
)

// late sends the time and which steps of the loaf are done and under way.
func (s *site) late(path, now string, done, begun []string) answer {
	s.t.Helper()
	form := url.Values{"now": {now}}
	for _, step := range done {
		form.Add("done", "batch=shoot&step="+step+"+")
	}
	for _, step := range begun {
		form.Add("begun", "batch=shoot&step="+step+"+")
	}
	return s.send(path+"/shoot-day/late", form)
}

func TestRunningLate(t *testing.T) {
	tests := []struct {
		name        string
		now         string
		done, begun []string
		want        []string
	}{
		{"nothing has begun by 10:00: 10:00 + 190 minutes", "10:00", nil, nil,
			[]string{"13:10 wraps ✓", "Replanned at 10:00: 0 steps done, 0 under way", "What changed: 5 steps are at another time"}},
		{"still kneading at 09:30: 09:30 + 180", "09:30", nil, []string{"1"},
			[]string{"12:30 wraps ✓", "09:00 Knead the flour and water for 10 minutes. … under way", "0 steps done, 1 under way"}},
		{"as planned at 11:00", "11:00", []string{"1"}, []string{"1", "2"},
			[]string{"12:10 wraps ✓", "Knead the flour and water for 10 minutes. ✓ done", "1 step done, 1 under way"}},
		{"proved, not shaped at 11:40: 11:40 + 60", "11.40", []string{"1", "2"}, nil,
			[]string{"12:40 wraps ✓", "2 steps done"}},
		{"all done", "12:30", []string{"1", "2", "3", "4", "5"}, nil, []string{"12:10 wraps", "5 steps done"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s, path := startLoaf(t, 1)
			if got := s.late(path, tt.now, tt.done, tt.begun); got.status != http.StatusSeeOther {
				t.Fatalf("= %d\n%s", got.status, words(got.body))
			}
			s.shows(path+"/shoot-day", tt.want...)
			s.post(path + "/shoot-day/anew")
			page := words(s.shows(path+"/shoot-day", "12:10 wraps ✓"))
			if strings.Contains(page, "under way") || strings.Contains(page, "✓ done") {
				t.Errorf("the day has not been taken back to its beginning:\n%s", page)
			}
		})
	}
}

// Steps before the time given come ticked, and those of an earlier replanning.
func TestTicksAreSetByTheClock(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.late(path, "09:30", []string{"1"}, nil)
	page := s.get(path + "/shoot-day?late=1").body
	if !strings.Contains(page, `name="done" value="batch=shoot&amp;step=1+" checked`) {
		t.Errorf("kneading is not ticked as done:\n%s", page)
	}
	if value(t, page, "now") == "" {
		t.Error("the time now is not filled in")
	}
}

// A pin that has gone by is let go and named; one ahead is kept.
func TestRunningLateKeepsPins(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.fix(path, 5, "pin", "13:00")
	s.late(path, "09:30", nil, []string{"1"})
	s.shows(path+"/shoot-day", "13:05 wraps ✓", "13:00 Slice the loaf for 5 minutes. ▪ pinned to 13:00")
	s.late(path, "11:30", nil, []string{"1"})
	s.shows(path+"/shoot-day", "Slice the loaf", "is too late for its fixed time", "14:30 wraps")
}

func TestABadTimeKeepsTheTicks(t *testing.T) {
	s, path := startLoaf(t, 1)
	for _, now := range []string{"", "noonish"} {
		got := s.late(path, now, []string{"1"}, []string{"2"})
		if got.status != http.StatusUnprocessableEntity {
			t.Fatalf("%q = %d, want 422", now, got.status)
		}
		for _, tick := range []string{`name="done" value="batch=shoot&amp;step=1+" checked`, `name="begun" value="batch=shoot&amp;step=2+" checked`} {
			if !strings.Contains(got.body, tick) {
				t.Errorf("%q has lost the tick %s", now, tick)
			}
		}
	}
}

// After midnight the clock goes on.
func TestRunningLateAfterMidnight(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.setDay(path, "begin", "22:00")
	s.late(path, "00:30", []string{"1"}, []string{"2"})
	s.shows(path+"/shoot-day", "1 step done, 1 under way", "01:30 next day wraps")
}
