package food

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

// ReadTable reads a table of foods, plain text that a person can edit:
//
//	aisle: Baking
//
//	plain flour
//	    id: plain-flour
//	    also: all-purpose flour, AP flour
//	    source: USDA SR 20081
//	    weighs: cup 125
//	    weighs (estimate): cup sifted 115, handful 30
//	    holds: water 11.92, energy 364, protein 10.33
//	    allergens: wheat
//	    may hold: soya
//	    packs: 500 g bag, 1.5 kg bag
//
// A name at the line's start begins a food, indented lines tell about it, a
// line with # is a comment. The aisle stands for all foods behind it. A weight
// is a US measure or a counted unit ("each", "clove"), a form or size if any,
// for sizes of another country its system in square brackets, and grams; the
// first weight of a unit is its default. "weighs" has the food's source unless
// it names another in brackets. What 100 g hold is in g, energy in kcal,
// sodium, cholesterol and calcium in mg; one left out is not known.
//
// An error is fault.Invalid and names the line.
func ReadTable(r io.Reader) ([]Food, error) {
	t := tableReader{ids: map[string]int{}}
	lines := bufio.NewScanner(r)
	for lines.Scan() {
		t.line++
		if err := t.read(lines.Text()); err != nil {
			return nil, err
		}
	}
	if err := lines.Err(); err != nil {
		return nil, fmt.Errorf("read larder table: line %d: %w", t.line+1, err)
	}
	if err := t.finish(); err != nil {
		return nil, err
	}
	return t.foods, nil
}

// tableReader is where ReadTable stands.
type tableReader struct {
	line  int
	aisle string
	foods []Food
	food  *Food // being read; nil before the first
	first int   // line of its name
	seen  map[string]bool
	ids   map[string]int // id to line
}

func (t *tableReader) fail(format string, args ...any) error {
	return fault.Invalidf("", "line %d: "+format, append([]any{t.line}, args...)...)
}

// read takes one line.
func (t *tableReader) read(line string) error {
	text := strings.TrimSpace(line)
	switch {
	case text == "", strings.HasPrefix(text, "#"):
		return nil
	case strings.HasPrefix(line, "aisle:"):
		if err := t.finish(); err != nil {
			return err
		}
		t.aisle = strings.TrimSpace(strings.TrimPrefix(line, "aisle:"))
		if !slices.Contains(Aisles, t.aisle) {
			return t.fail("there is no aisle %q", t.aisle)
		}
		return nil
	case line[0] != ' ' && line[0] != '\t':
		if err := t.finish(); err != nil {
			return err
		}
		if strings.ContainsAny(text, ":,;") {
			return t.fail("a food's name has no colon or comma; indent what tells about a food")
		}
		t.food, t.first, t.seen = &Food{Name: text, Aisle: t.aisle}, t.line, map[string]bool{}
		return nil
	}
	key, value, ok := strings.Cut(text, ":")
	if !ok {
		return t.fail("write what it is before a colon, as in “also: maize flour”")
	}
	if t.food == nil {
		return t.fail("no food stands above this line")
	}
	return t.field(strings.TrimSpace(key), strings.TrimSpace(value))
}

// field takes one indented line about the food being read.
func (t *tableReader) field(key, value string) error {
	if value == "" {
		return t.fail("nothing stands behind “%s:”", key)
	}
	if t.seen[key] {
		return t.fail("“%s” stands twice for %s", key, t.food.Name)
	}
	t.seen[key] = true
	source, bySource := strings.CutPrefix(key, "weighs (")
	switch {
	case key == "id":
		t.food.ID = value
	case key == "also":
		t.food.Names = list(value)
	case key == "plural":
		t.food.Plural = value
	case key == "source":
		t.food.Source = value
	case key == "weighs":
		return t.weights(value, "")
	case bySource && strings.HasSuffix(source, ")"):
		return t.weights(value, strings.TrimSuffix(source, ")"))
	case key == "holds":
		return t.nutrients(value)
	case key == "allergens":
		return t.codes(&t.food.Allergens, value)
	case key == "may hold":
		return t.codes(&t.food.MayHold, value)
	case key == "packs":
		return t.packs(value)
	default:
		return t.fail("“%s” is nothing a food has; it can have id, also, plural, source, weighs, holds, allergens, may hold, packs", key)
	}
	return nil
}

// list cuts a value at its commas.
func list(value string) []string {
	parts := strings.Split(value, ",")
	for i := range parts {
		parts[i] = strings.TrimSpace(parts[i])
	}
	return parts
}

func (t *tableReader) codes(to *[]string, value string) error {
	for _, code := range list(value) {
		if _, ok := allergens[code]; !ok {
			return t.fail("%q is no allergen code; the codes are %s", code, strings.Join(AllergenCodes(), ", "))
		}
		*to = append(*to, code)
	}
	return nil
}

