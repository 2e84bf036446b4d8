package about

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// tieForeign finds a food that the recipe does not have: "50 g of raisins", "add
// two bay leaves". It tells whether the number is settled by that.
func (r *Reading) tieForeign(i int) bool {
	s, words := r.Said[i], r.Text.Words
	if r.Book.Larder == nil || s.Kind == speech.Share || s.To >= len(words) || words[s.To-1].Stop != speech.None || !r.measuresFood(i) {
		return false
	}
	k := s.To
	if s.Kind == speech.Count && pieces[words[k].Stem] && r.Text.At(k+1) == "of" {
		k++
	}
	of := words[k].Text == "of"
	if of && r.Text.Pronoun(k) && words[k+1].Stop != speech.None {
		return false // "70 grams of that, just sprinkle it about"
	}
	if of {
		k++
	}
	for k < len(words) && (leads[words[k].Text] || s.Kind == speech.Count && written.Between[words[k].Text] || cutUp[words[k].Text]) {
		k++
	}
	for n := 3; n >= 1; n-- {
		name, sound := r.nameAt(k, n)
		if !sound || !(r.Book.Names.IsOther(name) || of && r.Book.Names.IsOtherAmong(name)) {
			continue
		}
		head := words[k+n-1].Stem
		switch {
		case s.Kind == speech.Measure && r.isStated(head):
			r.Ties[i].Portion = head // "a cup of stuffing" where a step fills with it
			return true
		case n == 1 && r.Book.Names.HasHead(head):
			continue
		case len(r.Book.Vocab[head]) > 0 && r.Book.WritesFood(head) && !(n > 1 && !r.Book.Writes(words[k].Stem) && r.Book.Names.IsOther(name)): // the steps speak of it, though no line does
			if s.Kind == speech.Measure {
				r.Ties[i].Portion = head
			}
			return true
		case r.Book.WritesFood(head):
			return true // a line that nobody could read may be its line
		case drinks[name]:
			r.Ties[i].Aside = true
			return false
		}
		r.Ties[i].Foreign = name
		return true
	}
	return r.tieUnknown(i, k, of)
}

// isStated tells whether a step states an amount of a food, by its noun.
func (r *Reading) isStated(noun string) bool {
	return slices.ContainsFunc(r.Book.Portions, func(p written.Portion) bool { return p.Food == noun })
}

// tieUnknown finds a food that neither the recipe nor the larder has, the word k
// behind a measure and "of": "a tablespoon of zaatar". It must be one that the
// host puts in.
func (r *Reading) tieUnknown(i, k int, of bool) bool {
	s := r.Said[i]
	if !of || r.Text.At(k-1) != "of" || k >= len(r.Text.Words) || r.Text.At(s.From-1) == "like" || !measuresWell[s.Unit] && !(grown[s.Unit] && r.Elsewhere[i] < likelyOurs) || !r.IsInstruction(i) && !r.GoesIn(k) && r.Elsewhere[i] > likelyOurs {
		return false
	}
	for k < len(r.Text.Words) && (written.Describing[r.Text.At(k)] || cutUp[r.Text.At(k)]) {
		k++
	}
	word := r.Text.At(k)
	if k >= len(r.Text.Words) || len(word) < 4 || noFoods[word] || written.Silent[word] || written.Things[word] || written.IsClass(word) || speech.IsNumber(word) {
		return false
	}
	if stem := r.Text.Words[k].Stem; r.Book.Writes(stem) || r.Book.Writes(word) || r.Book.Names.HasHead(stem) || len(r.Book.Vocab[stem]) > 0 {
		return false
	}
	r.Ties[i].Foreign = word
	return true
}

// likelyOurs is how likely a number may be about something else and still measure what
// goes into the dish without a word that says so.
const likelyOurs = 0.3

// measuresWell are units that little else than food is measured in.
var measuresWell = map[measure.Unit]bool{measure.Teaspoon: true, measure.Tablespoon: true, measure.Dessertspn: true, measure.Cup: true, measure.Gram: true, measure.Millilitre: true, measure.Ounce: true}

// grown are units in which only what grows is counted.
var grown = map[measure.Unit]bool{measure.Head: true, measure.Bunch: true, measure.Sprig: true, measure.Clove: true, measure.Stalk: true, measure.Leaf: true}

