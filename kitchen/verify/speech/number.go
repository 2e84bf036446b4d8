package speech

import (
	"strings"

	"benchproof/kitchen/measure"
)

var small = map[string]int64{
	"zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9,
	"ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16,
	"seventeen": 17, "eighteen": 18, "nineteen": 19,
}

var tens = map[string]int64{
	"twenty": 20, "thirty": 30, "forty": 40, "fourty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90,
}

var parts = map[string]int64{
	"half": 2, "halves": 2, "third": 3, "thirds": 3, "quarter": 4, "quarters": 4, "fourth": 4, "fourths": 4,
	"fifth": 5, "fifths": 5, "sixth": 6, "sixths": 6, "eighth": 8, "eighths": 8, "tenth": 10, "tenths": 10,
}

// number is one number in words or figures.
type number struct {
	value  measure.Number
	to     int  // the word behind it
	words  bool // written in words
	year   bool // "nineteen eighty seven", "2019": likely a year
	short  bool // "one eighty": hundreds without the word
	part   bool // only a fraction: "half", "three quarters", "½"
	vague  bool // "a couple"
	dozens bool
}

// IsNumberWord tells whether a word is a number or a part of one, in words or figures.
func IsNumberWord(w string) bool {
	_, is := small[w]
	return is || tens[w] > 0 || w == "hundred" || w == "half" || w != "" && (isDigit(rune(w[0])) || strings.ContainsAny(w, "½¼¾⅓⅔⅛"))
}

// word gives the text of word i, "" behind the end.
func (t Text) word(i int) string {
	if i < 0 || i >= len(t.Words) {
		return ""
	}
	return t.Words[i].Text
}

// open tells whether no stop stands behind word i.
func (t Text) open(i int) bool { return i >= 0 && i < len(t.Words) && t.Words[i].Stop == None }

// number reads a number that begins at word i.
func (t Text) number(i int) (number, bool) {
	if n, ok := t.figures(i); ok {
		return n, true
	}
	if n, ok := t.phrase(i); ok {
		return n, true
	}
	if n, ok := t.spelledPart(i); ok {
		return n, true
	}
	if n, ok := t.decimal(i); ok {
		return n, true
	}
	return t.spelled(i)
}

// phrase reads "a couple (of)", "a dozen", "half a dozen", "two dozen".
func (t Text) phrase(i int) (number, bool) {
	at := func(words ...string) bool {
		for k, w := range words {
			if t.word(i+k) != w {
				return false
			}
		}
		return true
	}
	n := number{words: true}
	switch {
	case at("a", "couple", "of"):
		n.value, n.to, n.vague = measure.Whole(2), i+3, true
	case at("a", "couple"), at("another", "couple"):
		n.value, n.to, n.vague = measure.Whole(2), i+2, true
		if t.word(n.to) == "of" {
			n.to++
		}
	case at("couple") && t.partOfUnit(i+1):
		n.value, n.to, n.vague = measure.Whole(2), i+1, true
	case at("couple", "of"):
		n.value, n.to, n.vague = measure.Whole(2), i+2, true
	case at("half", "dozen"):
		n.value, n.to, n.dozens = measure.Whole(6), i+2, true
	case at("half", "a", "dozen"):
		n.value, n.to, n.dozens = measure.Whole(6), i+3, true
	case at("a", "dozen"):
		n.value, n.to, n.dozens = measure.Whole(12), i+2, true
	default:
		if k := small[t.word(i)]; k > 0 && t.word(i+1) == "dozen" {
			n.value, n.to, n.dozens = measure.Whole(12*k), i+2, true
			return n, true
		}
		return number{}, false
	}
	return n, true
}

// spelledPart reads "half", "a half", "a quarter", "three quarters",
// "two thirds", and the "of a" that may follow.
func (t Text) spelledPart(i int) (number, bool) {
	num, k := int64(1), i
	w := t.word(i)
	bare := w == "half" || w == "quarter" || w == "third" && t.word(i+1) == "of" && t.word(i+2) == "a" && t.word(i-1) != "the"
	if !bare {
		if n, ok := small[w]; ok && n > 0 && n < 10 {
			num = n
		} else if w != "a" && w != "an" && w != "another" {
			return number{}, false
		}
		if !t.open(i) {
			return number{}, false
		}
		k++
		w = t.word(k)
	}
	den := parts[w]
	plural := strings.HasSuffix(w, "s")
	if den == 0 || num >= den || num == 1 && plural || num > 1 && !plural && !t.partOfUnit(k+1) {
		return number{}, false
	}
	return number{value: measure.Ratio(num, den), to: k + 1, words: true, part: true}, true
}

