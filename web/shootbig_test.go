package web_test

import (
	"fmt"
	"net/http"
	"net/url"
	"strings"
	"testing"
)

// longRecipe has so many steps in parts of ten that can be made side by side.
func longRecipe(steps int) string {
	var b strings.Builder
	b.WriteString("Feast\n")
	for n := range steps {
		if n%10 == 0 {
			fmt.Fprintf(&b, "\nFor the dish %d:\n\n500 g flour\n\n", n/10+1)
		}
		switch n % 3 {
		case 0:
			fmt.Fprintf(&b, "Knead the dough for %d minutes.\n", 5+n%7)
		case 1:
			fmt.Fprintf(&b, "Bake at 200 °C for %d minutes.\n", 10+n%11)
		default:
			fmt.Fprintf(&b, "Leave to rest for %d minutes.\n", 20+n%13)
		}
	}
	return b.String()
}

// The same day gives the same plan on the sheet and in its files, as long as the
// search ends by its steps and not by its time.
func TestTheSameDayGivesTheSamePlan(t *testing.T) {
	s, path := startLoaf(t, 4)
	s.film(3, "table, low lamp")
	s.film(5, "overhead")
	first := s.get(path + "/shoot-day.csv").body
	for range 3 {
		if again := s.get(path + "/shoot-day.csv").body; again != first {
			t.Fatalf("another plan:\n%s\nthan before:\n%s", again, first)
		}
	}
}

// The hours above the chart stay apart however long the day is, and what ends
// after midnight says so.
func TestALongDayStaysReadable(t *testing.T) {
	tests := []struct {
		name, minutes string
		wraps         string
		ticks         int
	}{
		{"ten hours and one minute", "10 hours", "19:01 wraps", 12},
		{"fourteen hours", "14 hours", "23:01 wraps", 8},
		{"into the night", "16 hours", "01:01 next day wraps", 9},
		{"three days", "72 hours", "09:01 3 days on wraps", 7},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			s := newSite(t)
			path := s.start("Cure", "Cure\n\n500 g salmon\n20 g salt\n\nRub the salt into the salmon for 1 minute.\nChill the salmon for "+tt.minutes+".\n")
			s.setMakes(1)
			page := s.shows(path+"/shoot-day", tt.wraps)
			if got := strings.Count(page, `class="tick-line"`); got != tt.ticks {
				t.Errorf("%d hours are marked, want %d", got, tt.ticks)
			}
		})
	}
}

// BenchmarkShootDayOf bounds the sheet of days with many tasks: four batches of
// the recipe.
func BenchmarkShootDayOf(b *testing.B) {
	for _, steps := range []int{10, 40, 150} {
		b.Run(fmt.Sprintf("steps=%d", steps), func(b *testing.B) {
			s := newSite(b)
			path := s.start("Feast", longRecipe(steps))
			s.setMakes(4)
			for _, query := range []string{"", "?swapouts=1"} {
				b.Run("query="+query, func(b *testing.B) {
					b.ReportAllocs()
					for b.Loop() {
						if got := s.get(path + "/shoot-day" + query); got.status != http.StatusOK || !strings.Contains(got.body, "day-plan") {
							b.Fatalf("the sheet = %d", got.status)
						}
					}
				})
			}
		})
	}
}

// BenchmarkRunningLate bounds replanning a day of 80 tasks from a minute on,
// some of them done: the press of the button until the answer.
func BenchmarkRunningLate(b *testing.B) {
	s := newSite(b)
	path := s.start("Feast", longRecipe(20))
	s.setMakes(4)
	done := url.Values{"done": {"batch=shoot+1&step=1+Dish+1", "batch=shoot+2&step=1+Dish+1"}}
	b.ReportAllocs()
	for n := 0; b.Loop(); n++ {
		done.Set("now", fmt.Sprintf("10:%02d", n%60)) // another day each time
		if got := s.send(path+"/shoot-day/late", done); got.status != http.StatusSeeOther {
			b.Fatalf("replanning = %d\n%s", got.status, words(got.body))
		}
	}
}
