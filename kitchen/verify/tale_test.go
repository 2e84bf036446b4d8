package verify_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

const toffee = "Toffee\n\n300 g sugar\n200 ml cream\n\n1. Boil the sugar to 150 °C.\n2. Add the cream and stir it for 6 minutes.\n3. Pour it out and leave it to set for 2 hours.\n"

// Numbers of a tale are left alone whatever food it names, and the same words with the
// dish in hand are not: here all words around a number tell.
func TestATaleIsLeftAlone(t *testing.T) {
	const dish = "three hundred grams of sugar. Boil it to a hundred and fifty degrees. Two hundred mil of cream, stir it six minutes. Pour it out, two hours to set. "
	for _, test := range []struct {
		name, said string
		want       []string
	}{
		{"a tale of sugar", dish + "My grandad, when he was a boy during the war, had eight ounces of sugar a week for the whole family, and he sold his at school.", nil},
		{"another cook", dish + "There was a lady at our church hall who boiled hers to a hundred and seventy degrees and the fire brigade came.", nil},
		{"a neighbour", dish + "My neighbour's batch, half a kilo of sugar, was lovely.", nil},
		{"sugar in hand", "Weigh out four hundred grams of sugar and tip it in the pan. Boil it to a hundred and fifty degrees. Two hundred mil of cream, stir it six minutes. Pour it out, two hours to set.", []string{"differs: four hundred grams | 300 g"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, snippet{said: test.said}.findings(toffee)); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}
