package script

import (
	"math"

	"benchproof/kitchen/episode"
)

// What a word of the cut is if it is none of the script's: unknown, or one that
// says nothing, such as "the", and parts no two words that follow each other.
const (
	unknown = -1
	silent  = -2
)

// lexicon numbers the words of a script and its recipe, and tells where the cut
// says them.
type lexicon struct {
	words  []spokenWord
	ids    map[string]int32 // by key
	said   []int32          // for each word of the cut
	before []int32          // the word before it that says something
	weight []float64        // of each word: about 3 for one said once, 1 for one said often, 0 if the cut does not say it
}

func newLexicon(words []spokenWord, segments []episode.Segment, steps []string) *lexicon {
	l := &lexicon{words: words, ids: map[string]int32{}}
	for _, s := range segments {
		l.add(s.Title)
		l.add(s.Narration)
	}
	for _, step := range steps {
		l.add(step)
	}
	l.listen()
	return l
}

func (l *lexicon) add(text string) {
	for _, key := range keysOf(text) {
		if _, ok := l.ids[key]; !ok {
			l.ids[key] = int32(len(l.ids))
		}
	}
}

// listen finds the words in the cut, and weighs each by how often it is said.
func (l *lexicon) listen() {
	l.said, l.before = make([]int32, len(l.words)), make([]int32, len(l.words))
	times := make([]int, len(l.ids))
	last := int32(unknown)
	for i, w := range l.words {
		l.before[i] = last
		id, ok := l.ids[w.key]
		switch {
		case w.key == "":
			l.said[i] = silent
			continue
		case ok:
			times[id]++
		default:
			id = unknown
		}
		l.said[i], last = id, id
	}
	l.weight = make([]float64, len(l.ids))
	n := float64(len(l.words))
	for id, count := range times {
		if count > 0 {
			l.weight[id] = 3 * math.Log(1+n/float64(20*count)) / math.Log(1+n/20)
		}
	}
}

// inOrder lists the words of a text that say something, in their order and as
// often as they stand there.
func (l *lexicon) inOrder(text string) []int32 {
	var ids []int32
	for _, word := range WordsOf(text) {
		if id, ok := l.ids[wordKey(word)]; ok {
			ids = append(ids, id)
		}
	}
	return ids
}

// three gives the word at an index of the cut and the two before it.
func (l *lexicon) three(at int) [3]string {
	return [3]string{l.words[at-2].text, l.words[at-1].text, l.words[at].text}
}
