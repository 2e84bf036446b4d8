package solve

import "slices"

// use is how many units of a station a task occupies.
type use struct{ station, amount int }

// timeline is how much of every station is free, as a step function of time.
// Piece k reaches from at[k] to at[k+1], the last one for ever.
type timeline struct {
	stations int
	at       []int // rising; at[0] is 0
	free     []int // stations figures a piece
}

// copyFrom makes t equal to s and keeps t's memory.
func (t *timeline) copyFrom(s *timeline) {
	t.stations = s.stations
	t.at = append(t.at[:0], s.at...)
	t.free = append(t.free[:0], s.free...)
}

// piece is the index of the piece in which a minute lies.
func (t *timeline) piece(minute int) int {
	lo, hi := 0, len(t.at)
	for hi-lo > 1 {
		if mid := (lo + hi) / 2; t.at[mid] <= minute {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo
}

func (t *timeline) has(piece int, uses []use) bool {
	free := t.free[piece*t.stations:]
	for _, u := range uses {
		if free[u.station] < u.amount {
			return false
		}
	}
	return true
}

// earliest gives the first start from a minute on at which uses are free for
// so many minutes; never if there is none.
func (t *timeline) earliest(from, minutes int, uses []use) int {
	if minutes == 0 || len(uses) == 0 {
		return from
	}
	start := from
	for k := t.piece(from); k < len(t.at); k++ {
		if t.at[k] >= start+minutes {
			return start
		}
		if !t.has(k, uses) {
			if k+1 == len(t.at) {
				return never
			}
			start = t.at[k+1]
		}
	}
	return start
}

// latest gives the last start up to a minute at which uses are free for so
// many minutes; −1 if there is none.
func (t *timeline) latest(upTo, minutes int, uses []use) int {
	if minutes == 0 || len(uses) == 0 {
		return upTo
	}
	end := upTo + minutes
	for k := t.piece(end - 1); k >= 0; k-- {
		if !t.has(k, uses) {
			end = t.at[k]
		}
		if end-minutes < 0 {
			return -1
		}
		if t.at[k] <= end-minutes {
			return end - minutes
		}
	}
	return -1
}

// occupy takes uses from start on for so many minutes; they must be free.
func (t *timeline) occupy(start, minutes int, uses []use) {
	if minutes == 0 || len(uses) == 0 {
		return
	}
	first := t.cut(start)
	last := t.cut(start + minutes)
	for k := first; k < last; k++ {
		for _, u := range uses {
			t.free[k*t.stations+u.station] -= u.amount
		}
	}
}

// cut begins a piece at a minute and gives its index.
func (t *timeline) cut(minute int) int {
	k := t.piece(minute)
	if t.at[k] == minute {
		return k
	}
	t.at = slices.Insert(t.at, k+1, minute)
	from := k * t.stations
	n := len(t.free)
	t.free = slices.Grow(t.free, t.stations)[:n+t.stations]
	copy(t.free[from+t.stations:], t.free[from:n])
	return k + 1
}
