package verify_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// A number that is about nothing, said where one is written that nobody says, is
// that one said wrong; where nothing is left out it stays about nothing.
func TestALooseNumberIsTheOneThatIsLeftOut(t *testing.T) {
	const r = "Toffee\n\n300 g sugar\n200 ml cream\n\n1. Boil the sugar to 150 °C.\n2. Add the cream and stir it for 6 minutes.\n3. Pour it out and leave it to set for 2 hours.\n"
	const foods = "three hundred grams of sugar "
	for _, test := range []struct {
		name, said string
		want       []string
	}{
		{"a heat", foods + "boil it, and the number, this is the number, one hundred and thirty degrees. Two hundred mil of cream, stir it six minutes. Pour it out, two hours to set.", []string{"differs: one hundred and thirty degrees | 150 °C"}},
		{"nothing is left out", foods + "boil it to a hundred and fifty degrees. Two hundred mil of cream, stir it six minutes. Pour it out, two hours to set. It will keep for three weeks.", nil},
	} {
		t.Run(test.name, func(t *testing.T) {
			if diff := cmp.Diff(test.want, snippet{said: test.said}.findings(r)); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}
