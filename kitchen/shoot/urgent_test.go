package shoot_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
)

// How urgent a step's words are is common practice, no source.
func TestWithinOf(t *testing.T) {
	for text, want := range map[string]bool{
		"Pour at once into six moulds.":                         true,
		"Serve immediately.":                                    true,
		"Toss the pasta straight away with the sauce.":          true,
		"Whisk in the butter while the custard is hot.":         true,
		"Glaze them while still warm.":                          true,
		"Cut the slab while it is hot.":                         true,
		"Beat in the eggs, one at a time.":                      false,
		"Whisk it smooth. Use it at once.":                      false,
		"Serve hot.":                                            false,
		"Leave to cool.":                                        false,
		"Once it is cold, slice it.":                            false,
		"Fold twice; the dough feels warm. Meanwhile heat oil.": false,
	} {
		if minutes, ok := shoot.WithinOf(recipe.Step{Text: text}); ok != want || minutes != 5 {
			t.Errorf("%q: %d, %v, want %v", text, minutes, ok, want)
		}
	}
}

// A wait can be of one follower alone.
func TestAWaitOfOneFollower(t *testing.T) {
	r := recipe.Recipe{Components: []recipe.Component{
		{Name: "Caramel", Lines: []recipe.Line{{Text: "sugar"}}, Steps: []recipe.Step{step("Melt", "hob", true, 8), step("Pour", "bench", true, 2)}},
		{Name: "Custard", Lines: []recipe.Line{{Text: "milk"}}, Steps: []recipe.Step{step("Whisk", "bench", true, 30)}},
		{Name: "To finish", Steps: []recipe.Step{step("Serve", "bench", true, 1)}},
	}}
	pos := func(c, s int) shoot.Key { return shoot.Key{Batch: "shoot", At: recipe.Position{Component: c, Step: s}} }
	d := shoot.Day{Stations: []shoot.Station{{Name: shoot.Hands, Units: 1}}, Batches: []shoot.Batch{{Name: "shoot", Recipe: r}}}
	d.Pins = []shoot.Pin{{Task: pos(1, 0), Start: 8}} // the hands are busy right after the melting
	starts := func() (melt, pour int) {
		for _, e := range mustMake(t, d).Entries {
			switch e.Key {
			case pos(0, 0):
				melt = e.From
			case pos(0, 1):
				pour = e.From
			}
		}
		return melt, pour
	}
	d.Waits = []shoot.Wait{{After: pos(0, 0), Next: pos(0, 1), AtMost: 5, HasMost: true}}
	melt, pour := starts()
	if diff := cmp.Diff([]int{38, 46}, []int{melt, pour}); diff != "" {
		t.Errorf("melting and pouring, which cannot wait (-want +got):\n%s", diff)
	}
	d.Waits[0].Next = pos(1, 0) // which does not follow on the melting: nothing is limited
	if _, pour := starts(); pour != 38 {
		t.Errorf("pouring at %d, want 38, when the hands are free", pour)
	}
}
