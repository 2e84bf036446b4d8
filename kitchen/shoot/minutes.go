package shoot

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Minutes that are planned for a step that does not say how long it takes;
// common practice, no source.
const (
	guessHands = 5
	guessOven  = 15 // heating up
	guessOther = 5
)

// Minutes is how long a step takes: at least, probably, at most. They are
// whole; Guess says that the step itself tells nothing.
type Minutes struct {
	From, Likely, To int
	Guess            bool
}

// MinutesOf reads a step's minutes. The likely value is the middle of the
// range; parts of a minute count as a whole one, but at least rounds down.
func MinutesOf(s recipe.Step) Minutes {
	if !s.HasMinutes {
		guess := guessOther
		switch {
		case s.Station == "oven" && !s.HandsOn:
			guess = guessOven
		case s.HandsOn:
			guess = guessHands
		}
		return Minutes{guess, guess, guess, true}
	}
	middle := s.Minutes.From.Add(s.Minutes.To).Quo(measure.Whole(2))
	from, _ := s.Minutes.From.Int()
	return Minutes{From: withinWeek(from), Likely: wholeUp(middle), To: wholeUp(s.Minutes.To)}
}

// less is what is left after so many minutes.
func (m Minutes) less(minutes int) Minutes {
	m.From, m.Likely, m.To = max(0, m.From-minutes), max(0, m.Likely-minutes), max(0, m.To-minutes)
	return m
}

// maxStep is the most minutes that a step is planned with: a week. It keeps a
// slip of the pen from making a plan without end.
const maxStep = 7 * 24 * 60

func wholeUp(n measure.Number) int {
	whole, ok := n.Ceil().Int()
	if !ok {
		return maxStep
	}
	return withinWeek(whole)
}

func withinWeek(minutes int64) int { return int(min(max(minutes, 0), maxStep)) }
