package page

import (
	"strings"
	"unicode"

	"benchproof/kitchen/recipe/lexicon"
	"benchproof/kitchen/recipe/method"
)

// section is the part of the page that a heading opens.
type section int

const (
	atStart section = iota
	inIntro
	inIngredients
	inMethod
	inNotes
	inEquipment
	inCredits
)

// sections has every heading's words, in lower case, with the section they open.
var sections = openings(map[section]string{
	inIngredients: `ingredients|ingredient|ingredient list|ingredients list|the ingredients|you will need|you'll need|
			what you need|what you'll need|what you will need|shopping list|what goes in|you need|we need|
		one takes|take|you take|for this you need`,
	inMethod: `method|the method|directions|instructions|preparation|steps|procedure|what to do|how to make it|
			how to make|how to|cooking instructions|preparation method|cooking method|method of preparation|
			to make|process|how we make it|making it|baking instructions|preparation steps|here's how|here is how|how it's done`,
	inNotes: `notes|note|tips|tip|cook's notes|cook's note|cooks' notes|cook's tip|cook's tips|baker's notes|
			baker's tips|baker's note|chef's notes|chef's tip|recipe notes|storage|to store|storing|make ahead|variations|
			variation|substitutions|serving suggestions|serving suggestion|nutrition|nutrition facts|
			nutritional information|per serving|notes and tips|tips and notes|tips & tricks|good to know|before you start|
			storage notes|make-ahead|top tips|top tip|making ahead|leftovers|troubleshooting|bench notes`,
	inEquipment: `equipment|special equipment|tools|you will also need|you'll also need|utensils|equipment needed|
			kit|tins and tools|tools needed`,
	inCredits: `credits|credit|sources|source|acknowledgements|thanks`,
})

func openings(lists map[section]string) map[string]section {
	all := make(map[string]section)
	for s, names := range lists {
		for _, name := range strings.Split(names, "|") {
			all[strings.TrimSpace(name)] = s
		}
	}
	return all
}

// sectionOf reads a section heading: "INGREDIENTS", "Method:", "Directions –".
// Rest is what follows on the same line: "Method: Mix everything.". About is the
// component it names: "Ingredients for the pastry", "Pastry ingredients".
func sectionOf(words string) (s section, about, rest string, ok bool) {
	if len(words) > 2000 {
		return 0, "", "", false
	}
	head, rest, cut := strings.Cut(words, ":")
	rest = trim(rest)
	key := sectionKey(head)
	if s, ok = sections[key]; ok {
		if rest != "" && !cut {
			rest = ""
		}
		return s, "", rest, true
	}
	if len(key) > 60 || cut && rest != "" && sections[sectionKey(rest)] == 0 {
		return 0, "", "", false
	}
	if cut && rest != "" { // "For the pastry: ingredients"
		return sections[sectionKey(rest)], nameOf(head), "", true
	}
	for _, of := range []string{" for the ", " for ", " – ", " - "} {
		if before, after, found := strings.Cut(key, of); found {
			if s = sections[before]; s == inIngredients || s == inMethod {
				if people(after) {
					return s, "", "", true
				}
				return s, nameOf(after), "", true
			}
		}
	}
	for _, last := range []string{" ingredients", " method", " directions", " instructions"} {
		if before, found := strings.CutSuffix(key, last); found && len(strings.Fields(before)) <= 3 && !method.Begins(words) {
			return sections[last[1:]], nameOf(before), "", true
		}
	}
	return 0, "", "", false
}

// people tells that "for …" names a number of people, not a component.
func people(s string) bool {
	f := lexicon.First(s)
	return lexicon.IsNumeral(f) || numberWords[strings.Fields(s + " .")[0]]
}

func sectionKey(head string) string {
	head = lexicon.Lower(strings.ReplaceAll(head, "’", "'"))
	if open := strings.IndexByte(head, '('); open > 0 {
		head = head[:open]
	}
	return strings.Trim(head, " \t\u00a0.:-–—*_#=…")
}

// shape tells how far a row looks like a component's heading.
type shape int

