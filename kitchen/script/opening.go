package script

import (
	_ "embed"
	"strconv"
	"sync"
	"time"

	"benchproof/kitchen/logistic"
)

// How people begin on something new, and what they say before it, was learnt: a spot has
// traits, of its words, of the silence before it and of how the talk turns, and the sum of
// their weights is what speaks for a segment's beginning there. The weights stand in
// opening.txt. Learn them anew after a change of the traits or of the cuts in view:
//
//	go test ./kitchen/script -run TestOpeningWeights -update

//go:embed opening.txt
var openingWeights string

var openingModel = sync.OnceValue(func() *logistic.Model { return logistic.MustRead(openingWeights) })

// openingTraits visits the traits of a spot; the bytes of a trait are only the visitor's until
// the next. rare and turning are those of rarity and turns.
type openingTraits struct {
	words  []spokenWord
	manner string // what every trait begins with
	visit  func(trait []byte)
	trait  []byte
}

// hurried begins the traits of a cut in which hardly anybody pauses: there the words alone
// must tell.
const hurried = "hurried "

// leastPause is the shortest silence that a beginning may have before it.
const leastPause = 400 * time.Millisecond

// mannerOf tells whether there are fewer pauses than segments.
func mannerOf(words []spokenWord, spots []spot, segments int) string {
	pauses := 0
	for _, s := range spots {
		if words[s.word].pause >= leastPause {
			pauses++
		}
	}
	if pauses < segments {
		return hurried
	}
	return ""
}

// How many words on each side of a spot speak wherever they stand.
const (
	openingNear   = 8
	openingBefore = 8
)

// Bounds of what is measured, each of which is a trait when it is passed.
var (
	pausePassed = []float64{0.1, 0.25, 0.4, 0.6, 0.8, 1, 1.3, 1.6, 2, 2.5, 3, 4}
	rarePassed  = []float64{0, 0.3, 0.6, 1, 1.5, 2, 2.5, 3}
	turnPassed  = []float64{-1, -0.5, 0, 0.5, 1, 1.5, 2}
)

// of visits the traits of the spot at a word.
func (o *openingTraits) of(at int, rare, turning float64) {
	o.tell("first:", o.word(at))
	o.tell("second:", o.word(at+1))
	o.tell("third:", o.word(at+2))
	o.tell("pair:", o.word(at), " ", o.word(at+1))
	o.tell("second pair:", o.word(at+1), " ", o.word(at+2))
	o.tell("last:", o.word(at-1))
	o.tell("last but one:", o.word(at-2))
	o.tell("last pair:", o.word(at-2), " ", o.word(at-1))
	for k := 3; k <= openingNear; k++ {
		o.tell("near:", o.word(at+k))
	}
	for k := 3; k <= openingBefore; k++ {
		o.tell("before:", o.word(at-k))
	}
	w := o.words[at]
	if w.opens {
		o.tell("sentence")
	}
	if at == 0 || o.words[at-1].cue != w.cue {
		o.tell("caption")
	}
	o.tell("spot")
	o.passed("pause>", w.pause.Seconds(), pausePassed)
	o.passed("rare>", rare, rarePassed)
	o.passed("turn>", turning, turnPassed)
}

// word gives the text of a word, which may lie before the cut or behind it.
func (o *openingTraits) word(k int) string {
	switch {
	case k < 0:
		return "^"
	case k >= len(o.words):
		return "$"
	}
	return o.words[k].text
}

func (o *openingTraits) tell(parts ...string) {
	o.trait = append(o.trait[:0], o.manner...)
	for _, part := range parts {
		o.trait = append(o.trait, part...)
	}
	o.visit(o.trait)
}

// passed tells the bounds that x passes.
func (o *openingTraits) passed(name string, x float64, bounds []float64) {
	for _, bound := range bounds {
		if x <= bound {
			break
		}
		o.trait = strconv.AppendFloat(append(append(o.trait[:0], o.manner...), name...), bound, 'f', -1, 64)
		o.visit(o.trait)
	}
}

// weighOpenings tells for each spot how much speaks for a beginning there.
func weighOpenings(words []spokenWord, spots []spot, segments int) {
	m := openingModel()
	rare, turning := rarity(words, spots, mostPauses*segments), turns(words, spots)
	sum := 0.0
	traits := openingTraits{words: words, manner: mannerOf(words, spots, segments), visit: func(trait []byte) { sum += m.WeightOf(trait) }}
	for i := range spots {
		sum = m.Weight(logistic.Bias)
		traits.of(spots[i].word, rare[i], turning[i])
		spots[i].opening = sum
	}
}
