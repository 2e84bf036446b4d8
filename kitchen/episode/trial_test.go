package episode_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

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

// Losses by hand, in per cent of the dough.
func TestLossByHand(t *testing.T) {
	for _, c := range []struct {
		name         string
		dough, baked measure.Number
		want         measure.Number
		ok           bool
	}{
		{"1000 to 880: 120 of 1000", measure.Whole(1000), measure.Whole(880), measure.Whole(12), true},
		{"900 to 750: 150 of 900, a sixth", measure.Whole(900), measure.Whole(750), measure.Ratio(50, 3), true},
		{"nothing lost", measure.Whole(500), measure.Whole(500), measure.Whole(0), true},
		{"half a gram of two", measure.Whole(2), measure.Ratio(3, 2), measure.Whole(25), true},
		{"heavier than its dough: one of the two is wrong", measure.Whole(500), measure.Whole(501), measure.Number{}, false},
		{"below zero", measure.Whole(-500), measure.Whole(400), measure.Number{}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, ok := episode.Trial{DoughGrams: c.dough, BakedGrams: c.baked}.Loss()
			if ok != c.ok || ok && !got.Equal(c.want) {
				t.Errorf("Loss() = %v, %v; want %v, %v", got, ok, c.want, c.ok)
			}
		})
	}
}

// A mean lies between the least loss and the most, whatever else was tried and
// in whatever order.
func TestMeanLossLiesBetween(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var trials []episode.Trial
		least, most := measure.Whole(200), measure.Whole(-1)
		want := 0
		for range rapid.IntRange(0, 6).Draw(t, "trials") {
			dough := rapid.Int64Range(0, 1200).Draw(t, "dough")
			trial := episode.Trial{DoughGrams: measure.Whole(dough), BakedGrams: measure.Whole(rapid.Int64Range(0, 1200).Draw(t, "baked"))}
			trials = append(trials, trial)
			loss, ok := trial.Loss()
			if !ok {
				continue
			}
			want++
			if loss.Cmp(least) < 0 {
				least = loss
			}
			if loss.Cmp(most) > 0 {
				most = loss
			}
		}
		mean, measured := episode.MeanLoss(trials)
		if measured != want || measured > 0 && (mean.Cmp(least) < 0 || mean.Cmp(most) > 0) {
			t.Fatalf("%v of %d trials; %d were measured, from %v to %v", mean, measured, want, least, most)
		}
		slices.Reverse(trials)
		if again, n := episode.MeanLoss(trials); n != measured || !again.Equal(mean) {
			t.Fatalf("the other way round it is %v of %d, not %v of %d", again, n, mean, measured)
		}
	})
}

// What is not said about a kitchen is no limit, and comes out as zero.
func TestCapacityOfAShow(t *testing.T) {
	got := episode.Show{MixerGrams: 1800, TrayPieces: 12, OvenTrays: 2}.Capacity()
	if !got.MixerGrams.Equal(measure.Whole(1800)) || !got.TrayPieces.Equal(measure.Whole(12)) || !got.OvenTrays.Equal(measure.Whole(2)) {
		t.Errorf("Capacity() = %+v", got)
	}
	if none := (episode.Show{}).Capacity(); none.MixerGrams.Sign() != 0 || none.TrayPieces.Sign() != 0 || none.OvenTrays.Sign() != 0 {
		t.Errorf("of a show that says nothing it is %+v", none)
	}
}

func ExampleMeanLoss() {
	loss, trials := episode.MeanLoss([]episode.Trial{
		{DoughGrams: measure.Whole(1000), BakedGrams: measure.Whole(900)},
		{DoughGrams: measure.Whole(1000), BakedGrams: measure.Whole(880)},
		{DoughGrams: measure.Whole(1000)}, // not weighed after baking
	})
	fmt.Println(loss, "% lost, in", trials, "trials")
	// Output: 11 % lost, in 2 trials
}
