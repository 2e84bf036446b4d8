package speech

import "benchproof/kitchen/measure"

// againReach is how many words back the amount can lie that "the same" repeats.
const againReach = 25

// again reads amounts that are told by the one before: "and the same of sugar",
// "half that of pork", "double that". Shares are all until it has been called.
func (t Text) again(all []Said) []Said {
	var out []Said
	last := -1 // the measure said last, in out
	next := 0
	for i := 0; i < len(t.Words); i++ {
		for next < len(all) && all[next].From <= i {
			out = append(out, all[next])
			if s := all[next]; !s.Struck && (s.Kind == Measure || last >= 0 && s.Kind == Count && s.Unit == "" && s.Amount.From.Cmp(measure.Whole(10)) >= 0) {
				last = len(out) - 1
			}
			next++
		}
		factor, to, ok := t.repeats(i)
		if !ok || last < 0 || i-out[last].To > againReach {
			continue
		}
		if t.word(to-1) == "one" {
			factor = factor.Quo(out[last].Amount.From) // "half of one" teaspoon
		}
		s := Said{Kind: out[last].Kind, Unit: out[last].Unit, Amount: out[last].Amount.Scale(factor), From: i, To: to, Again: true}
		if n := len(out) - 1; out[n].From == i {
			out[n] = s // the "half" of "half that"
		} else {
			out = append(out, s)
		}
		last = len(out) - 1
	}
	return append(out, all[next:]...)
}

// repeats reads "the same", "half that", "double that" at word i.
func (t Text) repeats(i int) (factor measure.Number, to int, ok bool) {
	next := t.word(i + 1)
	switch t.word(i) {
	case "same":
		if (t.word(i-1) != "the" || !t.open(i-1)) && t.word(i+1) != "of" {
			return factor, i, false
		}
		to = i + 1
		if w := t.word(to); w == "amount" || w == "weight" || w == "quantity" || w == "again" {
			to++
		}
		return measure.Whole(1), to, t.word(to) == "of" && t.word(to+1) != "the" && t.word(to+1) != "thing"
	case "half":
		if next == "of" && t.word(i+2) == "one" && t.endsAt(i+2) {
			return measure.Ratio(1, 2), i + 3, true
		}
		return measure.Ratio(1, 2), i + 2, (next == "that" || next == "as") && t.ofFood(i+2)
	case "twice", "double":
		return measure.Whole(2), i + 2, next == "that" && t.ofFood(i+2)
	}
	return factor, i, false
}

// ofFood tells whether "of" and a food, or a stop, stand at word i.
func (t Text) ofFood(i int) bool {
	return t.word(i) == "of" || i > 0 && i <= len(t.Words) && t.Words[i-1].Stop != None || i == len(t.Words)
}
