package ingredient

import (
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/lexicon"
)

// takeName makes the food's name of what is left: sizes and preparations before
// it go where they belong, alternatives behind "or" become a note.
func (l *line) takeName() {
	name := strings.Trim(cutOf(l.rest), " ,;:.-–—*")
	name = l.takeSize(name)
	name = l.takeAlternative(name)
	name = l.takeTrailingPrep(l.takeLeadingPrep(name))
	l.Food = l.takeUnitBehind(name)
	if l.Amount.Unit == measure.Stick && strings.Contains(lexicon.Lower(l.Food), "celery") {
		l.Amount.Unit = measure.Stalk
	}
}

// isSize tells a word for how big a thing is, "large", "medium-sized", "lg".
func isSize(word string) bool {
	lower := lexicon.Lower(word)
	return sizes[lower] || short[lower] != ""
}

// short are sizes cut short.
var short = map[string]string{"lg": "large", "lrg": "large", "med": "medium", "sm": "small", "ex-large": "extra-large"}

// takeTrailingPrep takes "finely chopped" off the end: "2 onions finely chopped".
func (l *line) takeTrailingPrep(name string) string {
	fields := strings.Fields(name)
	n, done := len(fields), len(fields)
	for n > 1 {
		word := lexicon.Lower(fields[n-1])
		if !leading[word] && !adverbs[word] && word != "and" {
			break
		}
		n--
		if leading[word] || adverbs[word] && done < len(fields) {
			done = n
		}
	}
	if done == len(fields) || done == 0 || l.isWhole(name, strings.Join(fields[:done], " ")) {
		return name
	}
	l.preps = append([]string{strings.Join(fields[done:], " ")}, l.preps...)
	return strings.Join(fields[:done], " ")
}

// takeUnitBehind takes a unit that stands behind the food: "2 garlic cloves" are
// two cloves of garlic.
func (l *line) takeUnitBehind(name string) string {
	at := strings.LastIndexByte(name, ' ')
	if at < 0 || !l.HasAmount || l.Amount.Unit != measure.Each {
		return name
	}
	if len(name) > 12 && strings.HasPrefix(lexicon.Lower(name[at:]), " cube") && strings.EqualFold(lexicon.LastWord(name[:at]), "stock") {
		l.Amount.Unit = measure.Cube // "2 chicken stock cubes"
		return name[:at]
	}
	unit, ok := behind[lexicon.Lower(lexicon.LastWord(name[:at])+name[at:])]
	if !ok {
		return name
	}
	l.Amount.Unit = unit
	return name[:at]
}

// behind are the foods whose unit stands behind them.
var behind = map[string]measure.Unit{
	"garlic clove": measure.Clove, "garlic cloves": measure.Clove,
	"gelatine leaf": measure.Leaf, "gelatine leaves": measure.Leaf, "gelatin leaves": measure.Leaf, "gelatin leaf": measure.Leaf,
	"gelatine sheets": measure.Leaf, "gelatin sheets": measure.Leaf, "gelatine sheet": measure.Leaf, "gelatin sheet": measure.Leaf,
	"celery stalk": measure.Stalk, "celery stalks": measure.Stalk, "celery stick": measure.Stalk, "celery sticks": measure.Stalk,
	"celery rib": measure.Stalk, "celery ribs": measure.Stalk, "lemongrass stalk": measure.Stalk, "lemongrass stalks": measure.Stalk,
	"thyme sprig": measure.Sprig, "thyme sprigs": measure.Sprig, "rosemary sprig": measure.Sprig, "rosemary sprigs": measure.Sprig,
	"mint sprigs": measure.Sprig, "dill sprigs": measure.Sprig, "tarragon sprigs": measure.Sprig, "parsley sprigs": measure.Sprig,
	"bacon rashers": measure.Rasher, "bacon slices": measure.Slice, "bread slices": measure.Slice,
}

// known gives the food known by this name, "" if none is.
func (l *line) known(name string) string {
	if l.knows == nil {
		return ""
	}
	return l.knows(name)
}

