package food

import (
	"slices"
	"strings"

	"benchproof/kitchen/measure"
)

// chosenWeight is the weight that an amount goes by. replaced is the form that
// was said, if this is the weight of another.
type chosenWeight struct {
	weight   Weight
	replaced string
}

// weightFor chooses the weight for a unit and the words that name forms. A
// weight of the form said goes before one of a related form, that before the
// unit's default, that before the usual one of another unit, scaled; within a
// form one of the same unit goes before a scaled one.
func (f *Food) weightFor(u measure.Unit, form string, sys measure.System) (chosenWeight, bool) {
	candidates := f.candidates(u, sys)
	if len(candidates) == 0 {
		return chosenWeight{}, false
	}
	words := formWords(form)
	for _, word := range words {
		if w, ok := bestOfForm(candidates, u, word); ok {
			return chosenWeight{weight: w}, true
		}
	}
	for _, word := range words {
		for _, related := range relatedForms[word] {
			if w, ok := bestOfForm(candidates, u, related); ok {
				return chosenWeight{weight: w, replaced: word}, true
			}
		}
	}
	chosen := chosenWeight{weight: usual(candidates)}
	counted := u.Kind() != measure.Volume
	if at := slices.IndexFunc(candidates, func(w Weight) bool { return w.Unit == u }); !counted && at >= 0 {
		chosen.weight = candidates[at]
	} else if !counted {
		chosen.weight, _ = bestOfForm(candidates, u, chosen.weight.Form)
	}
	for _, word := range words {
		if word != chosen.weight.Form && !harmlessForms[word] && isSize(word) == counted {
			chosen.replaced = word
		}
	}
	return chosen, true
}

// usual is the weight where no form is said: the first that is everybody's, or
// a country's that has no form either, such as its can. A size that is not
// said is no country's in particular.
func usual(candidates []Weight) Weight {
	for _, w := range candidates {
		if w.System == "" || w.Form == "" {
			return w
		}
	}
	return candidates[0]
}

// candidates are the weights that a unit can go by: those of the same unit or
// one that stands for it, or every volume for a volume. The sizes of sys come
// first, those of other systems only stand in where there are no others.
func (f *Food) candidates(u measure.Unit, sys measure.System) []Weight {
	kind := u.Kind()
	switch kind {
	case measure.Volume, measure.Length:
		return f.weightsWhere(sys, func(w Weight) bool { return w.Unit.Kind() == kind })
	case measure.Count:
	default:
		return nil
	}
	found := f.weightsWhere(sys, func(w Weight) bool { return w.Unit == u })
	for _, other := range standsFor[u] {
		if len(found) > 0 {
			break
		}
		found = f.weightsWhere(sys, func(w Weight) bool { return w.Unit == other })
	}
	return found
}

func (f *Food) weightsWhere(sys measure.System, fits func(Weight) bool) []Weight {
	var own, all, foreign []Weight
	for _, w := range f.Weights {
		switch {
		case !fits(w):
		case w.System == "":
			all = append(all, w)
		case w.isOf(sys):
			own = append(own, w)
		default:
			foreign = append(foreign, w)
		}
	}
	if len(own)+len(all) == 0 {
		return foreign
	}
	return append(own, all...)
}

// isOf tells whether w is a size of sys or everybody's. The metric sizes are
// the EU's and the UK's.
func (w Weight) isOf(sys measure.System) bool {
	return w.System == "" || w.System == sys || w.System == measure.Metric && sys == measure.Imperial
}

// standsFor lists the counted units whose weight serves for another.
var standsFor = map[measure.Unit][]measure.Unit{
	measure.Each:  {measure.Piece, measure.Head, measure.Leaf, measure.Stalk, measure.Cube},
	measure.Piece: {measure.Each},
	measure.Head:  {measure.Each},
	measure.Leaf:  {measure.Sheet, measure.Each},
	measure.Sheet: {measure.Leaf, measure.Each},
	measure.Stalk: {measure.Stick, measure.Each},
	measure.Stick: {measure.Stalk},
	measure.Cube:  {measure.Piece, measure.Each},
	measure.Tin:   {measure.Jar},
	measure.Jar:   {measure.Tin},
}

// bestOfForm gives the weight of one form: of the unit itself, else the
// greatest, which is the least rounded.
func bestOfForm(candidates []Weight, u measure.Unit, form string) (Weight, bool) {
	var best Weight
	found := false
	for _, w := range candidates {
		switch {
		case w.Form != form:
		case w.Unit == u:
			return w, true
		case !found || w.Grams.Cmp(best.Grams) > 0:
			best, found = w, true
		}
	}
	return best, found
}

// formWords cuts the words that name forms: the whole first, then each, with
// "extra" kept to the word behind it.
func formWords(form string) []string {
	fields := strings.Fields(strings.ToLower(strings.ReplaceAll(form, ",", " ")))
	if len(fields) == 0 {
		return nil
	}
	words := []string{strings.Join(fields, " ")}
	for i := 0; i < len(fields) && len(fields) > 1; i++ {
		word := fields[i]
		if word == "extra" && i+1 < len(fields) {
			i++
			word += " " + fields[i]
		}
		if word != words[0] {
			words = append(words, word)
		}
	}
	return words
}

// relatedForms lists, for a form without a weight, those near it, nearest
// first.
var relatedForms = map[string][]string{
	"chopped":     {"diced", "pieces", "minced", "sliced"},
	"diced":       {"chopped", "pieces", "sliced"},
	"minced":      {"chopped", "grated", "diced"},
	"pieces":      {"chopped", "diced", "halves"},
	"sliced":      {"flaked", "chopped", "diced"},
	"flaked":      {"sliced", "slivered"},
	"slivered":    {"sliced", "chopped"},
	"grated":      {"shredded", "minced"},
	"shredded":    {"grated", "sliced", "chopped"},
	"crumbled":    {"crushed", "grated"},
	"crushed":     {"crumbled", "chopped", "mashed"},
	"mashed":      {"pureed"},
	"pureed":      {"mashed"},
	"halves":      {"pieces", "quartered", "whole"},
	"quartered":   {"halves", "pieces", "chopped"},
	"whole":       {"halves"},
	"sifted":      {"stirred"},
	"stirred":     {"sifted"},
	"unsifted":    {"dipped"},
	"extra large": {"jumbo", "large"},
	"jumbo":       {"extra large", "large"},
	"peewee":      {"small"},
	"mini":        {"small"},
}

// harmlessForms leave the weight of a measure as it was.
var harmlessForms = map[string]bool{"unpacked": true, "whole": true, "melted": true, "stirred": true, "dipped": true,
	"unsifted": true, "undrained": true, "unpopped": true, "medium": true}

// sizeWords name sizes of pieces; the other forms name what a measure holds.
var sizeWords = map[string]bool{"small": true, "medium": true, "large": true, "jumbo": true, "mini": true, "peewee": true}

func isSize(word string) bool {
	return sizeWords[strings.TrimPrefix(word, "extra ")]
}
