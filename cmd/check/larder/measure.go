package larder

import (
	"regexp"
	"strings"

	"benchproof/kitchen/measure"
)

// reading is what a household measure's text means in the larder's words.
type reading struct {
	unit   measure.Unit
	form   string
	system measure.System // US for a can, whose size is a country's own
}

// volumeWords begin the texts of volumes; longest first.
var volumeWords = []struct {
	word string
	unit measure.Unit
}{
	{"tablespoon", measure.Tablespoon}, {"teaspoon", measure.Teaspoon}, {"fluid ounce", measure.FluidOunce},
	{"fl oz", measure.FluidOunce}, {"quart", measure.Quart}, {"tbsp", measure.Tablespoon}, {"tsp", measure.Teaspoon},
	{"cup", measure.Cup}, {"dash", measure.Dash},
}

// volumeForms are the words that may stand behind a volume, and the form each
// names. A text with other words is none of the larder's measures.
var volumeForms = map[string]string{
	"": "", "fluid": "", "dry": "", "kernels": "", "chips": "", "raw": "", "whole kernels": "",
	"chopped": "chopped", "chopped or diced": "chopped", "quartered or chopped": "chopped", "chopped or sliced": "chopped", "diced": "diced", "cubes": "diced", "cubed": "diced",
	"slices": "sliced", "sliced": "sliced", "shredded": "shredded", "grated": "grated", "mashed": "mashed", "puree": "pureed", "pureed": "pureed",
	"crumbled": "crumbled", "crushed": "crushed", "ground": "ground", "whole": "whole", "halves": "halves",
	"pieces": "pieces", "packed": "packed", "unpacked": "unpacked", "not packed": "unpacked", "loosely packed": "unpacked",
	"sifted": "sifted", "unsifted": "unsifted", "melted": "melted", "whipped": "whipped", "slivered": "slivered",
	"sections": "sections", "sections with juice": "sections", "stirred": "stirred", "leaves whole": "whole", "florets": "", "flowerets": "",
	"strips": "sliced", "large chips": "large", "mini chips": "mini", "crumbled not packed": "crumbled",
	"unsifted dipped": "", "popped": "popped", "halves and slices": "sliced", "pieces or slices": "sliced", "crumbs": "crumbs", "fresh": "",
	"whole pieces": "whole", "shredded or chopped": "shredded", "chopped diced": "chopped", "balls": "balls",
}

// countWords are the nouns of counted measures.
var countWords = map[string]measure.Unit{
	"clove": measure.Clove, "cloves": measure.Clove, "stick": measure.Stick, "packet": measure.Packet, "envelope": measure.Packet,
	"slice": measure.Slice, "slices": measure.Slice, "leaf": measure.Leaf, "leaves": measure.Leaf, "stalk": measure.Stalk,
	"stalks": measure.Stalk, "head": measure.Head, "sprig": measure.Sprig, "sprigs": measure.Sprig, "bunch": measure.Bunch,
	"sheet": measure.Sheet, "sheets": measure.Sheet, "ear": measure.Ear, "strip": measure.Strip, "strips": measure.Strip,
	"cube": measure.Cube, "block": measure.Block, "piece": measure.Piece,
	"fruit": measure.Each, "each": measure.Each, "item": measure.Each, "whole": measure.Each, "link": measure.Each, "links": measure.Each,
	"fillet": measure.Each, "breast": measure.Each, "thigh": measure.Each, "drumstick": measure.Each, "wing": measure.Each,
	"root": measure.Each, "bulb": measure.Each, "pod": measure.Each, "spear": measure.Each, "sprout": measure.Each,
	"roll": measure.Each, "tortilla": measure.Each, "pepper": measure.Each, "potato": measure.Each, "sweetpotato": measure.Each,
	"can": measure.Tin, "beet": measure.Each, "chestnut": measure.Each, "slip": measure.Each, "kernel": measure.Each,
}

var (
	brackets = regexp.MustCompile(`\([^)]*\)`)
	inches   = regexp.MustCompile(`[0-9][0-9\-/. ]*"[^,]*`)
	sizes    = []string{"extra large", "large", "medium", "small", "jumbo"}
)

// readMeasure says which unit and form a household measure is; ok is false for
// servings, packs, and measures with words the larder has no form for. name is
// the food's own name, whose words may stand beside a size ("large onion").
func readMeasure(text, name string) (reading, bool) {
	plain := strings.ToLower(text)
	for _, word := range []string{"not packed", "packed", "pitted"} {
		plain = strings.ReplaceAll(plain, "("+word+")", word)
	}
	plain = inches.ReplaceAllString(brackets.ReplaceAllString(plain, " "), " ")
	plain = strings.Join(strings.Fields(strings.ReplaceAll(plain, ",", " ")), " ")
	for _, v := range volumeWords {
		rest, ok := strings.CutPrefix(plain, v.word)
		if !ok || rest != "" && rest[0] != ' ' && rest[0] != 's' {
			continue
		}
		rest = strings.TrimSpace(strings.TrimPrefix(rest, "s "))
		form, ok := volumeForms[rest]
		return reading{unit: v.unit, form: form}, ok
	}
	return readCount(plain, name)
}

// readCount reads the measures that count pieces: a size, a noun, or both.
func readCount(plain, name string) (reading, bool) {
	var r reading
	found := false
	for _, size := range sizes {
		if before, after, ok := strings.Cut(" "+plain+" ", " "+size+" "); ok {
			r.form, found = size, true
			plain = strings.TrimSpace(before + " " + after)
			break
		}
	}
	for _, word := range strings.Fields(plain) {
		unit, ok := countWords[word]
		switch {
		case ok && (r.unit == measure.Each || r.unit == unit):
			r.unit, found = unit, true
		case isWordOf(name, word):
			found = true
		case word != "drained": // what is in a can of it is drained anyway
			return reading{}, false
		}
	}
	if r.unit == measure.Tin {
		r.system = measure.US
	}
	return r, found
}

// isWordOf tells whether a word, or its plural, stands in a food's name.
func isWordOf(name, word string) bool {
	for own := range strings.FieldsSeq(strings.ToLower(strings.ReplaceAll(name, ",", " "))) {
		if own == word || own == word+"s" || own == word+"es" || own+"s" == word {
			return true
		}
	}
	return false
}
