package recipe

import (
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// pairOf cuts a line without an amount that names two foods, "salt and freshly
// ground black pepper, to taste", into a line each; what follows the comma goes
// with both. ok is false unless the larder surely knows both foods and no food
// of the whole name ("macaroni and cheese"), for then they are one thing.
func (r Reader) pairOf(text string) (pair []string, ok bool) {
	if r.Larder == nil || hasAmount(text) {
		return nil, false
	}
	names, tail, hasTail := strings.Cut(text, ",")
	one, other, found := cutAnd(names)
	if !found || !r.isSure(one) || !r.isSure(other) || r.isSure(names) {
		return nil, false
	}
	if hasTail {
		one, other = one+","+tail, other+","+tail
	}
	return []string{one, other}, true
}

func hasAmount(text string) bool {
	read, _, ok := measure.ReadAmount(text)
	return ok && read.HasAmount() || strings.ContainsAny(text, "0123456789½¼¾⅓⅔")
}

// cutAnd parts two names at the one "and" or "&" between them.
func cutAnd(names string) (one, other string, found bool) {
	for _, and := range []string{" and ", " & "} {
		if before, after, ok := strings.Cut(names, and); ok {
			one, other = strings.TrimSpace(before), strings.TrimSpace(after)
			return one, other, one != "" && other != "" && !strings.Contains(after, and)
		}
	}
	return "", "", false
}

// isSure tells whether a name means one food and no guess was needed.
func (r Reader) isSure(name string) bool {
	switch m := r.Larder.Match(name); m.How {
	case food.Learned, food.Exact, food.Alias, food.Modifiers:
		return m.Food != nil
	}
	return false
}
