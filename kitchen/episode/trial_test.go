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

func TestMeanLossLeavesOutWhatWasNotMeasured(t *testing.T) {
	trials := []episode.Trial{
		{DoughGrams: measure.Whole(1000), BakedGrams: measure.Whole(900)},
		{DoughGrams: measure.Whole(1000)},
		{DoughGrams: measure.Whole(1000), BakedGrams: measure.Whole(880)},
	}
	if loss, n := episode.MeanLoss(trials); n != 2 || !loss.Equal(measure.Whole(11)) {
		t.Errorf("MeanLoss() = %v of %d trials, want 11 of 2", loss, n)
	}
	if _, n := episode.MeanLoss(trials[1:2]); n != 0 {
		t.Errorf("MeanLoss() of nothing measured counts %d trials", n)
	}
}
