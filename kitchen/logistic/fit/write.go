package fit

import (
	"fmt"
	"maps"
	"math"
	"os"
	"slices"
	"strings"

	"benchproof/kitchen/logistic"
)

// leastWeight is the least weight that is worth a line of a file.
const leastWeight = 0.02

// Remark is the first line of a file of weights that are learnt from so many of something.
func Remark(count int, of string) string {
	return fmt.Sprintf("# Learnt from %d %s; doc.go tells how.\n", count, of)
}

// Write writes weights to a file behind a remark, as logistic.Read reads them.
func Write(name, remark string, weights map[string]float64) error {
	var text strings.Builder
	text.WriteString(remark)
	for _, trait := range slices.Sorted(maps.Keys(weights)) {
		if w := weights[trait]; math.Abs(w) >= leastWeight || trait == logistic.Bias {
			fmt.Fprintf(&text, "%.3f\t%s\n", w, trait)
		}
	}
	return os.WriteFile(name, []byte(text.String()), 0o644)
}
