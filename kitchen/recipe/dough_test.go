package recipe_test

import (
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// The dough is the textbook's example: 1000 g flour, 700 water, 20 yeast, 20
// salt, 1,740 g in all.
func TestIsDough(t *testing.T) {
	dough := recipe.Formula{FlourGrams: measure.Whole(1000), DoughGrams: measure.Whole(1740)}
	stew := recipe.Formula{FlourGrams: measure.Whole(30), DoughGrams: measure.Whole(2500)}
	unweighed := dough
	unweighed.Missing = []string{"a knob of butter"}
	for name, c := range map[string]struct {
		formula recipe.Formula
		want    bool
	}{"dough": {dough, true}, "stew": {stew, false}, "something not weighed": {unweighed, false}, "nothing": {recipe.Formula{}, false}} {
		if got := c.formula.IsDough(); got != c.want {
			t.Errorf("%s: IsDough() = %v, want %v", name, got, c.want)
		}
	}
}
