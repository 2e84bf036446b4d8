package page

import (
	"strings"
	"unicode"

	"benchproof/kitchen/recipe/lexicon"
)

// startsMeasured tells whether words begin as an ingredient with an amount
// does: "200 g", "½ cup", "a pinch", "juice of". Percentages, ordinals, clock
// times, minutes and degrees are no amounts of food.
func startsMeasured(words string) bool {
	fields := firstFields(words, 5)
	for len(fields) > 1 && (vague[fields[0]] || fields[0] == "an" && fields[1] == "additional") {
		fields = fields[1:]
	}
	if len(fields) == 0 {
		return false
	}
	first := strings.TrimLeft(fields[0], "~≈±(")
	if lexicon.IsNumeral(lexicon.First(first)) {
		return !isOtherNumber(first, fields[1:])
	}
	next := ""
	if len(fields) > 1 {
		next = fields[1]
	}
	switch {
	case first == "a" || first == "an" || first == "half" || first == "the":
		return containers[bare(next)] || sizes[next] && len(fields) > 2 && containers[bare(fields[2])] || partOf(fields[1:])
	case numberWords[first]:
		return next != "" && !strings.HasPrefix(next, "minute") && !strings.HasPrefix(next, "hour")
	case containers[first]:
		return next == "of" || first == "pinch" || first == "handful"
	}
	return partOf(fields)
}

// bare takes the comma off a word: "an egg, beaten".
func bare(word string) string { return strings.TrimRight(word, ",") }

// partOf tells "juice of", "zest and juice of", "finely grated zest of".
func partOf(fields []string) bool {
	part := false
	for i, f := range fields {
		switch f {
		case "juice", "zest", "rind", "peel", "seeds", "leaves", "pulp", "flesh", "yolk", "yolks", "white", "whites":
			part = true
		case "of", "from":
			return part && i+1 < len(fields)
		case "and", "&", "finely", "grated", "pared", "freshly", "squeezed", "the", "strained":
		default:
			return false
		}
	}
	return false
}

// isOtherNumber tells numbers at a line's start that measure no food.
func isOtherNumber(first string, rest []string) bool {
	digits := strings.TrimLeftFunc(first, func(r rune) bool { return lexicon.IsNumeral(r) || strings.ContainsRune(".,/–-⁄", r) })
	next := digits
	if next == "" && len(rest) > 0 {
		next = rest[0]
	}
	if next == "to" || next == "-" || next == "–" || next == "or" {
		next = ""
		if len(rest) > 2 {
			next = rest[2]
		}
	}
	for _, other := range []string{"%", "percent", "st", "nd", "rd", "th", ":", "min", "hour", "hr", "h", "sec", "day",
		"week", "°", "ºc", "ºf", "degree"} {
		if next == other || len(other) > 2 && strings.HasPrefix(next, other) || other == "%" && strings.HasPrefix(next, "%") ||
			other == "°" && strings.HasPrefix(next, "°") || other == ":" && strings.HasPrefix(next, ":") {
			return true
		}
	}
	return next == "c" || next == "f"
}

// endsMeasured tells "Flour: 200 g", "Butter ..... 50g", "Eggs – 3": a name,
// then an amount to the line's end.
func endsMeasured(words string) bool {
	if lexicon.IsNumeral(lexicon.First(words)) || len(words) > 100 {
		return false
	}
	at := strings.IndexFunc(words, lexicon.IsNumeral)
	if at < 3 {
		return false
	}
	name, amount := words[:at], words[at:]
	fields := strings.Fields(lexicon.Lower(amount))
	if len(fields) > 6 || isOtherNumber(fields[0], fields[1:]) {
		return false
	}
	closed := strings.TrimRight(name, " \t\u00a0")
	parted := closed != name && (strings.HasSuffix(name, "\t") || strings.HasSuffix(name, "  "))
	for _, sep := range []string{":", "..", "…", "–", "—", "-", "=", " x", " ×", "|"} {
		parted = parted || strings.HasSuffix(closed, sep)
	}
	if len(fields) == 1 && !strings.ContainsFunc(fields[0], unicode.IsLetter) {
		return parted
	}
	return isUnitWord(fields) && (parted || len(fields) <= 2 && len(strings.Fields(name)) <= 4 && !strings.HasSuffix(words, "."))
}

// isUnitWord tells whether the amount's fields carry a kitchen unit.
func isUnitWord(fields []string) bool {
	for i, f := range fields {
		unit := strings.TrimLeftFunc(f, func(r rune) bool { return !unicode.IsLetter(r) })
		unit = strings.TrimRight(unit, ".,)")
		if i <= 3 && units[unit] {
			return true
		}
	}
	return false
}

// firstFields cuts the first n words, in lower case.
func firstFields(words string, n int) []string {
	if len(words) > 200 {
		words = words[:200]
	}
	fields := strings.Fields(lexicon.Lower(words))
	if len(fields) > n {
		fields = fields[:n]
	}
	return fields
}

var (
	vague = lexicon.Of(`about approx approx. approximately roughly around circa ca ca. c. scant heaped heaping generous good
		just over under another additional at least up to level rounded nearly almost`)
	numberWords = lexicon.Of(`one two three four five six seven eight nine ten eleven twelve dozen couple quarter third`)
	containers  = lexicon.Of(`pinch pinches handful handfuls knob dash splash glug drizzle dollop sprinkle sprinkling bunch sprig
		sprigs clove cloves stick tin can jar packet packets sachet envelope slice slices piece cup cups tablespoon
		teaspoon tbsp tsp spoonful tablespoons teaspoons pound ounce litre liter kilo pint quart half quarter dozen
		couple few little bit squeeze grating twist block carton tub bottle bag head stalk leaf sheet thumb thumb-sized
		lemon lime orange onion egg walnut-sized handful-sized third ladle ladleful punnet ball shot nub
		potato carrot banana apple shallot small medium large big whole good generous`)
	sizes = lexicon.Of(`small medium large big good generous tiny heaped scant level whole little`)
	units = lexicon.Of(`mg g gr gram grams gramme grammes kg kilo kilos kilogram kilograms oz ounce ounces lb lbs pound pounds
		ml cl dl l litre litres liter liters tsp teaspoon teaspoons tsps tbsp tbsps tablespoon tablespoons cup cups c
		pint pints pt quart quarts qt gallon gallons fl cm mm in inch inches stick sticks tin tins can cans jar jars
		packet packets sachet sachets clove cloves sprig sprigs bunch bunches pinch pinches dash piece pieces slice
		slices sheet sheets leaf leaves handful handfuls each pcs pc whole large medium small head heads stalk stalks
		dessertspoon dessertspoons millilitre millilitres milliliter milliliters cc bottle bottles bag bags`)
)