// partOfUnit tells whether a unit stands at word i, so that "three quarter" before
// it is a part: "two and three quarter cups".
func (t Text) partOfUnit(i int) bool {
	_, _, ok := t.unit(i, false)
	return ok && t.open(i-1)
}

// spelled reads a whole number in words, the short hundreds of speech ("one
// eighty", "two twenty five"), decimals ("one point five") and what "and a
// half" adds.
func (t Text) spelled(i int) (number, bool) {
	n, ok := t.hundreds(i)
	if !ok {
		return number{}, false
	}
	if t.word(n.to) == "thousand" && t.open(n.to-1) {
		n.value, n.to = n.value.Mul(measure.Whole(1000)), n.to+1
		k := n.to
		if t.word(k) == "and" {
			k++
		}
		if more, ok := t.hundreds(k); ok && t.open(n.to-1) && !more.short && more.value.Cmp(measure.Whole(1000)) < 0 && (k > n.to || more.value.Cmp(measure.Whole(100)) >= 0) {
			n.value, n.to = n.value.Add(more.value), more.to
			n.year = isYear(n.value)
		}
	}
	if t.point(&n) {
		return n, true
	}
	t.andPart(&n)
	return n, true
}

// digitRun reads a number said digit by digit: "two two five grams".
func (t Text) digitRun(i int) (number, bool) {
	v := int64(0)
	k := i
	for ; k < i+3; k++ {
		d, ok := small[t.word(k)]
		if t.word(k) == "oh" {
			d, ok = 0, k > i
		}
		if !ok || d > 9 || k < i+2 && !t.open(k) {
			return number{}, false
		}
		v = v*10 + d
	}
	_, _, unit := t.unit(k, false)
	measured := (unit || t.word(k) == "degrees" || t.word(k) == "fan") && t.open(k-1)
	counting := v%10 == v/10%10+1 && v/10%10 == v/100+1 // "one two three"
	if v < 100 || counting || !measured && (v%5 != 0 || IsNumberWord(t.word(k))) {
		return number{}, false
	}
	return number{value: measure.Whole(v), to: k, words: true}, true
}

// decimal reads "point five", "nought point two five".
func (t Text) decimal(i int) (number, bool) {
	n := number{to: i, words: true, part: true}
	if w := t.word(i); w == "nought" || w == "zero" || w == "oh" || w == "naught" {
		n.to++
	}
	if !t.point(&n) {
		return number{}, false
	}
	if w := t.word(n.to); w != "of" && w != "a" {
		if _, _, unit := t.unit(n.to, false); !unit {
			return number{}, false // "the point one should make"
		}
	}
	return n, true
}

func (t Text) hundreds(i int) (number, bool) {
	if n, ok := t.digitRun(i); ok {
		return n, true
	}
	n := number{words: true}
	v, to, ok := t.below100(i)
	switch {
	case !ok && (t.word(i) == "a" || t.word(i) == "another") && t.word(i+1) == "hundred":
		v, to = 1, i+1
	case !ok && t.word(i) == "hundred" && t.isBareHundred(i):
		return number{value: measure.Whole(100), to: i + 1, words: true}, true
	case !ok && t.word(i) == "hundred" && ones[t.word(i-1)] && t.open(i-1):
		v, to = 1, i
	case !ok && t.word(i) == "a" && t.word(i+1) == "thousand":
		return number{value: measure.Whole(1), to: i + 1, words: true}, true
	case !ok:
		return n, false
	}
	if t.word(to) == "hundred" && t.open(to-1) {
		v, to = v*100, to+1
		k := to
		if t.word(k) == "and" {
			k++
		}
		if more, end, ok := t.below100(k); ok && t.open(to-1) && !(k == to && (more < 10 && tens[t.word(end)] > 0 || t.isHours(end))) { // "two hundred one eighty", "two hundred five hours"
			if (t.word(end) == "hundred" || tens[t.word(end)] > 0) && more > 20 && more%10 > 0 && k > to {
				more, end = more-more%10, end-1 // "two hundred and twenty two hundred with the fan"
			}
			v, to = v+more, end
		}
		n.value, n.to = measure.Whole(v), to
		return n, true
	}
	if more, end, ok := t.below100(to); ok && t.open(to-1) && v > 0 {
		switch {
		case v < 10 && more >= 10: // "one eighty"
			n.short = true
			if _, _, again := t.below100(end); again && more > 20 && more%10 > 0 && tens[t.word(end)] > 0 && !t.measures(end) {
				more, end = more-more%10, end-1 // "one eighty one sixty": the one begins another
			}
			v, to = v*100+more, end
		case v >= 15 && v <= 20 && more >= 10 && !t.isTimeUnit(end): // "nineteen eighty seven"
			n.year = true
			v, to = v*100+more, end
		}
	} else if v > 0 && v < 10 && (t.word(to) == "oh" || t.word(to) == "o") && t.open(to-1) {
		if d, ok := small[t.word(to+1)]; ok && d > 0 && d < 10 {
			n.short = true
			v, to = v*100+d, to+2
		}
	}
	n.value, n.to = measure.Whole(v), to
	return n, true
}

