package topic_test

import (
	"math"
	"strings"
	"testing"

	"benchproof/kitchen/verify/topic"
)

func TestElsewhere(t *testing.T) {
	m := topic.Of(map[string]float64{topic.Bias: -1, "near:grandmother": 2, "near:whisk": -3})
	for _, row := range []struct {
		name   string
		traits []string
		known  float64
		want   float64 // 1 / (1 + e^−sum), from the definition of the logistic function
	}{
		{"nothing speaks but the bias", nil, 1, 1 / (1 + math.E)},
		{"a story", []string{"near:grandmother"}, 1, 1 / (1 + math.Exp(-1))},
		{"the dish", []string{"near:whisk"}, 1, 1 / (1 + math.Exp(4))},
		{"what has no weight says nothing", []string{"near:spoon"}, 1, 1 / (1 + math.E)},
		{"a trait twice counts twice", []string{"near:grandmother", "near:grandmother"}, 1, 1 / (1 + math.Exp(-3))},
		{"half of the words are known", []string{"near:whisk"}, 0.5, 1 / (1 + math.Exp(2))},
		{"no word is known", []string{"near:whisk"}, 0, 0.5},
	} {
		if got := m.Elsewhere(row.traits, row.known); math.Abs(got-row.want) > 1e-12 {
			t.Errorf("%s: got %v, want %v", row.name, got, row.want)
		}
	}
}

func TestRead(t *testing.T) {
	m, err := topic.Read("# a remark\n-0.5\tbias\n\n1.25\tpair:my aunt\n")
	if err != nil {
		t.Fatal(err)
	}
	for trait, want := range map[string]float64{topic.Bias: -0.5, "pair:my aunt": 1.25, "pair:my uncle": 0} {
		if got := m.Weight(trait); got != want {
			t.Errorf("%s weighs %v, want %v", trait, got, want)
		}
	}
}

func TestReadNamesTheLineThatIsWrong(t *testing.T) {
	for _, text := range []string{"0.5\tbias\nheavy\tnear:pan\n", "0.5\tbias\n0.25 near:pan\n"} {
		_, err := topic.Read(text)
		if err == nil || !strings.Contains(err.Error(), "line 2") {
			t.Errorf("%q: got %v, want an error that names line 2", text, err)
		}
	}
}

// The weights that come with the program can be read, and tell a story from the dish.
func TestLearnt(t *testing.T) {
	m := topic.Learnt()
	if m.Weight("near:grandmother") == 0 && m.Weight("near:grandma") == 0 && m.Weight("near:my") == 0 {
		t.Error("no weight speaks of anybody's family")
	}
	if m.Weight("behind 1:<food>") >= 0 {
		t.Errorf("a food of the recipe right behind a number weighs %v, want it to speak for the dish", m.Weight("behind 1:<food>"))
	}
}
