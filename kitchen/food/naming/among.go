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
		if !best.used.has(i) && modifiers[t.stem] == stateWord {
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
		if !f.used.has(i) && modifiers[t.stem] == stateWord {
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
// level with it; of two names with as many words a learned one. Every word left
// over must be a modifier, or unknown if unknowns may pass; never a word of
// other foods' names.
func (x *Names) bestAmong(list []token, unknowns bool) finding {
	head := headOf(list)
	if head < 0 {
		return finding{how: None}
	}
	barred, states := x.leftovers(list, unknowns)
	best := finding{how: None}
	var bestScore int
	for learned, names := range []*index{x.known, x.learned} {
		for i, t := range list {
			if earlier(list, i) {
				continue
			}
			for _, e := range names.rarest[t.stem] {
				used, same := place(e.tokens, list)
				if used == 0 || !used.has(head) || barred&^used != 0 {
					continue
				}
				score := 100*len(e.tokens) + 50*learned + 2*same - 10*(states&^used).count()
				if e.primary {
					score++
				}
				if score < bestScore {
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

// leftovers marks the words that may not be left over beside a name, and those
// that make another food of it.
func (x *Names) leftovers(list []token, unknowns bool) (barred, states marks) {
	for i, t := range list {
		if isFigure(t.plain) {
			continue
		}
		switch x.known.class(t.stem) {
		case foodWord:
			barred.set(i)
		case unknownWord:
			if !unknowns {
				barred.set(i)
			}
		case stateWord:
			states.set(i)
		}
	}
	return barred, states
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

// place finds the words of a name in list, in the name's order, or in any
// order around an "of" ("zest of an orange"). It gives which words of list it
// took, none if not all are there, and how many agree in number as well.
func place(name, list []token) (used marks, same int) {
	if len(name) > len(list) {
		return 0, 0
	}
	anyOrder := indexOf(list, turners) >= 0
	from := 0
	for _, n := range name {
		at := -1
		if anyOrder {
			from = 0
		}
		for i := from; i < len(list); i++ {
			if !used.has(i) && list[i].stem == n.stem {
				at = i
				break
			}
		}
		if at < 0 {
			return 0, 0
		}
		used.set(at)
		from = at + 1
		if list[at].plain == n.plain {
			same++
		}
	}
	return used, same
}

// turners stand between a food and what it is a part of.
var turners = wordSet("of from")

// headOf finds the noun: the last word that is no modifier, or the last of all
// if every word is one; −1 in an empty list.
func headOf(list []token) int {
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
