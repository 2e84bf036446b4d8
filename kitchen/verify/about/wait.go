package about

import (
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// waits are verbs of what is left to itself, and where it is left.
var waits = speech.SetOf("chill cool prove rests freeze soak marinate steep set drain")

// IsWait tells whether the host orders that something be left for as long as number i
// says: a verb of waiting governs it, and nobody tells a story.
func (r *Reading) IsWait(i int) bool {
	s := r.Said[i]
	if !waits[written.Verb(r.Text, s)] || written.IsPartTime(r.Text, s) || within[r.leadOf(s)] || r.IsTold(s) {
		return false
	}
	for k := s.From - 1; k >= 0 && k >= s.From-4; k-- {
		if told[r.Text.At(k)] {
			return false // "the smell stayed for three weeks"
		}
	}
	return r.leadOf(s) == "for" || r.handled(s) > 0
}
