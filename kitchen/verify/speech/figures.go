package speech

// Numbers in figures.

import (
	"strings"

	"benchproof/kitchen/measure"
)

// figures reads "200", "1.5", "1/2", "1½", "1 1/2", "1 and a half".
func (t Text) figures(i int) (number, bool) {
	w := t.word(i)
	if w == "" || w[0] != '.' && !isDigit(rune(w[0])) && !strings.ContainsAny(w, "½¼¾⅓⅔⅛⅜⅝⅞⅕⅙") {
		return number{}, false
	}
	v, rest, ok := measure.ReadNumber(w)
	if !ok || rest != "" {
		return number{}, false
	}
	n := number{value: v, to: i + 1, part: v.Cmp(measure.Whole(1)) < 0}
	if part, ok := t.partsOf(v, i+1); ok {
		return part, true
	}
	if v.IsWhole() && t.point(&n) {
		return n, true // "2 point 2"
	}
	if v.IsWhole() && !n.part {
		n.year = len(w) == 4 && isYear(v)
		if f, ok := t.figures(i + 1); ok && f.part && t.open(i) && f.to == i+2 && v.Cmp(measure.Whole(20)) < 0 {
			n.value, n.to = v.Add(f.value), f.to
		} else {
			t.andPart(&n)
		}
		if t.word(n.to) == "hundred" && t.open(n.to-1) {
			n.value, n.to = n.value.Mul(measure.Whole(100)), n.to+1
		}
	}
	return n, true
}

// partsOf reads the word behind a figure that makes it a part: "3 quarters of a cup", "3
// quarter cups".
func (t Text) partsOf(v measure.Number, i int) (number, bool) {
	num, whole := v.Int()
	den := parts[t.word(i)]
	if !whole || num < 1 || num >= den || !t.open(i-1) || !strings.HasSuffix(t.word(i), "s") && !t.partOfUnit(i+1) {
		return number{}, false
	}
	return number{value: measure.Ratio(num, den), to: i + 1, part: true}, true
}

func isYear(v measure.Number) bool {
	return v.Cmp(measure.Whole(1500)) >= 0 && v.Cmp(measure.Whole(2100)) < 0
}
