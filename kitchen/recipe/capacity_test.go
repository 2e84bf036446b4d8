package recipe_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// The dough is 1000 g flour and 700 g water, the textbook's example of 70 %
// hydration: 1,700 g. Lots are plain division.
func TestCapacitySplitsWhatDoesNotFit(t *testing.T) {
	const rolls = "Rolls\nMakes 30\n\nDough:\n1000 g flour\n700 g water\n\nMethod\n1. Knead in a stand mixer for 8 minutes.\n2. Bake for 20 minutes at 220 °C.\n"
	r := recipe.Reader{}.Read(rolls)
	all := recipe.Capacity{MixerGrams: measure.Whole(1000), TrayPieces: measure.Whole(12), OvenTrays: measure.Whole(2)}
	for name, c := range map[string]struct {
		capacity recipe.Capacity
		want     []string
	}{
		"nothing said":     {recipe.Capacity{}, nil},
		"mixer too small":  {recipe.Capacity{MixerGrams: measure.Whole(1000)}, []string{"2 lots of 850 g"}},
		"mixer just holds": {recipe.Capacity{MixerGrams: measure.Whole(1700)}, nil},
		"trays":            {recipe.Capacity{TrayPieces: measure.Whole(12)}, []string{"3 trays."}},
		"trays at once":    {recipe.Capacity{TrayPieces: measure.Whole(12), OvenTrays: measure.Whole(3)}, []string{"fit the oven at once"}},
		"oven loads":       {all, []string{"2 lots", "2 loads"}},
		"one tray":         {recipe.Capacity{TrayPieces: measure.Whole(30)}, nil},
	} {
		got := c.capacity.Split(r, recipe.Writer{})
		if len(got) != len(c.want) {
			t.Errorf("%s: Split() = %q, want %d notes", name, got, len(c.want))
			continue
		}
		for i, want := range c.want {
			if !strings.Contains(strings.ReplaceAll(got[i], "\u00a0", " "), want) {
				t.Errorf("%s: note %q does not say %q", name, got[i], want)
			}
		}
	}
}

func TestCapacityLeavesAloneWhatCannotBeWeighed(t *testing.T) {
	r := recipe.Reader{}.Read("Paste\n\n2 zorbs\n500 g flour\n\nMethod\nBeat in the mixer for 3 minutes.\n")
	if got := (recipe.Capacity{MixerGrams: measure.Whole(100)}).Split(r, recipe.Writer{}); got != nil {
		t.Errorf("Split() = %q, want nothing", got)
	}
}