// weights takes "cup 125, cup sifted 115, each large [metric] 60".
func (t *tableReader) weights(value, source string) error {
	for _, text := range list(value) {
		words := strings.Fields(text)
		if len(words) < 2 {
			return t.fail("%q is no weight; write unit, form if any, and grams: “cup sifted 115”", text)
		}
		grams, err := measure.ParseNumber(words[len(words)-1])
		if err != nil || grams.Sign() <= 0 {
			return t.fail("%q must end in grams above 0", text)
		}
		unit, rest, ok := leadingUnit(words[:len(words)-1])
		if !ok {
			return t.fail("%q begins with no unit", text)
		}
		w := Weight{Unit: unit, Grams: grams, Source: source}
		if n := len(rest); n > 0 && strings.HasPrefix(rest[n-1], "[") {
			system, ok := measure.ParseSystem(strings.Trim(rest[n-1], "[]"))
			if !ok {
				return t.fail("%s is no measuring system", rest[n-1])
			}
			w.System, rest = system, rest[:n-1]
		}
		w.Form = strings.Join(rest, " ")
		t.food.Weights = append(t.food.Weights, w)
	}
	return nil
}

// leadingUnit reads the unit at the start of words, of two words if it can.
func leadingUnit(words []string) (unit measure.Unit, rest []string, ok bool) {
	for n := min(2, len(words)); n > 0; n-- {
		if u, ok := measure.ParseUnit(strings.Join(words[:n], " ")); ok {
			return u, words[n:], true
		}
	}
	return "", nil, false
}

// nutrients takes "water 11.92, energy 364, protein 10.33".
func (t *tableReader) nutrients(value string) error {
	for _, text := range list(value) {
		word, figure, _ := strings.Cut(text, " ")
		n := nutrientNamed(word)
		if n == nutrientCount {
			return t.fail("%q is no nutrient of this table", word)
		}
		amount, err := measure.ParseNumber(strings.TrimSpace(figure))
		if err != nil || amount.Sign() < 0 {
			return t.fail("%q needs a figure of 0 or more behind %s", text, word)
		}
		if most := mostPer100(n); amount.Cmp(most) > 0 {
			return t.fail("100 g cannot hold %s %s of %s", figure, n.Unit(), word)
		}
		if t.food.Per100.Get(n) != nil {
			return t.fail("%s stands twice", word)
		}
		t.food.Per100 = t.food.Per100.Set(n, &amount)
	}
	return nil
}

func nutrientNamed(word string) Nutrient {
	for _, n := range AllNutrients() {
		if n.String() == word {
			return n
		}
	}
	return nutrientCount
}

// mostPer100 is what 100 g can hold: 100 g, or 902 kcal (the USDA's figure for
// pure fat, SR 04002 lard).
func mostPer100(n Nutrient) measure.Number {
	switch n.Unit() {
	case "mg":
		return measure.Whole(100_000)
	case "kcal":
		return measure.Whole(902)
	}
	return hundred
}

// packs takes "500 g bag, 1 l bottle, 6 each box".
func (t *tableReader) packs(value string) error {
	for _, text := range list(value) {
		words := strings.Fields(text)
		if len(words) < 2 {
			return t.fail("%q is no pack; write number, unit and its name: “500 g bag”", text)
		}
		n, err := measure.ParseNumber(words[0])
		if err != nil || n.Sign() <= 0 {
			return t.fail("%q must begin with a number above 0", text)
		}
		unit, rest, ok := leadingUnit(words[1:])
		if !ok {
			return t.fail("%q has no unit behind the number", text)
		}
		t.food.Packs = append(t.food.Packs, Pack{Amount: measure.Of(n, unit), Name: strings.Join(rest, " ")})
	}
	return nil
}

// finish checks the food that has been read and keeps it.
func (t *tableReader) finish() error {
	f := t.food
	if f == nil {
		return nil
	}
	t.food = nil
	at := func(format string, args ...any) error {
		return fault.Invalidf("", "line %d: "+format, append([]any{t.first}, args...)...)
	}
	switch prior, taken := t.ids[f.ID]; {
	case f.ID == "":
		return at("%s has no id", f.Name)
	case !isSlug(f.ID):
		return at("the id %q must be small letters, figures and hyphens", f.ID)
	case taken:
		return at("the id %s is taken on line %d", f.ID, prior)
	case f.Aisle == "":
		return at("no aisle stands above %s", f.Name)
	case f.Source == "":
		return at("%s does not say where its figures are from; write its source, or “estimate”", f.Name)
	}
	for i := range f.Weights {
		if f.Weights[i].Source == "" {
			f.Weights[i].Source = f.Source
		}
	}
	t.ids[f.ID] = t.first
	t.foods = append(t.foods, *f)
	return nil
}

func isSlug(id string) bool {
	for i := range len(id) {
		if c := id[i]; (c < 'a' || c > 'z') && (c < '0' || c > '9') && c != '-' {
			return false
		}
	}
	return id != "" && id[0] != '-' && id[len(id)-1] != '-'
}
