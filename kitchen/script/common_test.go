package script

import (
	"cmp"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// textbook is the weighted longest common subsequence by the full table: the
// dynamic programme of Wagner and Fischer, with the weight of a word for its
// match.
func textbook(a, b []int, weight []float64) float64 {
	table := make([][]float64, len(a)+1)
	for i := range table {
		table[i] = make([]float64, len(b)+1)
	}
	for i := 1; i <= len(a); i++ {
		for k := 1; k <= len(b); k++ {
			table[i][k] = max(table[i-1][k], table[i][k-1])
			if a[i-1] == b[k-1] {
				table[i][k] = max(table[i][k], table[i-1][k-1]+weight[a[i-1]])
			}
		}
	}
	return table[len(a)][len(b)]
}

func pairsOf(a, b []int, weight []float64) []pair {
	var pairs []pair
	for in, x := range a {
		for at, y := range b {
			if x == y {
				pairs = append(pairs, pair{in: in, at: at, weight: weight[x]})
			}
		}
	}
	slices.SortFunc(pairs, func(x, y pair) int { return cmp.Or(cmp.Compare(x.at, y.at), cmp.Compare(y.in, x.in)) })
	return pairs
}

// The sparse alignment weighs what the textbook's full table weighs, and its
// links rise in both lists.
func TestHeaviestCommonIsTheTextbooks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.IntRange(0, 5)
		a := rapid.SliceOfN(words, 0, 14).Draw(t, "script")
		b := rapid.SliceOfN(words, 0, 18).Draw(t, "cut")
		weight := rapid.SliceOfN(rapid.Float64Range(0.5, 4), 6, 6).Draw(t, "weight")
		pairs := pairsOf(a, b, weight)
		got, links := heaviestCommon(pairs, len(a))
		if want := textbook(a, b, weight); math.Abs(got-want) > 1e-9 {
			t.Fatalf("weight %v, the textbook's table says %v", got, want)
		}
		sum := 0.0
		for k, l := range links {
			sum += pairs[l].weight
			if k > 0 && (pairs[l].in <= pairs[links[k-1]].in || pairs[l].at <= pairs[links[k-1]].at) {
				t.Fatalf("link %d does not rise", k)
			}
		}
		if math.Abs(sum-got) > 1e-9 {
			t.Fatalf("the links weigh %v, said to weigh %v", sum, got)
		}
	})
}
