package solve_test

import (
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

const lastMinute = 60 // nothing below reaches further

// minuteByMinute is what of the stations is free, the plainest way.
type minuteByMinute struct {
	stations []project.Station
	used     [][lastMinute]int
}

func (m *minuteByMinute) fits(start, minutes int, needs []project.Need) bool {
	for minute := start; minute < start+minutes; minute++ {
		for _, n := range needs {
			if m.used[n.Station][minute]+n.Amount > m.stations[n.Station].CapacityAt(minute) {
				return false
			}
		}
	}
	return true
}

// drawStations draws up to two stations that change until minute 20.
func drawStations(t *rapid.T) []project.Station {
	var all []project.Station
	for r := range rapid.IntRange(1, 2).Draw(t, "stations") {
		s := project.Station{Name: string(rune('a' + r)), Capacity: rapid.IntRange(0, 3).Draw(t, "capacity")}
		minute := 0
		for range rapid.IntRange(0, 3).Draw(t, "changes") {
			minute += rapid.IntRange(1, 6).Draw(t, "after")
			s.Changes = append(s.Changes, project.Level{From: minute, Capacity: rapid.IntRange(0, 3).Draw(t, "level")})
		}
		all = append(all, s)
	}
	return all
}

func drawNeeds(t *rapid.T, stations int) []project.Need {
	var needs []project.Need
	for r := range stations {
		if amount := rapid.IntRange(0, 2).Draw(t, "amount"); amount > 0 {
			needs = append(needs, project.Need{Station: r, Amount: amount})
		}
	}
	return needs
}

// The first and the last start that a timeline gives are those that are found
// minute by minute, whatever is put into it.
func TestATimelineIsMinuteByMinute(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		stations := drawStations(t)
		line, plain := solve.NewTimeline(stations), minuteByMinute{stations, make([][lastMinute]int, len(stations))}
		for range rapid.IntRange(1, 8).Draw(t, "pieces") {
			needs := drawNeeds(t, len(stations))
			from, minutes := rapid.IntRange(0, 25).Draw(t, "from"), rapid.IntRange(0, 5).Draw(t, "minutes")
			first, last := solve.Never, -1
			for start := lastMinute - 6; start >= 0; start-- {
				if !plain.fits(start, minutes, needs) {
					continue
				}
				if start >= from {
					first = start
				}
				if start <= from {
					last = max(last, start)
				}
			}
			if got := line.Earliest(from, minutes, needs); got != first {
				t.Fatalf("earliest from %d: %d, want %d", from, got, first)
			}
			if got := line.Latest(from, minutes, needs); got != last {
				t.Fatalf("latest up to %d: %d, want %d", from, got, last)
			}
			if first == solve.Never || first > 30 {
				continue
			}
			line.Occupy(first, minutes, needs)
			for _, n := range needs {
				for minute := first; minute < first+minutes; minute++ {
					plain.used[n.Station][minute] += n.Amount
				}
			}
		}
	})
}

// What is put into a copy is not in the timeline it is of.
func TestACopyOfATimelineIsItsOwn(t *testing.T) {
	one := []project.Need{{Station: 0, Amount: 1}}
	line := solve.NewTimeline([]project.Station{{Name: "oven", Capacity: 1}})
	line.Occupy(10, 5, one)
	other := solve.NewTimeline([]project.Station{{Name: "hob", Capacity: 9}, {Name: "hands", Capacity: 2}})
	other.Occupy(0, 40, one)
	line.Copy(other)
	other.Occupy(0, 10, one)
	if got := line.Earliest(0, 10, one); got != 0 {
		t.Errorf("the oven is free from %d on, want 0", got)
	}
	if got := other.Earliest(0, 10, one); got != 15 {
		t.Errorf("in the copy it is free from %d on, want 15", got)
	}
}

// Forbidden times, as a station that is closed in just those minutes, with
// changes in order.
func TestForbiddenTimesAreAStation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var spans []project.Span
		for range rapid.IntRange(1, 5).Draw(t, "spans") {
			from := rapid.IntRange(-4, 25).Draw(t, "from")
			spans = append(spans, project.Span{From: from, To: from + rapid.IntRange(1, 8).Draw(t, "for")})
		}
		s := solve.Closed(spans)
		s.Name = "closed"
		if err := (project.Project{Stations: []project.Station{s}}).Check(); err != nil {
			t.Fatal(err)
		}
		for minute := range 40 {
			want := 1
			for _, span := range spans {
				if span.From <= minute && minute < span.To {
					want = 0
				}
			}
			if got := s.CapacityAt(minute); got != want {
				t.Fatalf("in minute %d it has %d, want %d", minute, got, want)
			}
		}
	})
}

// The minute by which a station has given so many unit-minutes is found by
// adding up what it has, minute by minute.
func TestWhenAStationHasDelivered(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStations(t)[0]
		from, sum := rapid.IntRange(0, 25).Draw(t, "from"), rapid.IntRange(1, 40).Draw(t, "sum")
		want, given := 0, 0
		for minute := from; minute < 200; minute++ {
			if given += s.CapacityAt(minute); given >= sum {
				want = minute + 1
				break
			}
		}
		if got := solve.Delivered(s, from, sum); got != want {
			t.Fatalf("from %d on it has given %d by minute %d, want %d", from, sum, got, want)
		}
	})
}
