package verify

// Amounts of several lines together.

import (
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// isTotal tells whether the amount is that of all lines with the food together:
// "130 grams of sugar in all".
func (j *judge) isTotal(s speech.Said, n int) bool {
	line := j.Book.Items[n].Line
	if j.Text.At(s.From-1) == "that's" && j.Text.At(s.To) == "of" && !j.namesNear(n, s.To) {
		return j.isTotalOf(s, n, 2) // "a cup of cream, so that's four cups of wet"
	}
	if !j.saysTotal(s) {
		return false
	}
	ofItself := j.Text.Pronoun(s.To) || j.Text.At(s.To) == "of" && j.namesNear(n, s.To)
	if !ofItself && j.isTotalOf(s, n, 2) || !ofItself && j.isTotalOf(s, n, 3) {
		return true
	}
	sum := measure.Amount{}
	for _, other := range j.Book.Items {
		if other.Line.FoodID != line.FoodID || line.FoodID == "" || !other.Line.HasAmount {
			continue
		}
		more, ok := sum.Add(other.Line.Amount, j.Scale.SystemOf(line).Or(measure.US))
		if !ok {
			return false
		}
		sum = more
	}
	same, _ := j.Scale.Amount(s, sum, line)
	return same
}

// saysTotal tells whether words beside an amount make it a whole of several.
func (j *judge) saysTotal(s speech.Said) bool {
	return j.Text.Near(s.From, s.To, 7, "total", "altogether", "together") || j.isInAll(s)
}

// namesNear tells whether item n is named right behind a word.
func (j *judge) namesNear(n, word int) bool {
	return slices.ContainsFunc(j.Mentions, func(m written.Mention) bool {
		return m.From >= word && m.From <= word+3 && slices.Contains(m.Items, n)
	})
}

// isInAll tells "in all", "all up", "all told" beside an amount from "it goes all soft".
func (j *judge) isInAll(s speech.Said) bool {
	for k := max(0, s.From-7); k < min(len(j.Text.Words), s.To+7); k++ {
		if j.Text.At(k) != "all" {
			continue
		}
		switch before, behind := j.Text.At(k-1), j.Text.At(k+1); {
		case before == "in", behind == "up", behind == "told", behind == "of", behind == "in":
			return true
		}
	}
	return false
}

// isTotalOf tells whether the amount is that of line n and the lines beside it, so many
// together: "a kilo of flour all up, that's 900 of the white and 100 of wholemeal".
func (j *judge) isTotalOf(s speech.Said, n, lines int) bool {
	for from := max(0, n-lines+1); from <= n && from+lines <= len(j.Book.Items); from++ {
		sum, ok := measure.Amount{}, true
		for _, it := range j.Book.Items[from : from+lines] {
			var more measure.Amount
			if more, ok = sum.Add(it.Line.Amount, measure.US); !ok || !it.Line.HasAmount {
				ok = false
				break
			}
			sum = more
		}
		if ok {
			if same, _ := j.Scale.Amount(s, sum, j.Book.Items[n].Line); same {
				return true
			}
		}
	}
	return false
}
