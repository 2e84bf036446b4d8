package about

import "benchproof/kitchen/verify/speech"

// isOrdered tells whether the host does something with what is named at a word.
func (r *Reading) isOrdered(word int) bool {
	for k := word - 1; k >= 0 && k >= word-6 && !r.Text.Parts(k); k-- {
		if orders[r.Text.Words[k].Text] || deeds[r.Text.Words[k].Text] {
			return true
		}
	}
	return false
}

// GoesIn tells whether "goes in" or "in" follows word k in its sentence.
func (r *Reading) GoesIn(k int) bool {
	return r.Text.NearBehind(k+1, 5, "goes", "go", "in")
}

// IsInstruction tells whether the host does something with what number i
// measures.
func (r *Reading) IsInstruction(i int) bool {
	s := r.Said[i]
	for k := s.From - 1; k >= 0 && k >= s.From-5; k-- {
		if orders[r.Text.Words[k].Text] {
			return true
		}
	}
	return r.IsDoneTo(i)
}

// orders are words by which a host tells what to do.
var orders = speech.SetOf(`needs wants add adding spread brush put take need use stir whisk pour tip sprinkle measure weigh mix crack in with plus and then drop
	fold rub beat toss grate chop chuck bung sling lob throw goes go get grab squeeze`)

// deeds are orders that leave no doubt that something goes into the dish.
var deeds = speech.SetOf("added beat tuck nestle slip pop put putting chuck bung sling lob whack add adding crack throw toss chop grate squeeze slice stir drop pop whisk")

// IsDoneTo tells whether one of them stands right before a number.
func (r *Reading) IsDoneTo(i int) bool {
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

// puts are those of them that say it from further off: "I put in eggs as well, two".
var puts = speech.SetOf("put putting add adding chuck bung sling lob throw")
