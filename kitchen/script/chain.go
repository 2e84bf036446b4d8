package script

import (
	"cmp"
	"slices"
)

// pair is one word that stands in a segment's script and in the cut.
type pair struct {
	in     int // index of the word in the script
	at     int // index in the cut
	weight float64
}

// What a chain of pairs pays: for every word of the cut passed over, for going
// back in the script, and how much a word counts that was met already.
const (
	costGap   = 0.12
	costBack  = 0.6
	lookBack  = 48
	onceAgain = 0.25
	forStep   = 0.8 // two words as far apart in the cut as in the script
	inStep    = 8   // words apart at most
)

// chain is a run of pairs that lie close together in the cut.
type chain struct {
	from, to int // words of the cut, the end excluded
	in       int // the script's word that the first pair matches
	score    float64
	words    float64 // weight of the different words of the script met
}

// chains finds the best runs of pairs, heaviest first, at most so many, none
// overlapping another. pairs are in the order of the cut. Each word of the
// script counts once in full within a chain's reach. It is the local alignment
// of Smith and Waterman on matches only, with the pairs looked back at bounded,
// so that it takes time in proportion to the pairs.
func chains(pairs []pair, most int) []chain {
	score := make([]float64, len(pairs))
	came := make([]int, len(pairs))
	for p, here := range pairs {
		best, from := 0.0, -1
		weight := here.weight
		for q := p - 1; q >= 0 && q >= p-lookBack; q-- {
			before := pairs[q]
			if before.at == here.at {
				continue
			}
			value := score[q] - costGap*float64(here.at-before.at-1)
			switch {
			case before.in == here.in:
				value -= weight * (1 - onceAgain)
			case before.in > here.in:
				value -= costBack
			case here.at-before.at == here.in-before.in && here.at-before.at <= inStep:
				value += forStep
			}
			if value > best {
				best, from = value, q
			}
		}
		score[p], came[p] = best+weight, from
	}
	return heaviest(pairs, score, came, most)
}

// heaviest walks back along the best chains.
func heaviest(pairs []pair, score []float64, came []int, most int) []chain {
	order := make([]int, len(pairs))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(a, b int) int { return cmp.Or(cmp.Compare(score[b], score[a]), cmp.Compare(a, b)) })
	var found []chain
	for _, p := range order {
		if len(found) == most {
			break
		}
		c := chain{to: pairs[p].at + 1, score: score[p]}
		met := map[int]bool{}
		var links []pair
		for q := p; q >= 0; q = came[q] {
			links = append(links, pairs[q])
			if !met[pairs[q].in] {
				met[pairs[q].in] = true
				c.words += pairs[q].weight
			}
		}
		slices.Reverse(links)
		first := links[head(links, c.words)]
		c.from, c.in = first.at, first.in
		if !slices.ContainsFunc(found, func(f chain) bool { return c.from < f.to && f.from < c.to }) {
			found = append(found, c)
		}
	}
	return found
}

// head is the index of the first link that surely belongs to a chain of such a
// weight: the few before a long gap were likely said about something else.
func head(links []pair, weight float64) int {
	first, sum := 0, 0.0
	for k := 1; k < len(links); k++ {
		sum += links[k-1].weight
		if sum > weight*0.35 {
			break
		}
		if gap := links[k].at - links[k-1].at; (sum - headCost*float64(links[k-1].at-links[first].at)) < headGap*float64(gap) {
			first, sum, weight = k, 0, weight-sum
		}
	}
	return first
}

// What the links before a gap must be worth for each word of theirs and of it.
const (
	headCost = 0.15
	headGap  = 0.25
)

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
