package naming

// findAmong finds the longest name that stands among the words of list with
// nothing beside it but modifiers. Words that make another food of it turn
// the answer into a question.
func (x *Names) findAmong(list []token) finding {
	best := x.bestAmong(list, false)
	if best.how == None {
		return best
	}
	best.how = Modifiers
	for i, t := range list {
		if !best.used[i] && modifiers[t.stem] == stateWord {
			best.how = Ask
		}
	}
	if len(best.entries) > 1 {
		best.how = Ask
	}
	return best
}

// findHead does the same but lets words pass that the larder does not know:
// "heirloom tomatoes". Where the noun names a class of foods ("milk") rather
// than one, an unknown word before it is a question.
func (x *Names) findHead(list []token) finding {
	best := x.bestAmong(list, true)
	if best.how == None {
		return best
	}
	best.how = Head
	if len(best.entries) > 1 || x.stateAmong(best) {
		best.how = Ask
	}
	if last := best.entries[0].tokens; len(last) == 1 && classNouns[last[0].stem] {
		best.how = Ask
		best.entries = x.sameNoun(best.entries, last[0].stem)
	}
	return best
}

func (x *Names) stateAmong(f finding) bool {
	for i, t := range f.list {
		if !f.used[i] && modifiers[t.stem] == stateWord {
			return true
		}
	}
	return false
}

// classNouns end the names of many foods that have little in common.
var classNouns = wordSet(`milk cream butter flour oil sugar water sauce vinegar extract powder seed syrup paste stock
	broth wine cheese noodle bean juice bread tea spice seasoning mix liqueur essence fat starch jam nut salt pudding cake
	biscuit fish meat sausage vegetable berry fruit dressing pickle curry rub chip cracker`)

// mostChoices bounds the list a person is asked to choose from.
const mostChoices = 12

// sameNoun adds the foods whose shown name ends in this noun.
func (x *Names) sameNoun(entries []nameEntry, noun string) []nameEntry {
	seen := map[string]bool{}
	for _, e := range entries {
		seen[e.of.ID] = true
	}
	for _, e := range x.known.heads[noun] {
		if len(entries) < mostChoices && e.primary && !seen[e.of.ID] {
			seen[e.of.ID] = true
			entries = append(entries, e)
		}
	}
	return entries
}

// bestAmong finds the name with most words among those of list, and those
// level with it. Every word left over must be a modifier, or unknown if
// unknowns may pass; never a word of other foods' names.
func (x *Names) bestAmong(list []token, unknowns bool) finding {
	head := x.headOf(list)
	if head < 0 {
		return finding{how: None}
	}
	best := finding{how: None}
	var bestScore int
	for _, names := range []*index{x.learned, x.known} {
		for i, t := range list {
			if earlier(list, i) {
				continue
			}
			for _, e := range names.rarest[t.stem] {
				used, score := x.fit(e, list, head, unknowns)
				if score == 0 || score < bestScore {
					continue
				}
				if score > bestScore {
					best, bestScore = finding{how: Modifiers, list: list, used: used}, score
				}
				best.add(e)
			}
		}
	}
	return best
}

func earlier(list []token, i int) bool {
	for _, t := range list[:i] {
		if t.stem == list[i].stem {
			return true
		}
	}
	return false
}

// add takes one more food on a level; a food already there is not repeated.
func (f *finding) add(e nameEntry) {
	for _, known := range f.entries {
		if known.of == e.of {
			return
		}
	}
	f.entries = append(f.entries, e)
}

// fit scores how well a name stands among the words of list: 0 not at all,
// else more for every word it takes, less for a word left over that makes
// another food of it, a little more for the same number (plural or singular)
// and for the shown name.
func (x *Names) fit(e nameEntry, list []token, head int, unknowns bool) (used []bool, score int) {
	if len(e.tokens) > len(list) {
		return nil, 0
	}
	used, same := place(e.tokens, list)
	if used == nil || !used[head] {
		return nil, 0
	}
	states := 0
	for i, t := range list {
		if used[i] {
			continue
		}
		class := x.known.class(t.stem)
		if class == foodWord && !isFigure(t.plain) || class == unknownWord && !unknowns && !isFigure(t.plain) {
			return nil, 0
		}
		if class == stateWord {
			states++
		}
	}
	score = 100*len(e.tokens) + 2*same + 1 - 10*states
	if e.primary {
		score++
	}
	return used, score
}

// place finds the words of a name in list, in the name's order, or in any
// order around an "of" ("zest of an orange"). It gives which words of list it
// took, nil if not all are there, and how many agree in number as well.
func place(name, list []token) (used []bool, same int) {
	anyOrder := false
	for _, t := range list {
		anyOrder = anyOrder || t.plain == "of" || t.plain == "from"
	}
	used = make([]bool, len(list))
	from := 0
	for _, n := range name {
		at := -1
		if anyOrder {
			from = 0
		}
		for i := from; i < len(list); i++ {
			if !used[i] && list[i].stem == n.stem {
				at = i
				break
			}
		}
		if at < 0 {
			return nil, 0
		}
		used[at] = true
		from = at + 1
		if list[at].plain == n.plain {
			same++
		}
	}
	return used, same
}

// headOf finds the noun: the last word that is no modifier, or the last of all
// if every word is one; −1 in an empty list.
func (x *Names) headOf(list []token) int {
	for i := len(list) - 1; i >= 0; i-- {
		if modifiers[list[i].stem] == unknownWord && !isFigure(list[i].plain) {
			return i
		}
	}
	return len(list) - 1
}

func isFigure(word string) bool {
	for i := 0; i < len(word); i++ {
		if word[i] < '0' || word[i] > '9' {
			return false
		}
	}
	return true
}
