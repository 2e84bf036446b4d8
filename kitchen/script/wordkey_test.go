package script

import "testing"

// One key for the forms that speech and script use of a word; none for words
// that tell nothing and for numbers. The forms are those of Porter's first step
// (Program 14-3, 1980), of which "hopping" and "falling" are his own examples.
func TestWordKey(t *testing.T) {
	for _, alike := range [][]string{
		{"bake", "Bake", "BAKE"},
		{"plums", "plum", "Plum's", "plums'", "plum’s"},
		{"kneading", "kneads", "kneaded", "knead"},
		{"roasting", "roasted", "roast"},
		{"shaping", "shape", "shapes", "shaped"},
		{"chopped", "chop", "chopping", "chops"},
		{"hopping", "hop"},
		{"falling", "fall"},
		{"fries", "fry"},
		{"dishes", "dish"},
		{"cherries", "cherry"},
		{"loaves", "loaf"},
		{"knives", "knife"},
		{"tomatoes", "tomato"},
		{"dumplings", "dumpling"},
	} {
		for _, word := range alike[1:] {
			if a, b := wordKey(alike[0]), wordKey(word); a != b || a == "" {
				t.Errorf("%q has the key %q, %q has %q", alike[0], a, word, b)
			}
		}
	}
}

func TestWordsWithoutAKey(t *testing.T) {
	for _, word := range []string{"the", "And", "it", "a", "200", "3rd", "minutes", "Twenty", "okay", ""} {
		if key := wordKey(word); key != "" {
			t.Errorf("%q has the key %q, want none", word, key)
		}
	}
}

// Endings go only where a word is left.
func TestWordsThatDiffer(t *testing.T) {
	for _, two := range [][2]string{{"peel", "peas"}, {"icing", "ice"}, {"string", "stir"}, {"shred", "sharp"}, {"seed", "sea"}, {"glass", "glaze"}, {"bring", "bread"}} {
		if a, b := wordKey(two[0]), wordKey(two[1]); a == b {
			t.Errorf("%q and %q have one key, %q", two[0], two[1], a)
		}
	}
}
