package script

import (
	"slices"

	"benchproof/kitchen/episode"
)

// showing is which steps of a recipe the segments likely show.
type showing struct {
	keys   [][]string  // of each step
	likely [][]float64 // for each step and segment; see shown
}

// add puts in how surely a segment holds the words of the steps it may show.
func (s showing) add(surely map[string]float64, segment int) {
	for j, keys := range s.keys {
		for _, key := range keys {
			surely[key] = max(surely[key], s.likely[j][segment])
		}
	}
}

// findOthers finds the segments without narration: those between two that were
// found, in the running order, in the stretch of the cut from the first of the
// two to whatever is found next in the cut.
func (a *aligner) findOthers(segments []episode.Segment, steps []string, captions Captions, narrated []found) []found {
	if len(a.narrated) == len(segments) {
		return nil
	}
	shows := showing{likely: shown(segments, steps)}
	for _, step := range steps {
		shows.keys = append(shows.keys, keysOf(step))
	}
	var others []found
	for _, s := range a.stretches(segments, narrated) {
		p := placing{a: a, segments: s.segments, first: s.first, end: s.to, spots: a.beginnings(captions, s.from, s.to, len(s.segments))}
		p.weigh(segments, shows, captions.Cues[a.words[s.to-1].cue].End)
		w := p.walk()
		for k, begin := range w.begins() {
			if begin >= 0 && !isNarrated(segments[s.segments[k]]) {
				others = append(others, found{s.segments[k], p.spots[begin].word, w.confidence(k, begin)})
			}
		}
	}
	return others
}

// stretch is a part of the cut and the segments to be found in it.
type stretch struct {
	from, to int   // words, to excluded
	segments []int // without narration, but for the first if that is found already
	first    bool  // it is, and the stretch begins with it
}

// stretches parts the cut at the segments found and gives each part to those
// that follow in the running order.
func (a *aligner) stretches(segments []episode.Segment, narrated []found) []stretch {
	begins := make(map[int]int, len(narrated))
	var cuts []int
	for _, f := range narrated {
		begins[f.segment] = f.word
		cuts = append(cuts, f.word)
	}
	cuts = append(cuts, len(a.words))
	slices.Sort(cuts)
	upTo := func(from int) int {
		i, _ := slices.BinarySearch(cuts, from+1)
		return cuts[i]
	}
	all := []stretch{{from: 0, to: cuts[0]}}
	for i, s := range segments {
		at, isFound := begins[i]
		last := &all[len(all)-1]
		switch {
		case isFound:
			all = append(all, stretch{from: at, to: upTo(at), segments: []int{i}, first: true})
		case !isNarrated(s):
			last.segments = append(last.segments, i)
		}
	}
	return slices.DeleteFunc(all, func(s stretch) bool {
		return s.from == s.to || len(s.segments) == 0 || len(s.segments) == 1 && s.first
	})
}
