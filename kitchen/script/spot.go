package script

import (
	"cmp"
	"math"
	"slices"
	"time"
)

// mostPauses is how many of the longest silences are rare, for each segment.
const mostPauses = 3

// spot is somewhere that a segment may begin: with a caption or a sentence.
type spot struct {
	word    int // index in the cut
	at      time.Duration
	opening float64 // how much speaks for a beginning here, whatever is said
}

// mostSpots bounds the spots of a cut, and with them the time taken.
const mostSpots = 2000

// spotsOf lists the spots of a cut; where they are too many for so many
// segments, the likelier ones.
func spotsOf(words []spokenWord, captions Captions, segments int) []spot {
	all := allSpots(words, captions)
	weighOpenings(words, all, segments)
	return likelySpots(all, segments)
}

func allSpots(words []spokenWord, captions Captions) []spot {
	var all []spot
	for i, w := range words {
		if i == 0 || w.opens || words[i-1].cue != w.cue {
			all = append(all, spot{word: i, at: captions.Cues[w.cue].Start})
		}
	}
	return all
}

// rarity is, for each spot, the logarithm of how few others have so long a
// silence before them, against some number; 0 for more than that. People who
// breathe long, and cuts without any silence, are measured by themselves.
func rarity(words []spokenWord, spots []spot, against int) []float64 {
	pauses := make([]time.Duration, len(spots))
	for i, s := range spots {
		pauses[i] = words[s.word].pause
	}
	sorted := slices.Clone(pauses)
	slices.Sort(sorted)
	rare := make([]float64, len(spots))
	for i, pause := range pauses {
		shorter, _ := slices.BinarySearch(sorted, pause)
		rare[i] = max(math.Log(float64(against)/float64(len(spots)-shorter)), 0)
	}
	return rare
}

// likelySpots thins spots that are too many to the likeliest of each few.
func likelySpots(all []spot, segments int) []spot {
	each := max((len(all)*segments+mostCells-1)/mostCells, (len(all)+mostSpots-1)/mostSpots)
	if each < 2 {
		return all
	}
	kept := slices.Clone(all[:1])
	for some := range slices.Chunk(all[1:], each) {
		kept = append(kept, slices.MaxFunc(some, func(a, b spot) int { return cmp.Compare(a.opening, b.opening) }))
	}
	return kept
}