// measures tells whether a number at word i, or a range, has its unit: the "twenty to
// twenty five minutes" behind "three seventy five".
func (t Text) measures(i int) bool {
	_, to, ok := t.below100(i)
	if !ok {
		return false
	}
	if w := t.word(to); w == "to" || w == "or" {
		if _, end, ok := t.below100(to + 1); ok {
			to = end
		}
	}
	_, _, unit := t.unit(to, false)
	return unit
}

// isBareHundred tells "salt, hundred grams", where no other number stands before.
func (t Text) isBareHundred(i int) bool {
	_, _, unit := t.unit(i+1, false)
	w := t.word(i - 1)
	return unit && t.open(i) && !IsNumberWord(w) && !ones[w] && w != "few" && w != "couple" && w != "several" && w != "a"
}

// ones are words before a hundred that mean one of them: "the other hundred".
var ones = SetOf("the other last first remaining extra final that this further all whole")

func (t Text) isTimeUnit(i int) bool {
	u, _, ok := t.unit(i, false)
	return ok && isTime(u)
}

// isHours tells whether hours or days stand at word i, of which nobody cooks a hundred.
func (t Text) isHours(i int) bool {
	u, _, ok := t.unit(i, false)
	return ok && (u == measure.Hour || u == measure.Day)
}

// below100 reads one to ninety-nine.
func (t Text) below100(i int) (v int64, to int, ok bool) {
	w := t.word(i)
	if v, ok := small[w]; ok {
		return v, i + 1, true
	}
	v = tens[w]
	if v == 0 {
		return 0, i, false
	}
	if d := small[t.word(i+1)]; d > 0 && d < 10 && t.open(i) {
		return v + d, i + 2, true
	}
	return v, i + 1, true
}

// point reads "point two five" behind n.
func (t Text) point(n *number) bool {
	if t.word(n.to) != "point" || n.to > 0 && !n.value.IsZero() && !t.open(n.to-1) {
		return false
	}
	k, scale, v := n.to+1, int64(1), int64(0)
	for ; scale < 1000; k++ {
		d, ok := small[t.word(k)]
		if !ok && t.word(k) != "oh" || d > 9 {
			break
		}
		v, scale = v*10+d, scale*10
	}
	if scale == 1 {
		return false
	}
	n.value, n.to = n.value.Add(measure.Ratio(v, scale)), k
	return true
}

// andPart adds "and a half", "and three quarters" behind n.
func (t Text) andPart(n *number) {
	if t.word(n.to) != "and" || !t.open(n.to-1) || !n.value.IsWhole() || n.value.Cmp(measure.Whole(300)) > 0 {
		return
	}
	p, ok := t.spelledPart(n.to + 1)
	if after := t.word(p.to); ok && n.value.Cmp(measure.Whole(100)) > 0 && after != "on" && after != "degrees" {
		return // "two hundred and half a lemon"
	}
	if !ok {
		p, ok = t.figures(n.to + 1)
		ok = ok && p.part
	}
	if !ok || t.word(n.to+1) == "another" {
		return
	}
	// "six eggs and half a cup": the part is an amount of its own where "a" or
	// "of" and a unit follow it.
	if w := t.word(p.to); w == "a" || w == "an" || w == "of" && t.word(n.to+1) == "half" {
		return
	}
	n.value, n.to = n.value.Add(p.value), p.to
}

// IsYear tells whether a year stands at word i.
func (t Text) IsYear(i int) bool {
	n, ok := t.number(i)
	return ok && n.year
}

// IsNumber tells whether a word is a number or a part of one.
func IsNumber(w string) bool { return IsNumberWord(w) }
