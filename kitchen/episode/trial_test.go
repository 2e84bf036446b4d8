package episode_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
)

// The pair is the one a professional baking textbook's rule gives: 800 g of
// bread at 12 % loss needs 909 g of dough.
func TestLossOfABakedLoaf(t *testing.T) {
	trial := episode.Trial{DoughGrams: measure.Whole(909), BakedGrams: measure.Whole(800)}
	loss, ok := trial.Loss()
	if !ok || loss.Round(measure.Ratio(1, 10)).String() != "12" {
		t.Errorf("Loss() = %v, %v; want about 12, true", loss.Float(), ok)
	}
}

func TestLossNeedsBothWeights(t *testing.T) {
	for name, trial := range map[string]episode.Trial{
		"nothing measured": {},
		"only before":      {DoughGrams: measure.Whole(900)},
		"only after":       {BakedGrams: measure.Whole(800)},
	} {
		if loss, ok := trial.Loss(); ok {
			t.Errorf("%s: Loss() = %v, want none", name, loss)
		}
	}
}
