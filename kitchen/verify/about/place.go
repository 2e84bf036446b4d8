package about

import (
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// What it costs to move through the recipe, against what a rare word of a place
// earns (its weight, 1 to 4). Tuned on the first two thirds of the transcripts.
const (
	costNext = 0.8 // to the place behind
	costJump = 4.0 // anywhere else
	listLess = 0.4 // the share that a list of ingredients earns less than a step: it names everything
)

// place finds, for every word of the text, the most likely place in the recipe:
// an index into states. It is the best path by dynamic programming, on which
// each word that a place has earns its weight and each move costs. nil without
// states.
func place(b *written.Book, t speech.Text) []int {
	n := len(b.States)
	if n == 0 {
		return nil
	}
	var events []int // words that some place has
	for i, w := range t.Words {
		if word := written.Meaning(w); word != "" && len(b.Vocab[word]) > 0 {
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
