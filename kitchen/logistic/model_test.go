package logistic_test

import (
	"math"
	"strings"
	"testing"

	"benchproof/kitchen/logistic"
)

// Likelihood against the definition of the logistic function.
func TestLikelihood(t *testing.T) {
	m := logistic.Of(map[string]float64{logistic.Bias: -1, "firm": 2})
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
	m, err := logistic.Read("# a remark\n-0.5\tbias\n\n1.25\tpair:my aunt\n")
	if err != nil {
		t.Fatal(err)
	}
	for trait, want := range map[string]float64{logistic.Bias: -0.5, "pair:my aunt": 1.25, "pair:my uncle": 0} {
		if got := m.Weight(trait); got != want {
			t.Errorf("%s weighs %v, want %v", trait, got, want)
		}
	}
}

func TestReadNamesTheLineThatIsWrong(t *testing.T) {
	for _, text := range []string{"0.5\tbias\nheavy\tnear:pan\n", "0.5\tbias\n0.25 near:pan\n"} {
		_, err := logistic.Read(text)
		if err == nil || !strings.Contains(err.Error(), "line 2") {
			t.Errorf("%q: got %v, want an error that names line 2", text, err)
		}
	}
}
