package script

import "slices"

// pair is one word that stands in two lists of words.
type pair struct {
	in     int // index in the one
	at     int // index in the other
	weight float64
}

// heaviestCommon gives the greatest weight of a common subsequence of two lists
// of words, by the pairs alone: the heaviest increasing chain, with a Fenwick
// tree of best weights by the place in the other list. It costs
// O(pairs × log words); pairs are sorted by at, then by falling in.
func heaviestCommon(pairs []pair, words int) (weight float64, last []int) {
	best := make([]float64, words+1) // best weight of a chain whose last in is below an index
	who := make([]int, words+1)
	for i := range who {
		who[i] = -1
	}
	came := make([]int, len(pairs))
	total, end := 0.0, -1
	for p, here := range pairs {
		value, from := 0.0, -1
		for k := here.in; k > 0; k -= k & -k {
			if best[k] > value {
				value, from = best[k], who[k]
			}
		}
		value += here.weight
		came[p] = from
		for k := here.in + 1; k <= words; k += k & -k {
			if value > best[k] {
				best[k], who[k] = value, p
			}
		}
		if value > total {
			total, end = value, p
		}
	}
	for p := end; p >= 0; p = came[p] {
		last = append(last, p)
	}
	slices.Reverse(last)
	return total, last
}
