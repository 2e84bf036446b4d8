package script

import (
	"time"

	"benchproof/kitchen/episode"
)

// Edition is the edition of alignments, for its test.
const Edition = edition

// Opening is a spot where a segment may begin, with its traits.
type Opening struct {
	At     time.Duration
	Traits []string
}

// Openings gives those of a cut.
func Openings(captions Captions, segments []episode.Segment) []Opening {
	words := spokenWords(captions)
	spots := allSpots(words, captions)
	rare, turning := rarity(words, spots, mostPauses*len(segments)), turns(words, spots)
	var all []Opening
	for i, s := range spots {
		o := Opening{At: s.at}
		traits := openingTraits{words: words, manner: mannerOf(words, spots, len(segments)), visit: func(trait []byte) { o.Traits = append(o.Traits, string(trait)) }}
		traits.of(s.word, rare[i], turning[i])
		all = append(all, o)
	}
	return all
}
