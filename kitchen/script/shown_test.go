package script

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/episode"
)

func TestStepsGoToTheSegmentsThatShowThem(t *testing.T) {
	titles := func(all ...string) (segments []episode.Segment) {
		for _, title := range all {
			segments = append(segments, episode.Segment{Title: title})
		}
		return segments
	}
	tests := []struct {
		name     string
		segments []episode.Segment
		steps    []string
		want     []int // the likeliest segment of each step
	}{
		{"by the titles' words", titles("Hello", "The dough", "Plums", "Oven"), []string{"Bring together to a dough.", "Slice the plums.", "Bake in the oven."}, []int{1, 2, 3}},
		{"one between its neighbours", titles("Hello", "The dough", "A rest", "Oven"), []string{"Bring together to a dough.", "Chill for an hour.", "Bake in the oven."}, []int{1, 2, 3}},
		{"nothing in a greeting", titles("Hello", "Pie", "Bye"), []string{"Make a pie of it."}, []int{1}},
		{"by narration", []episode.Segment{{Title: "One", Narration: "Whisk the yolks."}, {Title: "Two", Narration: "Pour the custard."}}, []string{"Whisk yolks.", "Pour custard."}, []int{0, 1}},
		{"another order", titles("Hello", "Sauce simmering gently", "Dough kneading properly"), []string{"Knead the dough properly, kneading.", "Simmer the sauce gently, simmering."}, []int{2, 1}},
		{"one segment shows all", titles("Everything"), []string{"Mix.", "Bake."}, []int{0, 0}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			likely := shown(test.segments, test.steps)
			for j, want := range test.want {
				for i, p := range likely[j] {
					if p > likely[j][want] {
						t.Errorf("step %d goes to segment %d (%.2f), want %d (%.2f)", j, i, p, want, likely[j][want])
					}
				}
			}
		})
	}
	if shown(nil, []string{"Mix."}) != nil || shown(titles("A"), nil) != nil {
		t.Error("nothing to show gives likelihoods")
	}
}

// The likelihoods are those of adding up every way in which the steps can be
// shown, one by one.
func TestShownIsTheSumOverAllWays(t *testing.T) {
	words := []string{"dough", "plums", "oven", "syrup", "cream"}
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.Custom(func(t *rapid.T) string {
			return rapid.SampledFrom(words).Draw(t, "word") + " " + rapid.SampledFrom(words).Draw(t, "word")
		})
		var segments []episode.Segment
		for _, title := range rapid.SliceOfN(text, 1, 4).Draw(t, "titles") {
			segments = append(segments, episode.Segment{Title: title})
		}
		steps := rapid.SliceOfN(text, 1, 4).Draw(t, "steps")
		likely, want := shown(segments, steps), everyWay(segments, steps)
		for j := range steps {
			sum := 0.0
			for i := range segments {
				sum += likely[j][i]
				if math.Abs(likely[j][i]-want[j][i]) > 1e-6 {
					t.Fatalf("step %d in segment %d: %v, the sum over all ways is %v", j, i, likely[j][i], want[j][i])
				}
			}
			if math.Abs(sum-1) > 1e-9 {
				t.Fatalf("step %d is shown with likelihoods that add up to %v", j, sum)
			}
		}
	})
}

// everyWay adds up all ways.
func everyWay(segments []episode.Segment, steps []string) [][]float64 {
	fits, n := stepFits(segments, steps), len(segments)
	sums, whole := make([][]float64, len(steps)), 0.0
	for j := range sums {
		sums[j] = make([]float64, n)
	}
	way := make([]int, len(steps))
	var visit func(j int, weight float64)
	visit = func(j int, weight float64) {
		if j == len(steps) {
			weight *= math.Exp(-sharpness * costBareEnd * float64(n-1-way[j-1]))
			whole += weight
			for k, i := range way {
				sums[k][i] += weight
			}
			return
		}
		for i := range n {
			cost := 0.0
			switch {
			case j == 0 && i > 0:
				cost = costOpening + costBare*float64(i-1)
			case j > 0 && i > way[j-1]:
				cost = costBare * float64(i-way[j-1]-1)
			case j > 0 && i < way[j-1]:
				cost = costBackward
			}
			way[j] = i
			visit(j+1, weight*fits[j][i]*math.Exp(-sharpness*cost))
		}
	}
	visit(0, 1)
	for j := range sums {
		for i := range sums[j] {
			sums[j][i] /= whole
		}
	}
	return sums
}

// Long texts and long running orders stay within what a number can hold.
func TestShownOfMuch(t *testing.T) {
	var segments []episode.Segment
	long := ""
	for i := range 1500 {
		long += " word" + string(rune('a'+i%26)) + string(rune('a'+i/26%26)) + string(rune('a'+i/676))
		segments = append(segments, episode.Segment{Title: "Part", Narration: long[max(0, len(long)-80):]})
	}
	segments[0].Narration, segments[1499].Narration = long, long
	for j, row := range shown(segments, []string{long, "nothing alike", long}) {
		if s := sum(row); math.IsNaN(s) || math.Abs(s-1) > 1e-9 {
			t.Errorf("step %d: the likelihoods add up to %v", j, s)
		}
	}
}
