package episode

import (
	"fmt"
	"strconv"
	"strings"
	"time"
)

// ShootDay is what an episode's shoot day is planned with. Times are minutes
// from midnight, at most DayMinutes; 0 is none, for all but Begin.
type ShootDay struct {
	EpisodeID    int64
	On           time.Time // a date, midnight UTC; zero if not set
	Begin        int       // nothing but what is made ahead starts before it
	DoneBy       int       // plan backwards from here; 0: forwards from Begin
	Hands        int       // people who cook and are filmed, from 1
	HelperUntil  int       // when a helper leaves; 0: no helper
	LightUntil   int       // when the light has gone; 0: it stays
	SetupMinutes int       // minutes to put up a camera setup
	Now          int       // when what is left was last replanned, under way; 0: not begun
	People       string    // who comes, one a line
	Gear         string    // what films, one a line
	Props        string    // what stands in the picture, one a line
	Kitchen      Kitchen
	Revision     int // 0 until it is saved once
}

// Kitchen is what the day's kitchen holds. What is not listed (bench, fridge,
// freezer) takes whatever comes.
type Kitchen struct {
	Mixers     int // 0 or more
	Rings      int // of the hob
	Ovens      int
	OvenHolds  int // makes that fit into one oven, from 1
	CleanBench int // minutes of cleaning down when a make leaves it; 0: none
	CleanMixer int
	CleanHob   int
}

// DayMinutes is how many minutes a day has: midnight at its end, "24:00".
const DayMinutes = 24 * 60

// NewShootDay is the shoot day of an episode for which nothing was said.
func NewShootDay(episodeID int64) ShootDay {
	return ShootDay{
		EpisodeID: episodeID, Begin: 9 * 60, Hands: 1, SetupMinutes: 5,
		Kitchen: Kitchen{Mixers: 1, Rings: 2, Ovens: 1, OvenHolds: 1},
	}
}

// Clock writes minutes from midnight on the clock: "09:40". From the next
// midnight on it begins again; the end of the first day itself is "24:00".
func Clock(minutes int) string {
	if minutes == DayMinutes {
		return "24:00"
	}
	minutes = (minutes%DayMinutes + DayMinutes) % DayMinutes
	return fmt.Sprintf("%02d:%02d", minutes/60, minutes%60)
}

// ReadClock reads a time of day from 0:00 to 24:00, written "9:40", "09.40",
// "0940" or "9", as minutes from midnight; ok is false for all else.
func ReadClock(text string) (minutes int, ok bool) {
	hour, minute, parted := strings.Cut(strings.Replace(strings.TrimSpace(text), ".", ":", 1), ":")
	if !parted && len(hour) == 4 {
		hour, minute, parted = hour[:2], hour[2:], true
	}
	if !parted {
		minute = "00"
	}
	h, okHour := digits(hour, 1, 2)
	m, okMinute := digits(minute, 2, 2)
	minutes = h*60 + m
	return minutes, okHour && okMinute && m < 60 && minutes <= DayMinutes
}

// digits reads a number of at least and at most so many digits.
func digits(text string, least, most int) (n int, ok bool) {
	if len(text) < least || len(text) > most || strings.Trim(text, "0123456789") != "" {
		return 0, false
	}
	n, err := strconv.Atoi(text)
	return n, err == nil
}
