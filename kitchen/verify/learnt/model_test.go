package learnt_test

import (
	"math"
	"strings"
	"testing"

	"benchproof/kitchen/verify/learnt"
)

// Likelihood against the definition of the logistic function.
func TestLikelihood(t *testing.T) {
	m := learnt.Of(map[string]float64{learnt.Bias: -1, "firm": 2})
	for _, row := range []struct {
		name   string
		traits []string
		want   float64
	}{
		{"no trait", nil, 1 / (1 + math.E)},
		{"a trait", []string{"firm"}, 1 / (1 + math.Exp(-1))},
		{"a trait twice counts twice", []string{"firm", "firm"}, 1 / (1 + math.Exp(-3))},
		{"what has no weight says nothing", []string{"firm", "far"}, 1 / (1 + math.Exp(-1))},
	} {
		if got := m.Likelihood(row.traits); math.Abs(got-row.want) > 1e-12 {
			t.Errorf("%s: got %v, want %v", row.name, got, row.want)
		}
	}
}

func TestRead(t *testing.T) {
	m, err := learnt.Read("# a remark\n-0.5\tbias\n\n1.25\tpair:my aunt\n")
	if err != nil {
		t.Fatal(err)
	}
	for trait, want := range map[string]float64{learnt.Bias: -0.5, "pair:my aunt": 1.25, "pair:my uncle": 0} {
		if got := m.Weight(trait); got != want {
			t.Errorf("%s weighs %v, want %v", trait, got, want)
		}
	}
}

func TestReadNamesTheLineThatIsWrong(t *testing.T) {
	for _, text := range []string{"0.5\tbias\nheavy\tnear:pan\n", "0.5\tbias\n0.25 near:pan\n"} {
		_, err := learnt.Read(text)
		if err == nil || !strings.Contains(err.Error(), "line 2") {
			t.Errorf("%q: got %v, want an error that names line 2", text, err)
		}
	}
}

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
	given := learnt.Of(nil)
	got := learnt.Models{Doubt: given}.OrOwn()
	if got.Doubt != given || got.Topic != learnt.Own().Topic || got.Silence != learnt.Own().Silence {
		t.Errorf("got %v", got)
	}
}
