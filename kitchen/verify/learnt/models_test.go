package learnt_test

import (
	"testing"

	"benchproof/kitchen/logistic"
	"benchproof/kitchen/verify/learnt"
)

// The weights that come with the program can be read, and tell a story from the dish.
func TestOwn(t *testing.T) {
	m := learnt.Own().Topic
	if m.Weight("near:grandmother") == 0 && m.Weight("near:grandma") == 0 && m.Weight("near:my") == 0 {
		t.Error("no weight speaks of anybody's family")
	}
	if m.Weight("behind 1:<food>") >= 0 {
		t.Errorf("a food of the recipe right behind a number weighs %v, want it to speak for the dish", m.Weight("behind 1:<food>"))
	}
}

// What is given stands, what is missing is the program's own.
func TestOrOwn(t *testing.T) {
	given := logistic.Of(nil)
	got := learnt.Models{Doubt: given}.OrOwn()
	if got.Doubt != given || got.Topic != learnt.Own().Topic || got.Silence != learnt.Own().Silence {
		t.Errorf("got %v", got)
	}
}
