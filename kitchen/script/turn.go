package script

import "math"

// turnReach is how many words that say something are compared on either side of
// a spot.
const turnReach = 45

// turns tells for each spot how much what is said behind it differs from what is
// said before, in deviations from the mean of the cut: talk turns to something
// new where the words change. The idea is that of blocks compared by their
// words' cosine: M. A. Hearst, TextTiling, Computational Linguistics 23-1, 1997.
func turns(words []spokenWord, spots []spot) []float64 {
	b := newBlocks(words)
	apart := make([]float64, len(spots))
	mean := 0.0
	for i, s := range spots {
		for b.next() < s.word {
			b.shift()
		}
		apart[i] = 1 - b.alike()
		mean += apart[i] / float64(len(spots))
	}
	varied := 0.0
	for _, a := range apart {
		varied += (a - mean) * (a - mean) / float64(len(spots))
	}
	for i := range apart {
		apart[i] = (apart[i] - mean) / max(math.Sqrt(varied), 1e-6)
	}
	return apart
}

// blocks are the words before a place and those behind it, counted.
type blocks struct {
	keys   []int     // of each word that says something: its number
	at     []int     // its index in the cut
	square []float64 // of each number: its weight's square
	here   int       // the first key behind the place

	before, behind []float64 // how often each number stands there
	both           float64   // the scalar product of the two
	long, far      float64   // the squares of their lengths
}

func newBlocks(words []spokenWord) *blocks {
	b := &blocks{}
	numbers := map[string]int{}
	for i, w := range words {
		if w.key == "" {
			continue
		}
		number, ok := numbers[w.key]
		if !ok {
			number = len(numbers)
			numbers[w.key] = number
			b.square = append(b.square, 0)
		}
		b.keys, b.at = append(b.keys, number), append(b.at, i)
		b.square[number]++
	}
	for number, times := range b.square {
		weight := math.Log(1 + float64(len(b.keys))/times)
		b.square[number] = weight * weight
	}
	b.before, b.behind = make([]float64, len(numbers)), make([]float64, len(numbers))
	for _, number := range b.keys[:min(turnReach, len(b.keys))] {
		b.far += b.count(b.behind, nil, number, 1)
	}
	return b
}

// next is the index in the cut of the first word behind the place.
func (b *blocks) next() int {
	if b.here == len(b.at) {
		return math.MaxInt
	}
	return b.at[b.here]
}

// shift moves the place on by one word.
func (b *blocks) shift() {
	number := b.keys[b.here]
	b.far += b.count(b.behind, b.before, number, -1)
	b.long += b.count(b.before, b.behind, number, 1)
	if out := b.here - turnReach; out >= 0 {
		b.long += b.count(b.before, b.behind, b.keys[out], -1)
	}
	if in := b.here + turnReach; in < len(b.keys) {
		b.far += b.count(b.behind, b.before, b.keys[in], 1)
	}
	b.here++
}

// count adds to how often a number stands in a block, and tells by how much the
// square of its length grows.
func (b *blocks) count(block, other []float64, number int, by float64) float64 {
	was := block[number]
	block[number] += by
	if other != nil {
		b.both += by * other[number] * b.square[number]
	}
	return (block[number]*block[number] - was*was) * b.square[number]
}

// alike is the cosine of the two blocks, 0 if one is empty: what was rounded on the
// way would be all there is of its length.
func (b *blocks) alike() float64 {
	if b.here == 0 || b.here == len(b.keys) {
		return 0
	}
	return b.both / math.Sqrt(b.long*b.far)
}
