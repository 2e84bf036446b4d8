package about

import (
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
	if of {
		k++
	}
	for k < len(words) && (leads[words[k].Text] || s.Kind == speech.Count && written.Between[words[k].Text]) {
		k++
	}
	for n := 3; n >= 1; n-- {
		name, sound := r.nameAt(k, n)
		if !sound || !(r.Book.Names.IsOther(name) || of && r.Book.Names.IsOtherAmong(name)) {
			continue
		}
		head := words[k+n-1].Stem
		switch {
		case n == 1 && r.Book.Names.HasHead(head):
			continue
		case len(r.Book.Vocab[head]) > 0: // the steps speak of it, though no line does
			if s.Kind == speech.Measure {
				r.Ties[i].Portion = head
			}
			return true
		case r.Book.Writes(head):
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

// tieUnknown finds a food that neither the recipe nor the larder has, the word k
// behind a measure and "of": "a tablespoon of zaatar". It must be one that the
// host puts in.
func (r *Reading) tieUnknown(i, k int, of bool) bool {
	s := r.Said[i]
	if !of || r.Text.At(k-1) != "of" || k >= len(r.Text.Words) || !measuresWell[s.Unit] || !r.IsInstruction(i) && !r.GoesIn(k) {
		return false
	}
	for k < len(r.Text.Words) && written.Describing[r.Text.At(k)] {
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

// GoesIn tells whether "goes in" or "in" follows word k in its sentence.
func (r *Reading) GoesIn(k int) bool {
	return r.Text.NearBehind(k+1, 5, "goes", "go", "in")
}

// measuresWell are units that little else than food is measured in.
var measuresWell = map[measure.Unit]bool{measure.Teaspoon: true, measure.Tablespoon: true, measure.Dessertspn: true, measure.Cup: true, measure.Gram: true, measure.Millilitre: true, measure.Ounce: true}

// noFoods are what else stands behind a measure and "of".
var noFoods = speech.SetOf("this that them these those each everything anything something stuff mixture mix batter dough sauce filling paste base love patience course room space time effort pressure everybody liquid juices cooking fun whatever dressing syrup stock mess")

// foreignBack is how many light words may stand between a foreign food and the
// amount behind it.
const foreignBack = 4

// tieForeignBefore finds one before its amount: "some apricot jam, three
// tablespoons".
func (r *Reading) tieForeignBefore(i int) bool {
	s := r.Said[i]
	counted := s.Kind == speech.Count && s.Amount.From.Cmp(measure.Whole(maxCount)) <= 0 && r.Text.Pronoun(s.To)
	if r.Book.Larder == nil || s.More || !counted && (s.Kind != speech.Measure || s.Unit.Kind() == measure.Count) {
		return false
	}
	for end := s.From; end > 0 && end >= s.From-foreignBack; end-- {
		if !r.isLightOrder(end, s.From) || r.Text.Words[end-1].Stop == speech.Sentence && !r.isAlone(end, i) {
			break
		}
		for n := 3; n >= 1; n-- {
			if end-n < 0 {
				continue
			}
			name, sound := r.nameAt(end-n, n)
			if head := r.Text.Words[end-1].Stem; sound && r.Book.Names.IsOther(name) && !r.Book.Names.HasHead(head) && len(r.Book.Vocab[head]) == 0 && !r.Book.Writes(head) && !drinks[name] && (r.isOrdered(end-n) || r.isListEntry(i, end-n, end) || r.Text.Pronoun(s.To)) {
				r.Ties[i].Foreign = name
				return true
			}
		}
	}
	return r.tieBracketed(i) || r.tieUnknownBefore(i)
}

// tieUnknownBefore finds one that the larder does not know either: "anchovy essence, a
// tablespoon of it".
func (r *Reading) tieUnknownBefore(i int) bool {
	s := r.Said[i]
	if s.From == 0 || !measuresWell[s.Unit] || !r.Text.Pronoun(s.To) || len(r.mentionsAt(s.From-8, s.From)) > 0 {
		return false
	}
	w := r.Text.Words[s.From-1]
	if len(w.Text) < 4 || noFoods[w.Text] || written.Silent[w.Text] || written.Things[w.Text] || written.IsClass(w.Text) || speech.IsNumber(w.Text) || r.Book.Writes(w.Stem) || r.Book.Writes(w.Text) || len(r.Book.Vocab[w.Stem]) > 0 {
		return false
	}
	r.Ties[i].Foreign = w.Text
	return true
}

// isLightOrder tells whether the words from one index to another are light or say that
// something is put in: "peas, I lob in a cup of them".
func (r *Reading) isLightOrder(from, to int) bool {
	for k := from; k < to; k++ {
		if w := r.Text.Words[k].Text; !r.isLight(k, k+1) && !puts[w] {
			return false
		}
	}
	return true
}

// bracketed is how many words may stand between two commas behind a food.
const bracketed = 6

// tieBracketed finds a foreign food whose amount stands behind an aside: "And soy
// sauce, don't make a face, two teaspoons."
func (r *Reading) tieBracketed(i int) bool {
	s, words := r.Said[i], r.Text.Words
	if s.From < 2 || words[s.From-1].Stop != speech.Clause || words[s.To-1].Stop == speech.None {
		return false
	}
	end := s.From - 1
	for end > 0 && s.From-end <= bracketed && words[end-1].Stop == speech.None {
		end--
	}
	if end == 0 || words[end-1].Stop != speech.Clause {
		return false
	}
	for n := 3; n >= 1; n-- {
		if end-n < 1 || words[end-n-1].Stop == speech.None && !begins[words[end-n-1].Text] {
			continue
		}
		name, sound := r.nameAt(end-n, n)
		if head := words[end-1].Stem; sound && r.Book.Names.IsOther(name) && !r.Book.Names.HasHead(head) && len(r.Book.Vocab[head]) == 0 && !r.Book.Writes(head) && !drinks[name] {
			r.Ties[i].Foreign = name
			return true
		}
	}
	return false
}

// begins are words with which a list goes on.
var begins = speech.SetOf("and then plus also now some the")

// isAlone tells whether number i and light words are a sentence, from a word on: "I
// put in whisky. It's three tablespoons."
func (r *Reading) isAlone(from, i int) bool {
	s := r.Said[i]
	return from <= s.From && r.isLight(from, s.From) && r.Text.Words[s.To-1].Stop != speech.None
}

// isListEntry tells whether a food and number i behind it stand alone between two
// stops, as in a list: "Worcestershire sauce, three tablespoons."
func (r *Reading) isListEntry(i, from, to int) bool {
	s, words := r.Said[i], r.Text.Words
	if to != s.From || from == 0 || !measuresWell[s.Unit] {
		return false
	}
	if words[from-1].Stop != speech.None {
		return words[to-1].Stop != speech.None && words[s.To-1].Stop != speech.None
	}
	return begins[words[from-1].Text] && r.Text.At(s.To) != "of" && len(r.mentionsAt(s.To, s.To+2)) == 0
}

// isOrdered tells whether the host does something with what is named at a word.
func (r *Reading) isOrdered(word int) bool {
	for k := word - 1; k >= 0 && k >= word-6 && !r.Text.Parts(k); k-- {
		if orders[r.Text.Words[k].Text] || deeds[r.Text.Words[k].Text] {
			return true
		}
	}
	return false
}

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
		return r.isDoneTo(i) || s.To < len(r.Text.Words) && pieces[r.Text.Words[s.To].Stem] && r.Text.At(s.To+1) == "of"
	}
	if s.Kind != speech.Measure || s.Unit.Kind() != measure.Count {
		return s.Kind == speech.Measure
	}
	return s.Unit == measure.Clove || s.Unit == measure.Sprig || r.Text.At(s.To) == "of" && !Loose[s.Unit] && !IsPack[s.Unit]
}

// pieces are what a food is counted in that has no unit, as stems: "two squares of
// chocolate".
var pieces = speech.SetOf("square slice rasher sheet strip cube spoon spoonful scoop blob lump anchovy fillet ring wedge shaving curl")

// IsPack are units of which a host may speak without putting in what they hold.
var IsPack = map[measure.Unit]bool{measure.Tin: true, measure.Jar: true, measure.Packet: true, measure.Bottle: true, measure.Carton: true}

// maxCount is the most of a thing that is counted into a dish.
const maxCount = 20

// deeds are orders that leave no doubt that something goes into the dish.
var deeds = speech.SetOf("tuck nestle slip pop put putting chuck bung sling lob whack add adding crack throw toss chop grate squeeze slice stir drop pop whisk")

// puts are those of them that say it from further off: "I put in eggs as well, two".
var puts = speech.SetOf("put putting add adding chuck bung sling lob throw")

// isDoneTo tells whether one of them stands right before a number.
func (r *Reading) isDoneTo(i int) bool {
	s := r.Said[i]
	for k := s.From - 1; k >= 0 && k >= s.From-8 && !r.Text.Parts(k); k-- {
		if k < s.From-3 && !puts[r.Text.Words[k].Text] {
			continue
		}
		if deeds[r.Text.Words[k].Text] {
			return true
		}
	}
	return false
}

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

// orders are words by which a host tells what to do.
var orders = speech.SetOf(`add adding spread brush put take need use stir whisk pour tip sprinkle measure weigh mix crack in with plus and then drop
	fold rub beat toss grate chop chuck bung sling lob throw goes go get grab squeeze`)

// IsInstruction tells whether the host does something with what number i
// measures.
func (r *Reading) IsInstruction(i int) bool {
	s := r.Said[i]
	for k := s.From - 1; k >= 0 && k >= s.From-5; k-- {
		if orders[r.Text.Words[k].Text] {
			return true
		}
	}
	return r.isDoneTo(i)
}
