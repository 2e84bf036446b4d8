package fit_test

import (
	"math"
	"os"
	"path/filepath"
	"testing"

	"benchproof/kitchen/logistic"
	"benchproof/kitchen/logistic/fit"
)

func times(n int, traits []string, is bool) []fit.Example {
	var all []fit.Example
	for range n {
		all = append(all, fit.Example{Traits: traits, Is: is})
	}
	return all
}

// Without a ridge the weights of a table of two rows and two columns are its log odds and
// its log odds ratio (Cox 1958; any handbook of categorical data has it).
func TestTable(t *testing.T) {
	examples := times(30, []string{"wet"}, true)
	examples = append(examples, times(10, []string{"wet"}, false)...)
	examples = append(examples, times(20, nil, true)...)
	examples = append(examples, times(80, nil, false)...)
	w, err := fit.Of(examples, 0, 1).Learn()
	if err != nil {
		t.Fatal(err)
	}
	for trait, want := range map[string]float64{logistic.Bias: math.Log(20.0 / 80), "wet": math.Log(30.0 / 10 * 80 / 20)} {
		if math.Abs(w[trait]-want) > 1e-3 {
			t.Errorf("%s weighs %v, want %v", trait, w[trait], want)
		}
	}
}

// The slope is that of the loss, by small differences.
func TestSlope(t *testing.T) {
	p := fit.Of(append(times(3, []string{"a", "b"}, true), times(2, []string{"b", "b"}, false)...), 2, 1)
	at, slope := []float64{0.3, -0.2, 0.7}, make([]float64, 3)
	p.Slope(slope, at)
	const small = 1e-6
	for k := range at {
		up, down := append([]float64(nil), at...), append([]float64(nil), at...)
		up[k], down[k] = up[k]+small, down[k]-small
		if want := (p.Loss(up) - p.Loss(down)) / (2 * small); math.Abs(slope[k]-want) > 1e-4 {
			t.Errorf("slope of %s is %v, want %v", p.Traits[k], slope[k], want)
		}
	}
}

func TestRareTraitsHaveNoWeight(t *testing.T) {
	p := fit.Of(append(times(3, []string{"often"}, true), times(1, []string{"once", "once"}, false)...), 1, 2)
	if len(p.Traits) != 2 || p.Traits[1] != "often" || p.Len() != 4 {
		t.Errorf("got traits %v of %d examples", p.Traits, p.Len())
	}
}

// What is written can be read, but for what is too light.
func TestWrite(t *testing.T) {
	name := filepath.Join(t.TempDir(), "weights.txt")
	if err := fit.Write(name, fit.Remark(2, "cuts"), map[string]float64{logistic.Bias: 0, "heavy": -1.5, "light": 0.001}); err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if want := "# Learnt from 2 cuts; doc.go tells how.\n0.000\tbias\n-1.500\theavy\n"; string(text) != want {
		t.Errorf("got %q, want %q", text, want)
	}
	if m, err := logistic.Read(string(text)); err != nil || m.Weight("heavy") != -1.5 {
		t.Errorf("read back %v, %v", m, err)
	}
}
