package topic_test

import (
	"math"
	"strings"
	"testing"

	"benchproof/kitchen/verify/topic"
)

func TestElsewhere(t *testing.T) {
	m := topic.Of(map[string]float64{topic.Bias: -1, "near:grandmother": 2, "pair:# gram": -3})
	const talk = "a b c d e f g h i j k l m n o p q r s t u my grandmother had two kilos a b c d e f g h i j k l"
	for _, row := range []struct {
		name, talk string
		want       float64 // 1 / (1 + e^−sum), from the definition of the logistic function
	}{
		{"a story", talk, 1 / (1 + math.Exp(-1))},
		{"what has no weight says nothing", strings.Replace(talk, "grandmother", "whisk", 1), 1 / (1 + math.E)},
		{"a trait twice counts twice", strings.Replace(talk, "my grandmother", "grandmother grandmother", 1), 1 / (1 + math.Exp(-3))},
		{"a third of the words are known", "a b c d e f g h i j grandmother had two kilos", 1 / (1 + math.Exp(-1.0/3))},
		{"no word is known", "two kilos", 0.5},
	} {
		if got := m.Elsewhere(reader(row.talk, never), 0); math.Abs(got-row.want) > 1e-12 {
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
