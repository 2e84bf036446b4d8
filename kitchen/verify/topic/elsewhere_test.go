package topic_test

import (
	"math"
	"strings"
	"testing"

	"benchproof/kitchen/logistic"
	"benchproof/kitchen/verify/topic"
)

func TestElsewhere(t *testing.T) {
	m := logistic.Of(map[string]float64{logistic.Bias: -1, "near:grandmother": 2, "pair:# gram": -3})
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
		if got := topic.Elsewhere(m, reader(row.talk, never), 0); math.Abs(got-row.want) > 1e-12 {
			t.Errorf("%s: got %v, want %v", row.name, got, row.want)
		}
	}
}
