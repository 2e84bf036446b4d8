package episode_test

import (
	"testing"

	"benchproof/kitchen/episode"
)

func TestReadClock(t *testing.T) {
	tests := []struct {
		name, text string
		want       int
		ok         bool
	}{
		{"two digits", "09:40", 580, true},
		{"one digit", "9:40", 580, true},
		{"a point", "9.40", 580, true},
		{"no mark", "0940", 580, true},
		{"an hour alone", "9", 540, true},
		{"blanks around", " 14:00 ", 840, true},
		{"midnight", "0:00", 0, true},
		{"the day's end", "24:00", 1440, true},
		{"beyond the day", "24:01", 0, false},
		{"sixty minutes", "9:60", 0, false},
		{"one digit of minutes", "9:4", 0, false},
		{"seconds too", "9:40:00", 0, false},
		{"a sign", "-9:40", 0, false},
		{"a plus", "+9", 0, false},
		{"words", "nine", 0, false},
		{"nothing", "", 0, false},
		{"no hour", ":30", 0, false},
		{"far too long", "99999999999999999999", 0, false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got, ok := episode.ReadClock(tt.text)
			if ok != tt.ok || ok && got != tt.want {
				t.Errorf("ReadClock(%q) = %d, %v, want %d, %v", tt.text, got, ok, tt.want, tt.ok)
			}
		})
	}
}

// What Clock writes reads back as the same minute.
func TestClockReadsBack(t *testing.T) {
	for minutes := range episode.DayMinutes + 1 {
		if got, ok := episode.ReadClock(episode.Clock(minutes)); !ok || got != minutes {
			t.Fatalf("ReadClock(%q) = %d, %v, want %d", episode.Clock(minutes), got, ok, minutes)
		}
	}
	if got := episode.Clock(episode.DayMinutes + 65); got != "01:05" {
		t.Errorf("the next day's 01:05 is written %q", got)
	}
	if got := episode.Clock(-30); got != "23:30" {
		t.Errorf("half an hour before midnight is written %q", got)
	}
}