// measuredAs keeps a preparation that was done before measuring.
func (l *line) measuredAs(prep string) {
	l.As = strings.TrimSpace(l.As + " " + prep)
}

// isWhole tells that a name means another food than what is left of it without
// its preparation.
func (l *line) isWhole(name, rest string) bool {
	id := l.known(name)
	return id != "" && id != l.known(rest)
}

// takeSize takes sizes off the start: "large", "medium-sized".
func (l *line) takeSize(name string) string {
	for {
		word, rest, ok := strings.Cut(name, " ")
		lower := strings.TrimSuffix(lexicon.Lower(word), "-sized")
		if lower == "extra" && strings.HasPrefix(lexicon.Lower(rest), "large ") {
			lower, rest = "extra large", rest[len("large "):]
		}
		garlic := lower == "fat" && strings.HasPrefix(lexicon.Lower(rest), "garlic")
		eggs := lower == "whole" && strings.HasPrefix(lexicon.Lower(rest), "egg")
		if !ok || rest == "" || !isSize(lower) && !garlic && !eggs || lower == "thick" || lower == "thin" || lower == "fat" && !garlic {
			return name
		}
		if full := short[lower]; full != "" {
			lower = full
		}
		if l.Size == "" && !eggs {
			l.Size = lower
		} else {
			l.note(word)
		}
		name = rest
	}
}

// takeAlternative keeps "or margarine" as a note. In "red or white wine vinegar"
// the words before "or" are no food by themselves: it is red wine vinegar, or
// white wine vinegar.
func (l *line) takeAlternative(name string) string {
	at := strings.Index(lexicon.Lower(name), " or ")
	if at <= 0 {
		return name
	}
	before, after := name[:at], strings.TrimSpace(name[at+len(" or "):])
	if l.known(before) == "" && isDescription(before) {
		_, shared, ok := strings.Cut(after, " ")
		if !ok {
			return name
		}
		before += " " + shared
	}
	l.note("or " + after)
	return before
}

// takeLeadingPrep takes "finely chopped" off the start of a name: adverbs, then
// one word or several for what is done to the food. At least a word must stay,
// and a fixed name ("ground almonds", "chopped tomatoes") stays whole.
func (l *line) takeLeadingPrep(name string) string {
	fields := strings.Fields(name)
	done := leadingPreps(fields)
	if done == 0 {
		return name
	}
	rest := strings.Join(fields[done:], " ")
	if done == 1 && fixed[lexicon.Lower(fields[0]+" "+lexicon.LastWord(rest))] || l.isWhole(name, rest) {
		return name
	}
	prep := strings.Trim(strings.Join(fields[:done], " "), ",")
	l.measuredAs(prep)
	l.preps = append([]string{prep}, l.preps...)
	return rest
}

// leadingPreps counts the words at the start of a name that are preparations,
// with the adverbs before them; the last word is never one. Cold water is water,
// but cold butter is butter kept cold.
func leadingPreps(fields []string) int {
	done := 0
	for n := range max(0, len(fields)-1) {
		word, before := lexicon.Lower(strings.Trim(fields[n], ",")), ""
		if n > 0 {
			before = lexicon.Lower(fields[n-1])
		}
		switch {
		case leading[word], word == "ground" && adverbs[before], tempered[word] && !strings.EqualFold(fields[len(fields)-1], "water"):
			done = n + 1
		case adverbs[word], (word == "and" || word == "&") && n > 0:
		default:
			return done
		}
	}
	return done
}

// isDescription tells words that describe a food and name none: "boneless",
// "ripe", "red".
func isDescription(text string) bool {
	fields := strings.Fields(lexicon.Lower(text))
	for _, f := range fields {
		if !describing[strings.Trim(f, ",")] {
			return false
		}
	}
	return len(fields) > 0
}