const (
	plain   shape = iota
	maybe         // short, capitalised, alone: only its surroundings can tell
	likely        // ends in a word for a part of a dish: "Almond filling"
	certain       // colon, capitals, "For the …", marked up
)

// shapeOf judges one row. Shouting tells that the whole text is in capitals, so
// that capitals say nothing.
func shapeOf(r Row, shouting bool) shape {
	words := unbracket(r.Words)
	fields := strings.Fields(words)
	if len(fields) == 0 || len(fields) > 7 || len(words) > 70 || startsMeasured(words) && (!strings.HasSuffix(words, ":") || strings.ContainsFunc(words, lexicon.IsNumeral)) || endsMeasured(words) || r.Numbered {
		return plain
	}
	if inner, colon := strings.CutSuffix(words, ":"); colon {
		if strings.ContainsAny(inner, ":.;") {
			return plain
		}
		return certain
	}
	if strings.ContainsAny(words, ".;!?,:") || r.bulleted {
		return plain
	}
	first := lexicon.Lower(fields[0])
	switch {
	case r.marked,
		!shouting && isCapitals(words),
		first == "for" && len(fields) <= 6 && len(fields) > 1 && !uses[lexicon.Lower(fields[1])]:
		return certain
	case first == "to" && len(fields) <= 4:
		return likely
	case !unicode.IsUpper(lexicon.First(words)) || len(fields) > 4:
		return plain
	}
	if parts[lexicon.Lower(fields[len(fields)-1])] {
		return likely
	}
	if alone[lexicon.Lower(words)] {
		return plain
	}
	return maybe
}

// unbracket takes a remark in brackets off a heading's end: "For the top (don't
// skip!)".
func unbracket(words string) string {
	if open := strings.IndexByte(words, '('); open > 0 {
		if _, after, ok := strings.Cut(words[open:], ")"); ok && trim(strings.Trim(after, ":")) == "" {
			return trim(words[:open]) + trim(after)
		}
	}
	return words
}

// isCapitals tells a heading in capitals; one letter or two prove nothing.
func isCapitals(s string) bool {
	letters := 0
	for _, c := range s {
		if unicode.IsLower(c) {
			return false
		}
		if unicode.IsLetter(c) {
			letters++
		}
	}
	return letters >= 3
}

// nameOf makes a component's name of its heading: "For the pastry:" is
// "Pastry", "TO FINISH" is "To finish".
func nameOf(heading string) string {
	name := strings.TrimRight(unbracket(trim(heading)), ":.-–— \t")
	if isCapitals(name) {
		name = lexicon.Lower(name)
	}
	lower := lexicon.Lower(name)
	for _, lead := range []string{"ingredients for the ", "ingredients for ", "for the ", "for a ", "for ", "the ", "to make the ",
		"make the ", "making the "} {
		if len(lower) > len(lead) && strings.HasPrefix(lower, lead) && len(lower) == len(name) {
			name = name[len(lead):]
			break
		}
	}
	name = trim(name)
	for i, c := range name {
		if i == 0 {
			return string(unicode.ToUpper(c)) + name[len(string(c)):]
		}
	}
	return name
}

var (
	uses  = lexicon.Of(`dusting greasing frying brushing sprinkling serving rolling finishing garnish garnishing decorating decoration deep-frying`)
	parts = lexicon.Of(`pastry filling topping dough sauce glaze icing frosting cream custard crust base syrup marinade dressing
		salad garnish batter crumble sponge cake ganache stew broth mash rub poolish biga starter levain soaker
		scald tangzhong preferment brine pickle mousse meringue streusel crumb caramel curd jelly compote puree purée
		rice noodles vegetables meatballs dumplings patties pesto salsa relish chutney slaw gravy stuffing coating
		praline nougatine crumbs layer assembly decoration finish vinaigrette aioli mayonnaise buns bread rolls pickles
		curry tempering paste roux bechamel béchamel frangipane fritters wrappers kebabs skewers soup toppings
		biscuit biscuits cookies shell shells case wash sponges cakes`)
	alone = lexicon.Of(`salt pepper water butter flour oil sugar milk eggs egg vanilla herbs parsley basil coriander cilantro honey
		yeast rice lemon garlic onion cream cheese`)
)
