package measure_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/measure"
)

func TestFormatMinutes(t *testing.T) {
	for want, minutes := range map[string]measure.Range{
		"45 s":           measure.One(measure.Ratio(3, 4)),
		"9 min":          measure.One(measure.Whole(9)),
		"9–11 min":       measure.Between(measure.Whole(9), measure.Whole(11)),
		"1½ min":         measure.One(measure.Ratio(3, 2)),
		"1 h":            measure.One(measure.Whole(60)),
		"1 h 15 min":     measure.One(measure.Whole(75)),
		"60–75 min":      measure.Between(measure.Whole(60), measure.Whole(75)),
		"45–60 min":      measure.Between(measure.Whole(45), measure.Whole(60)),
		"30 s–2 min":     measure.Between(measure.Ratio(1, 2), measure.Whole(2)),
		"1 h 30 min–2 h": measure.Between(measure.Whole(90), measure.Whole(120)),
		"8 h–12 h":       measure.Between(measure.Whole(480), measure.Whole(720)),
		"2 days":         measure.One(measure.Whole(2880)),
	} {
		if got := strings.ReplaceAll(measure.FormatMinutes(minutes), "\u00a0", " "); got != want {
			t.Errorf("FormatMinutes(%v–%v) = %q, want %q", minutes.From, minutes.To, got, want)
		}
	}
}
