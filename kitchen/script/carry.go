package script

import (
	"cmp"
	"slices"
	"time"
)

// carryReach is how many words before and behind a place tell where it went.
const carryReach = 60

// Carry finds where a place in one cut has gone in another: a chapter's time
// that a person set by hand stays with the words said there when the cut is
// changed and its captions are read again. It goes by the words around the
// place, by the greatest common subsequence with what is said in the new cut.
// ok is false where too few of them are left; at is then the old time.
func Carry(at time.Duration, old, renewed Captions) (time.Duration, bool) {
	before, behind := spokenWords(old), spokenWords(renewed)
	here := slices.IndexFunc(before, func(w spokenWord) bool { return w.at >= at })
	if here < 0 || len(behind) == 0 {
		return at, false
	}
	from, to := max(0, here-carryReach), min(len(before), here+carryReach)
	near := before[from:to]
	places := map[string][]int{}
	for i, w := range near {
		if w.key != "" {
			places[w.key] = append(places[w.key], i)
		}
	}
	window, ok := densest(behind, places, to-from)
	if !ok {
		return at, false
	}
	var pairs []pair
	for i := window; i < min(len(behind), window+2*(to-from)); i++ {
		for _, in := range places[behind[i].key] {
			pairs = append(pairs, pair{in: in, at: i, weight: 1})
		}
	}
	slices.SortFunc(pairs, func(a, b pair) int { return cmp.Or(cmp.Compare(a.at, b.at), cmp.Compare(b.in, a.in)) })
	weight, links := heaviestCommon(pairs, len(near))
	if weight < 6 && weight < float64(len(places))/2 {
		return at, false
	}
	return shifted(at, near, behind, pairs, links, here-from), true
}

// densest finds where in the words most of the places' keys stand close
// together: the start of a window of twice the width.
func densest(words []spokenWord, places map[string][]int, width int) (start int, ok bool) {
	hits, best := 0, 0
	span := 2 * width
	for i := range words {
		if len(places[words[i].key]) > 0 {
			hits++
		}
		if i >= span && len(places[words[i-span].key]) > 0 {
			hits--
		}
		if hits > best {
			best, start = hits, max(0, i-span+1)
		}
	}
	return start, best > 0
}

// shifted moves a time by what the linked word nearest to it moved.
func shifted(at time.Duration, near, behind []spokenWord, pairs []pair, links []int, here int) time.Duration {
	nearest := pairs[links[0]]
	for _, l := range links {
		if p := pairs[l]; abs(p.in-here) < abs(nearest.in-here) {
			nearest = p
		}
	}
	return max(at+behind[nearest.at].at-near[nearest.in].at, 0)
}

func abs(n int) int {
	if n < 0 {
		return -n
	}
	return n
}
