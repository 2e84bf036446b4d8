package about

import (
	"slices"

	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// What it costs to move through the recipe, against what a rare word of a place
// earns (its weight, 1 to 4). Tuned on the first two thirds of the transcripts.
const (
	costNext    = 0.8 // to the place behind
	costJump    = 4.0 // anywhere else
	heardWeight = 2.0 // what a number earns that says what a place has
	listLess    = 0.4 // the share that a list of ingredients earns less than a step: it names everything
)

// place finds, for every word of the text, the most likely place in the recipe:
// an index into states. It is the best path by dynamic programming, on which
// each word that a place has earns its weight and each move costs. nil without
// states.
func place(b *written.Book, t speech.Text, heard map[int][]int) []int {
	n := len(b.States)
	if n == 0 {
		return nil
	}
	var events []int // words that some place has
	for i, w := range t.Words {
		if word := written.Meaning(w); len(heard[i]) > 0 || word != "" && len(b.Vocab[word]) > 0 {
			events = append(events, i)
		}
	}
	score, next := make([]float64, n), make([]float64, n)
	for s := range score {
		score[s] = -0.1 * float64(s)
	}
	came := make([]uint16, len(events)*n)
	for e, i := range events {
		best := 0
		for s := range score {
			if score[s] > score[best] {
				best = s
			}
		}
		for s := range score {
			from, value := s, score[s]
			if s > 0 && score[s-1]-costNext > value {
				from, value = s-1, score[s-1]-costNext
			}
			if score[best]-costJump > value {
				from, value = best, score[best]-costJump
			}
			next[s], came[e*n+s] = value, uint16(from)
		}
		word := written.Meaning(t.Words[i])
		for _, s := range b.Vocab[word] {
			if next[s] += b.Weights[word]; b.States[s].Step < 0 {
				next[s] -= b.Weights[word] * listLess
			}
		}
		for _, s := range heard[i] {
			next[s] += heardWeight
		}
		score, next = next, score
	}
	return spread(t, events, came, n, score)
}

// spread walks back along the best path and gives each word the place of the
// nearest event before it.
func spread(t speech.Text, events []int, came []uint16, n int, score []float64) []int {
	at := 0
	for s := range score {
		if score[s] > score[at] {
			at = s
		}
	}
	path := make([]int, len(t.Words))
	end := len(t.Words)
	for e := len(events) - 1; e >= 0; e-- {
		for i := events[e]; i < end; i++ {
			path[i] = at
		}
		end = events[e]
		at = int(came[e*n+at])
	}
	for i := 0; i < end; i++ {
		path[i] = at
	}
	return path
}

// heard gives the places that have just what is said, by the last word of each such
// number: amounts of lines, and times and heats that are written only once.
func (r *Reading) heard() map[int][]int {
	at := map[int][]int{}
	for i, s := range r.Said {
		if s.Struck || r.Elsewhere[i] > mostHeard {
			continue
		}
		if n := r.Ties[i].Item; n >= 0 {
			if r.EqualItem(s, n) {
				at[s.To-1] = r.placesOf(n)
			}
			continue
		}
		if n := r.onlyEqual(s); n >= 0 && r.Book.Facts[n].Place >= 0 && r.sharedWords(r.Book.Facts[n], r.around(i)) >= leastHeard {
			at[s.To-1] = []int{r.Book.Facts[n].Place}
		}
	}
	return at
}

// leastHeard is how much a time or a heat must have in common with what is written, besides
// the value, to tell where the talk is.
const leastHeard = 0.2

// mostHeard is how likely a number may be about something else and still tell where
// in the recipe the talk is.
const mostHeard = 0.9

// placesOf gives the steps that use item n.
func (r *Reading) placesOf(n int) []int {
	var all []int
	for k, state := range r.Book.States {
		if state.Step >= 0 && slices.Contains(state.Uses, n) {
			all = append(all, k)
		}
	}
	return all
}

// onlyEqual is the only time or heat that a number equals, −1 for none or several.
func (r *Reading) onlyEqual(s speech.Said) int {
	only := -1
	if s.Kind != speech.Time && s.Kind != speech.Heat || s.Article {
		return -1
	}
	for n, f := range r.Book.Facts {
		if !EqualFact(s, f) || f.Total {
			continue
		}
		if only >= 0 {
			return -1
		}
		only = n
	}
	return only
}
