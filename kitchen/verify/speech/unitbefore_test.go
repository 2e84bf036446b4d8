package speech_test

import "testing"

// Units that stand before their number or in short, and settings heard behind
// talk: as hosts say them. Common practice, no source.
func TestUnitsAsHostsSayThem(t *testing.T) {
	runPhrases(t, []phrase{
		{"in grams it's two hundred and ninety", []string{"two hundred and ninety = measure 290 g"}},
		{"roll it to about 4 mil", []string{"4 mil = length 4 mm, about"}},
		{"pour in four hundred mil of milk", []string{"four hundred mil = measure 400 ml"}},
		{"3 quarters of a cup of sugar", []string{"3 quarters of a cup = measure 3/4 cup"}},
		{"three spoons, the big ones", []string{"three spoons, the big = measure 3 tbsp"}},
		{"back in the 1960s", nil},
		{"back in the sixties", nil},
		{"the oven's at 160, and if you've got a fan in there, then 140", []string{
			"160 = heat 160",
			"140 = heat 140 fan",
		}},
	})
}
