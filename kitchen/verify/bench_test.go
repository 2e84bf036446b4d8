package verify_test

import (
	"testing"
	"time"

	"benchproof/kitchen/verify"
)

// longCut repeats a cut until it has so many words.
func longCut(b *testing.B, words int) (cut, []verify.Cue) {
	cuts := readCuts(b)
	base := cuts[5]
	var cues []verify.Cue
	end := base.cues[len(base.cues)-1].End
	count := 0
	for round := time.Duration(0); count < words; round++ {
		for _, c := range base.cues {
			cues = append(cues, verify.Cue{Start: c.Start + round*end, End: c.End + round*end, Text: c.Text})
			for i := range c.Text {
				if c.Text[i] == ' ' || c.Text[i] == '\n' {
					count++
				}
			}
			count++
		}
	}
	return base, cues
}

// Bounds what the Cut sheet waits for after an import: an hour of talk under
// 150 ms with the reading and the aligning, which are benchmarked in room
// script; four hours under a second.
func BenchmarkCheck(b *testing.B) {
	for _, size := range []struct {
		name  string
		words int
	}{{"10min", 1_500}, {"60min", 9_000}, {"4h", 36_000}, {"100000words", 100_000}} {
		b.Run(size.name, func(b *testing.B) {
			c, cues := longCut(b, size.words)
			b.ReportAllocs()
			for b.Loop() {
				if report := checker.Check(c.recipe, cues); len(report.Amounts) == 0 {
					b.Fatal("nothing found")
				}
			}
		})
	}
}
