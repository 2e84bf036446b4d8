package verify

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
)

// leastHeat is the least heat, in either scale, that is one of cooking.
var leastHeat = measure.Whole(40)

// heats finds heats of what is cooked that no step writes: "take it to 92 on the
// probe" where the recipe has no such thing.
func (j *judge) heats() {
	for i, s := range j.Said {
		if s.Kind == speech.Heat && j.isOpen(i) && j.finding[i] < 0 && s.Amount.From.Cmp(leastHeat) >= 0 {
			j.found(i, Finding{Kind: NotWritten})
		}
	}
}

// times finds waits that no step writes: "then it goes in the fridge for an hour".
func (j *judge) times() {
	for i, s := range j.Said {
		if s.Kind == speech.Time && (j.isOpen(i) || j.isIdle(i)) && j.finding[i] < 0 && !s.Each && s.Amount.From.Cmp(leastGrilled) >= 0 && s.Amount.To.Cmp(mostWait) <= 0 {
			j.found(i, Finding{Kind: NotWritten})
		}
	}
}

// The least time, in minutes, that is worth writing down, and the longest wait that is no
// season.
var (
	leastGrilled = measure.Whole(2)
	mostWait     = measure.Whole(31 * 24 * 60)
)

// isWaitBehind tells whether what is done to the food follows a time: "drop it in a bucket
// of water, 30 minutes, let it soak".
func (j *judge) isWaitBehind(i int) bool {
	return j.Text.NearBehind(j.Said[i].To, 4, "soak", "steep", "marinate", "rest", "chill", "set", "rise", "prove", "grill", "broiler")
}

// isIdle tells whether time i differs from one that another number says rightly.
func (j *judge) isIdle(i int) bool {
	t := j.Ties[i]
	return t.Fact >= 0 && !t.Agrees && !t.Aside && j.isSaidRight(i)
}
