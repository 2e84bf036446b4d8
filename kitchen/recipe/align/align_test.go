package align_test

import (
	"fmt"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/recipe/align"
)

func pairs(older, newer string) []align.Pair {
	return align.Pairs(len(older), len(newer), 0.5, func(i, j int) float64 {
		if older[i] == newer[j] {
			return 1
		}
		return 0
	})
}

func TestPairs(t *testing.T) {
	for _, tt := range []struct {
		older, newer string
		want         []align.Pair
	}{
		{"abc", "abc", []align.Pair{{0, 0}, {1, 1}, {2, 2}}},
		{"abc", "axbc", []align.Pair{{0, 0}, {1, 2}, {2, 3}}},
		{"abc", "c", []align.Pair{{2, 0}}},
		{"abcd", "dabc", []align.Pair{{0, 1}, {1, 2}, {2, 3}}}, // order counts: the d has moved
		{"ab", "xy", nil},
		{"", "abc", nil},
		{"abc", "", nil},
	} {
		t.Run(tt.older+" to "+tt.newer, func(t *testing.T) {
			if diff := cmp.Diff(tt.want, pairs(tt.older, tt.newer)); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// The best match is taken, not the first one.
func TestPairsTakeTheBest(t *testing.T) {
	score := [][]float64{{0.6, 1}, {0.5, 0.6}}
	got := align.Pairs(2, 2, 0.4, func(i, j int) float64 { return score[i][j] })
	if diff := cmp.Diff([]align.Pair{{0, 0}, {1, 1}}, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestWalk(t *testing.T) {
	var got []string
	align.Walk([]align.Pair{{1, 0}, {2, 2}}, 4, 3,
		func(i int) { got = append(got, fmt.Sprint("-", i)) },
		func(j int) { got = append(got, fmt.Sprint("+", j)) },
		func(i, j int) { got = append(got, fmt.Sprint(i, "=", j)) })
	if diff := cmp.Diff([]string{"-0", "1=0", "+1", "2=2", "-3"}, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

// Pairs go up in both lists, and as many are found as the longest common
// subsequence has.
func TestPairsAreALongestCommonSubsequence(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.StringMatching(`[abc]{0,8}`).Draw(t, "a")
		b := rapid.StringMatching(`[abc]{0,8}`).Draw(t, "b")
		got := pairs(a, b)
		for i, p := range got {
			if a[p.Old] != b[p.New] || i > 0 && (p.Old <= got[i-1].Old || p.New <= got[i-1].New) {
				t.Fatalf("pairs %v of %q, %q", got, a, b)
			}
		}
		if want := longest(a, b); len(got) != want {
			t.Errorf("%d pairs of %q and %q, want %d", len(got), a, b, want)
		}
	})
}

// longest is the length of the longest common subsequence by its definition.
func longest(a, b string) int {
	switch {
	case a == "" || b == "":
		return 0
	case a[0] == b[0]:
		return 1 + longest(a[1:], b[1:])
	}
	return max(longest(a[1:], b), longest(a, b[1:]))
}

func TestAlike(t *testing.T) {
	for _, tt := range []struct {
		a, b string
		want float64
	}{
		{"", "", 1}, {"flour", "flour", 1}, {"flour", "sugar", 0}, {"200 g Flour", "300 g flour", 2.0 / 3}, {"a a", "a", 2.0 / 3}, {"Mix, bake.", "mix bake", 1},
	} {
		if got := align.Alike(align.Words(tt.a), align.Words(tt.b)); got != tt.want {
			t.Errorf("Alike(%q, %q) = %v, want %v", tt.a, tt.b, got, tt.want)
		}
	}
}
