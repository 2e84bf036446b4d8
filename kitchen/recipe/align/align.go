// Package align matches two lists in order, as a person compares two versions
// of a text: what is alike stands side by side, the rest was added or removed.
package align

import "strings"

// Pair is one match: indexes into the old and the new list.
type Pair struct{ Old, New int }

// Pairs gives the matches of two lists of n and m things, in order, that together
// are most alike. alike tells how much two things are the same, 0 to 1; under
// least they are never matched. It is called once for every pair: n × m times.
func Pairs(n, m int, least float64, alike func(i, j int) float64) []Pair {
	best := make([][]float64, n+1)
	score := make([][]float64, n+1)
	for i := range best {
		best[i], score[i] = make([]float64, m+1), make([]float64, m+1)
	}
	for i := n - 1; i >= 0; i-- {
		for j := m - 1; j >= 0; j-- {
			best[i][j] = max(best[i+1][j], best[i][j+1])
			if score[i][j] = alike(i, j); score[i][j] >= least {
				best[i][j] = max(best[i][j], score[i][j]+best[i+1][j+1])
			}
		}
	}
	var pairs []Pair
	for i, j := 0, 0; i < n && j < m; {
		switch {
		case score[i][j] >= least && best[i][j] == score[i][j]+best[i+1][j+1]:
			pairs = append(pairs, Pair{i, j})
			i, j = i+1, j+1
		case best[i][j] == best[i+1][j]:
			i++
		default:
			j++
		}
	}
	return pairs
}

// Walk goes through both lists side by side, with the pairs of Pairs: removed for
// what has no partner in the new list, added for what has none in the old, matched
// for each pair, in the order of reading.
func Walk(pairs []Pair, n, m int, removed, added func(i int), matched func(i, j int)) {
	i, j := 0, 0
	alone := func(toOld, toNew int) {
		for ; i < toOld; i++ {
			removed(i)
		}
		for ; j < toNew; j++ {
			added(j)
		}
	}
	for _, p := range pairs {
		alone(p.Old, p.New)
		matched(i, j)
		i, j = i+1, j+1
	}
	alone(n, m)
}

// Words folds a text into its words, for Alike.
func Words(text string) []string {
	return strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return strings.ContainsRune(" ,.;:()–—-/!?\t\u00a0", r) })
}

// Alike tells how much two texts share, 0 to 1: twice their common words by all
// their words. Two empty texts are the same.
func Alike(a, b []string) float64 {
	if len(a)+len(b) == 0 {
		return 1
	}
	count := make(map[string]int, len(a))
	for _, w := range a {
		count[w]++
	}
	common := 0
	for _, w := range b {
		if count[w] > 0 {
			count[w]--
			common++
		}
	}
	return 2 * float64(common) / float64(len(a)+len(b))
}