// isPreparation tells whether a remark says what is done to the food.
func isPreparation(remark string) bool {
	lower := lexicon.Lower(remark)
	for _, lead := range []string{"at room temp", "cut ", "room temp", "in chunks", "in strips", "in wedges", "in slices", "in pieces",
		"skin on", "skin-on", "skin off", "shell on", "shells on", "shell off", "tails on", "head on", "heads on", "bone in", "bone-in", "off the", "straight from", "plus "} {
		if strings.HasPrefix(lower, lead) {
			return lead != "plus "
		}
	}
	for _, f := range strings.Fields(lower) {
		f = strings.Trim(f, ",.;")
		if leading[f] || prepared[f] {
			return true
		}
	}
	return false
}

var (
	sizes = lexicon.Of(`small medium large jumbo big tiny mini huge extra-large xl x-large king medium-large fat thick thin thumb-sized`)

	// leading words are done to a food and are no part of its name.
	leading = lexicon.Of(`chopped sliced diced grated sifted melted softened packed toasted beaten peeled halved cubed shredded
		crumbled torn quartered trimmed minced crushed squeezed zested pitted stoned drained rinsed deseeded seeded
		cored washed shelled podded hulled browned cooled chilled sieved scalded scrubbed julienned flaked bashed
		destemmed de-stemmed thawed defrosted shaved mashed`)
	tempered = lexicon.Of(`cold lukewarm tepid warm`)
	adverbs  = lexicon.Of(`finely roughly coarsely thinly thickly freshly lightly firmly loosely well very gently tightly evenly`)

	// prepared words also speak of preparation behind a comma.
	prepared = lexicon.Of(`cold warm hot tepid lukewarm soft firm cooked boiled roasted ground whisked separated warmed heated dissolved
		soaked cut split snipped scraped skinned boned broken bruised picked sized room chunks wedges cubes strips matchsticks rounds
		slices rings florets ribbons batons discarded removed reserved wiped patted dry dried strained mashed puréed pureed
		whipped blanched steamed fried grilled poached marinated shucked cleaned gutted filleted pounded flattened rolled
		juiced weighed whole lengthways lengthwise crosswise diagonally quarters halves half pieces segmented unpeeled
		unsifted unpacked cracked skinless boneless skin-on bone-in fresh frozen ripe raw beard bearded debearded
		scored rubbed frothed heaped levelled level pods tied kneaded proved activated refreshed fed bubbly cleaned`)

	describing = lexicon.Of(`boneless skinless bone-in skin-on ripe fresh dried frozen cold hot warm soft firm red white green
		yellow brown black purple dark light pale plain mild strong sweet sour raw unsalted salted smoked unsmoked organic
		good-quality good best small large medium young old thick thin lean fatty free-range full-fat low-fat skimmed whole
		crisp crunchy tart fine coarse flat-leaf curly natural unwaxed wild baby new floury waxy semi-skimmed
		unsweetened sweetened toasted roasted cooked uncooked crusty stale day-old instant fast-action active short long tinned canned
		caster granulated golden demerara muscovado vegetable chicken beef lamb pork fish soft-boiled freshly finely`)

	// fixed names begin with a word that elsewhere is a preparation.
	fixed = wordPairs(`chopped tomatoes, crushed tomatoes, diced tomatoes, sliced bread, shredded wheat, beaten rice, flaked almonds,
		flaked rice, toasted oil, crushed chillies, crushed ice, shaved ice, mashed potato, mashed potatoes, minced beef, minced pork, minced lamb, minced turkey,
		minced chicken, minced meat, drained weight, shelled pistachios, pitted olives, stoned dates, pitted dates, squeezed juice,
		packed lunch, crushed pineapple, dried fruit, peeled tomatoes, shredded coconut, flaked coconut, pitted prunes,
		flaked salt, sliced almonds, flaked fish, crushed garlic-paste, shredded suet, melted cheese-slices`)
)

func wordPairs(list string) map[string]bool {
	set := make(map[string]bool)
	for _, p := range strings.Split(list, ",") {
		set[squeeze(p)] = true
	}
	return set
}
