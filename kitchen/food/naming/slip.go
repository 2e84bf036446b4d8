package naming

import "slices"

// Lengths of words in which one and two slips are forgiven, and the length from
// which a word is no word.
const (
	oneSlipFrom  = 5
	twoSlipsFrom = 9
	noWordFrom   = 30
)

// addSlips files a stem under itself with letters dropped, so that a misspelt
// word can be met half-way: one letter, or two in words that may be met by one
// of two slips.
func (x *index) addSlips(word string) {
	rounds := 1
	if len(word) >= twoSlipsFrom-2 {
		rounds = 2
	}
	seen := map[string]bool{}
	for _, d := range dropped(word, rounds) {
		if !seen[d] {
			seen[d] = true
			x.slips[d] = append(x.slips[d], word)
		}
	}
}

// dropped gives word and its forms with up to rounds letters dropped; a form
// can come up twice.
func dropped(word string, rounds int) []string {
	if len(word) < oneSlipFrom-1 {
		return nil
	}
	forms := append(make([]string, 0, 1+len(word)*rounds), word)
	start := 0
	for ; rounds > 0; rounds-- {
		end := len(forms)
		for _, form := range forms[start:end] {
			for i := range len(form) {
				if i == 0 || form[i] != form[i-1] { // of two like letters either may go
					forms = append(forms, form[:i]+form[i+1:])
				}
			}
		}
		start = end
	}
	return forms
}

// strangers are words that look like a slip of a food's name and are none: most
// are foods of their own that a larder may not have.
var strangers = wordSet(`perch brain okara mungo butterfat butterbur sablefish plate cross mouse mousse shake basis specy multi
	buttery salty salut scalloped crocker franc kashi muller pasty tart tarts crepe grill stock broth clove pastry custard
	ramp burdock sprat sprats dab dory cusk shad smelt brisling tench roach chub bream crema pearl berry
	candy sweet sauce spread macaroon macaron scone scones flapjack chip crisp roast sorbet sherbet trifle stew curd kernel gravy batter better bitter matter`)

// near gives the stems nearest to an unknown word, within the slips its length
// allows; none if the first letter differs, which is hardly ever a slip.
func (x *index) near(word string) []string {
	most := 0
	switch {
	case len(word) >= noWordFrom, strangers[word]:
		return nil
	case len(word) >= twoSlipsFrom:
		most = 2
	case len(word) >= oneSlipFrom:
		most = 1
	default:
		return nil
	}
	var found []string
	for _, d := range dropped(word, most) {
		for _, candidate := range x.slips[d] {
			if candidate[0] != word[0] || slices.Contains(found, candidate) {
				continue
			}
			switch n := distance(word, candidate); {
			case n < most:
				most, found = n, append(found[:0], candidate)
			case n == most:
				found = append(found, candidate)
			}
		}
	}
	return found
}

// nearToken gives the stems nearest to an unknown word, taken as it stands and
// as a plural: "chines" may be "chinese" and "chives".
func (x *index) nearToken(t token) []string {
	found := x.near(t.stem)
	if t.plain == t.stem || strangers[t.stem] {
		return found
	}
	for _, candidate := range x.near(t.plain) {
		if !slices.Contains(found, candidate) {
			found = append(found, candidate)
		}
	}
	return found
}

// distance counts the slips between two words: a letter more, less, other, or
// two neighbours changed about (optimal string alignment).
func distance(a, b string) int {
	if len(a) >= noWordFrom || len(b) >= noWordFrom {
		return noWordFrom
	}
	var rows [3][noWordFrom]int
	before, above, row := &rows[0], &rows[1], &rows[2]
	for j := 0; j <= len(b); j++ {
		above[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			change := 1
			if a[i-1] == b[j-1] {
				change = 0
			}
			row[j] = min(above[j]+1, row[j-1]+1, above[j-1]+change)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, above, row = above, row, before
	}
	return above[len(b)]
}

// findSlip reads unknown words as the words they are nearest to, and accepts
// the reading if every word then has a meaning and only one food fits.
func (x *Names) findSlip(list []token) finding {
	mended := append([]token(nil), list...)
	var choices []string
	at := -1
	for i, t := range list {
		if x.known.class(t.stem) != unknownWord || isFigure(t.plain) {
			continue
		}
		near := x.known.nearToken(t)
		if len(near) == 0 {
			return finding{how: None}
		}
		mended[i] = token{plain: near[0], stem: near[0]}
		switch {
		case at < 0 || len(choices) == 1:
			at, choices = i, near
		case len(near) > 1:
			return finding{how: None} // two words in doubt are too many
		}
	}
	if at < 0 {
		return finding{how: None}
	}
	var found []finding
	for _, c := range choices {
		mended[at] = token{plain: c, stem: c}
		f := x.findWhole(mended)
		if f.how == None {
			f = x.findAmong(mended)
		}
		if f.how != None && (len(found) == 0 || found[0].entries[0].of != f.entries[0].of) {
			found = append(found, f)
		}
	}
	return settleSlips(found)
}

// settleSlips makes one finding of the readings of a misspelt name.
func settleSlips(found []finding) finding {
	switch len(found) {
	case 0:
		return finding{how: None}
	case 1:
		f := found[0]
		if f.how != Ask {
			f.how = Spelling
		}
		return f
	}
	f := finding{how: Ask, list: found[0].list, used: found[0].used}
	for _, each := range found {
		for _, e := range each.entries {
			f.add(e)
		}
	}
	return f
}
