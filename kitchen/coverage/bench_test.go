package coverage_test

import (
	"fmt"
	"testing"

	"benchproof/kitchen/coverage"
)

// A usual list has one to three parts and a dozen or two shots; the largest here
// is given up, and so bounds what a page can wait for.
func BenchmarkCount(b *testing.B) {
	for _, size := range []struct{ parts, steps, setups int }{{1, 12, 5}, {3, 7, 5}, {5, 6, 6}, {12, 12, 8}, {20, 25, 20}} {
		r, shots := large(size.parts, size.steps, size.setups)
		b.Run(fmt.Sprintf("shots=%d,parts=%d", len(shots), size.parts), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if got := coverage.Count(r, shots, nil); got.Fewest == 0 {
					b.Fatal("no change")
				}
			}
		})
	}
}

func BenchmarkOf(b *testing.B) {
	r, shots := large(20, 25, 20)
	b.ReportAllocs()
	for b.Loop() {
		if got := coverage.Of(r, shots); len(got.NoShot) > 0 {
			b.Fatal("a step without a shot")
		}
	}
}