// noFoods are what else stands behind a measure and "of".
var noFoods = speech.SetOf("this that them these those each everything anything something stuff mixture mix batter dough sauce filling paste base meat cattle sheep cows goats pigs love patience course room space time effort pressure everybody matter ones whole liquid juices cooking fun whatever mess")

// cutUp are words before a food that say what was done to it.
var cutUp = speech.SetOf("chopped sliced diced grated crushed peeled beaten sifted toasted melted softened minced shredded crumbled smoked roasted cooked dried cured pickled rinsed drained")

// leads are words between an amount and its food.
var leads = speech.SetOf("the that some your my our this more extra")

// measuresFood tells whether a number can be the amount of a food that is not in
// the recipe: a count only where the host does something with what is counted.
func (r *Reading) measuresFood(i int) bool {
	s := r.Said[i]
	if s.Kind == speech.Count {
		if s.Amount.From.Cmp(measure.Whole(maxCount)) > 0 || r.Text.At(s.To) == "of" {
			return false
		}
		if s.Amount.From.Cmp(measure.Whole(1)) > 0 && s.Kind == speech.Count && !s.Article {
			return true
		}
		return r.IsDoneTo(i) || r.IsSqueezed(s) || r.IsAdded(s) || s.To < len(r.Text.Words) && pieces[r.Text.Words[s.To].Stem] && r.Text.At(s.To+1) == "of"
	}
	if s.Kind != speech.Measure || s.Unit.Kind() != measure.Count {
		return s.Kind == speech.Measure
	}
	return s.Unit == measure.Clove || s.Unit == measure.Sprig || r.Text.At(s.To) == "of" && !Loose[s.Unit] && (!IsPack[s.Unit] || r.isPutIn(i))
}

// IsSqueezed tells "the zest of one orange", "the juice of half a lemon".
func (r *Reading) IsSqueezed(s speech.Said) bool {
	switch r.Text.At(s.From - 2) {
	case "zest", "juice", "rind", "peel":
		return r.Text.At(s.From-1) == "of"
	}
	return false
}

// IsAdded tells whether words behind a count say that it goes into the dish: "two
// parsnips too", "three anchovies go in".
func (r *Reading) IsAdded(s speech.Said) bool {
	for k := s.To; k < len(r.Text.Words) && k < s.To+5 && (k == s.To || r.Text.Words[k-1].Stop != speech.Sentence); k++ {
		w, next := r.Text.At(k), r.Text.At(k+1)
		if k > s.To && (w == "too" || puts[w] && next == "in" || cutUp[w] || w == "as" && next == "well" || (w == "go" || w == "goes") && next == "in") {
			return true
		}
	}
	return false
}

// isPutIn tells whether the host puts in what number i measures: "in goes a tin of
// chickpeas", "a tin of chickpeas as well".
func (r *Reading) isPutIn(i int) bool {
	s := r.Said[i]
	return r.isOrdered(s.From) || r.Text.NearBehind(s.To, 5, "in", "too") || r.Text.NearBehind(s.To, 4, "as")
}

// pieces are what a food is counted in that has no unit, as stems: "two squares of
// chocolate".
var pieces = speech.SetOf("square slice rasher sheet strip cube spoon spoonful scoop blob lump anchovy fillet ring wedge shaving curl")

// IsPack are units of which a host may speak without putting in what they hold.
var IsPack = map[measure.Unit]bool{measure.Tin: true, measure.Jar: true, measure.Packet: true, measure.Bottle: true, measure.Carton: true}

// maxCount is the most of a thing that is counted into a dish.
const maxCount = 20

// nameAt gives n words from k on as a name; sound is false where they can be none.
func (r *Reading) nameAt(k, n int) (name string, sound bool) {
	words := r.Text.Words
	if k+n > len(words) {
		return "", false
	}
	for q := k; q < k+n; q++ {
		if q > k {
			if words[q-1].Stop != speech.None {
				return "", false
			}
			name += " "
		}
		if w := words[q].Text; written.Blockers[w] || written.Things[w] {
			return "", false
		}
		name += words[q].Text
	}
	return name, true
}

// drinks are what a host has while cooking, where the recipe has none.
var drinks = speech.SetOf("tea coffee beer wine cider lemonade squash")
