package speech

import (
	"strings"

	"benchproof/kitchen/measure"
)

var manners = SetOf("heaped heaping level rounded scant generous good big large small little fat whole full flat nice proper solid extra decent tiny more quick very further couple heaped-up long short additional")

// spoons are what nobody measures mostSpoons of by one at a time; nor does anybody put
// in more than mostPacks of tins.
var spoons = map[measure.Unit]bool{measure.Teaspoon: true, measure.Tablespoon: true, measure.Cup: true, measure.Pinch: true}

const (
	mostSpoons = 25
	mostPacks  = 10
)

// sizes are words that make a cup one of those in the cupboard.
var sizes = SetOf("small big large little tiny nice")

// quantity reads a number, or an article, with its unit: "two cups", "ten to
// twelve minutes", "another 50 mil", "half an hour", "190 degrees".
func (t Text) quantity(i int) (Said, bool) {
	s := Said{From: i, More: t.word(i) == "another"}
	if t.word(i) == "between" {
		return t.betweenTwo(i)
	}
	n, ok := t.number(i)
	if !ok {
		return t.articled(i)
	}
	if _, _, unit := t.unit(i-1, false); n.short && unit && t.word(i) == "one" && i > 1 && IsNumberWord(t.word(i-2)) {
		return Said{From: i, To: i + 1}, false // "a twenty four centimetre one, fifteen grams"
	}
	if n.to == i+1 && t.word(i) == "one" && t.isPronoun(i) {
		return Said{From: i, To: i + 1}, false
	}
	n, apart := t.apart(i, n)
	s.Digits = !n.words
	s.About = n.vague
	s.Amount, s.To = measure.Of(n.value, ""), n.to
	if n.part {
		return t.part(s, n)
	}
	if t.packs(&s) {
		return s, true
	}
	ranged := !apart && t.ranged(&s, n)
	if !apart && t.measured(&s) {
		return s, true
	}
	if ranged && s.Amount.From.Cmp(s.Amount.To) == 0 {
		return s, false
	}
	return t.bare(s, n)
}

// beforePronoun are words before "one" that make it stand for a thing.
var beforePronoun = SetOf("the this that each every which no any big bigger large larger small smaller little other another last next good new old only right wrong same first second third")

// isPronoun tells "the big one", "the 400 gram one" from the number: no noun
// follows it.
func (t Text) isPronoun(i int) bool {
	_, _, unit := t.unit(i-1, true)
	if !t.open(i-1) || !beforePronoun[t.word(i-1)] && !unit || t.word(i-2) == "just" {
		return false
	}
	return i+1 >= len(t.Words) || !t.open(i) || joins[t.word(i+1)]
}

// joins are words that begin another part of a sentence.
var joins = SetOf("and or but so because if when while as is are was were isn't that's it's i i'm i've you you're we we're he she they it in on at to for from with of then now has had have will goes go please into onto over through which who that the a an my our your until till")

// betweenTwo reads "between ten and twelve minutes".
func (t Text) betweenTwo(i int) (Said, bool) {
	a, ok := t.spelledOrFigures(i + 1)
	if !ok || t.word(a.to) != "and" {
		return Said{}, false
	}
	b, ok := t.number(a.to + 1)
	if !ok {
		return Said{}, false
	}
	s := Said{From: i, To: b.to, Digits: !b.words}
	s.Amount.Range = measure.Between(a.value, b.value)
	return s, t.measured(&s)
}

// spelledOrFigures reads a number without what "and" would add.
func (t Text) spelledOrFigures(i int) (number, bool) {
	if n, ok := t.hundreds(i); ok {
		return n, true
	}
	w := t.word(i)
	if v, rest, ok := measure.ReadNumber(w); ok && rest == "" {
		return number{value: v, to: i + 1}, true
	}
	return number{}, false
}

// ranged reads the upper end of a range into s.
func (t Text) ranged(s *Said, n number) bool {
	k := n.to
	switch t.word(k) {
	case "to", "or", "till":
		k++
		if t.word(k) == "maybe" || t.word(k) == "even" {
			k++
		}
		if t.word(k) == "two" && t.word(k-1) == "to" && n.value.Cmp(measure.Whole(2)) > 0 {
			return false
		}
	default: // "ten twelve minutes"
		m, ok := t.number(k)
		if !ok || m.part || !n.words || !m.words || m.value.Cmp(n.value) <= 0 || m.value.Cmp(measure.Whole(100)) >= 0 || t.Words[k-1].Stop == Sentence {
			return false
		}
		if _, _, unit := t.unit(m.to, false); !unit && t.word(m.to) != "degrees" {
			return false
		}
		s.Amount.To, s.To = m.value, m.to
		return true
	}
	m, ok := t.number(k)
	if !ok || m.value.Cmp(n.value) <= 0 || m.vague || t.isOtherOven(n, m) {
		return false
	}
	s.Amount.To, s.To = m.value, m.to
	return true
}

// part reads what follows a part: "half a cup", "a quarter of a teaspoon",
// "half an hour", "three quarters cup", "half the butter", "half an onion".
func (t Text) part(s Said, n number) (Said, bool) {
	k := n.to
	of := t.word(k) == "of"
	if of {
		k++
	}
	switch w := t.word(k); {
	case w == "a" || w == "an":
		s.To = k + 1
		if t.measured(&s) {
			return s, true
		}
		if parts[t.word(k+1)] > 0 && !of {
			s.Kind, s.To = Share, k // "an eighth, an eighth of an inch": begun again
			return s, true
		}
		s.Kind, s.To = Count, k+1
		return s, true
	case w == "the" || w == "that" || w == "this" || w == "your" || w == "my" || w == "it" || w == "them" || w == "those" || w == "our":
		s.Kind, s.To = Share, k
		return s, true
	case of:
		s.Kind, s.To = Share, k
		return s, true
	}
	if t.measured(&s) {
		return s, true
	}
	if n.words {
		s.Kind = Share // "another third", "half now"
		return s, true
	}
	s.Kind = Count
	return s, true
}

// bare is a number without a unit: an oven's setting where the talk is of one,
// else a count.
func (t Text) bare(s Said, n number) (Said, bool) {
	if t.isSetting(s, n) {
		if t.isOfHundreds(s) {
			s.Amount = s.Amount.Scale(measure.Whole(100))
		}
		s.Kind, s.Bare = Heat, true
		t.ovenWords(&s)
		return s, true
	}
	if n.year {
		return s, false
	}
	s.Kind = Count
	return s, s.Amount.From.Sign() > 0
}

// measured reads the unit behind the number, and what more belongs to it.
func (t Text) measured(s *Said) bool {
	if s.To < len(t.Words) && t.degrees(s) {
		return true
	}
	k := t.behindManner(s)
	if k > 0 && t.Words[k-1].Stop == Sentence && k > s.From {
		return false
	}
	u, to, ok := t.unit(k, s.Digits && k == s.To)
	switch {
	case !ok:
		return t.tens(s, k)
	case t.isNoUnitOf(*s, u, k, to):
		return false
	}
	s.Unit, s.To = u, to
	switch {
	case isTime(u):
		t.stretch(s)
	case u.Kind() == measure.Length:
		s.Kind, s.Amount.Unit = Length, u
		t.half(s, measure.Whole(1))
	default:
		s.Kind, s.Amount.Unit = Measure, u
		if t.half(s, measure.Whole(1)); s.To == to {
			t.upTo(s)
			t.plus(s)
			t.thousandths(s)
		}
	}
	return true
}

// behindManner gives the word behind what says how a number is meant: "two heaped
// tablespoons", "twenty odd grams", "two and a bit cups".
func (t Text) behindManner(s *Said) int {
	k := s.To
	for skipped := 0; skipped < 2 && t.open(k-1) && manners[t.word(k)]; skipped++ {
		s.About = s.About || vague[t.word(k)]
		s.More = s.More || further[t.word(k)]
		k++
	}
	switch {
	case t.word(k) == "ish", t.word(k) == "odd":
		s.About = true
		k++
	case t.word(k) == "and" && t.word(k+1) == "a" && t.word(k+2) == "bit":
		s.About = true
		k += 3
	}
	return k
}

// isNoUnitOf tells whether the unit from word k to word to is none of the number:
// another one begins there, or it names a thing.
func (t Text) isNoUnitOf(s Said, u measure.Unit, k, to int) bool {
	plural := strings.HasSuffix(t.word(to-1), "s")
	switch {
	case u.Kind() == measure.Count && k > s.From && t.Words[k-1].Stop != None:
		return true // "oranges, two, squeeze"
	case u == measure.Cup && s.Article && k > s.To:
		return sizes[t.word(k-1)] // "which is a small cup" is no measuring cup
	case s.Article || plural:
		return false
	case isPack[u]:
		return s.Amount.From.Cmp(measure.Whole(mostPacks)) > 0 && t.word(to) != "of" // "put it at 170 tin is square"
	}
	return spoons[u] && s.Amount.From.Cmp(measure.Whole(mostSpoons)) >= 0 // "milk two fifty teaspoon of mustard"
}

// tens reads "eighty dekas", which are 800 grams, and "two deci", which are 200 ml.
func (t Text) tens(s *Said, k int) bool {
	switch t.word(k) {
	case "deka", "dekas", "deca", "decas", "dag":
		s.Unit, s.Amount = measure.Gram, s.Amount.Scale(measure.Whole(10))
	case "deci", "decis":
		s.Unit, s.Amount = measure.Millilitre, s.Amount.Scale(measure.Whole(100))
	default:
		return false
	}
	s.Kind, s.Amount.Unit, s.To = Measure, s.Unit, k+1
	return true
}

// half adds the "and a half" behind a unit.
func (t Text) half(s *Said, of measure.Number) {
	if t.word(s.To) != "and" || !t.open(s.To-1) || !s.Amount.IsSingle() {
		return
	}
	p, ok := t.spelledPart(s.To + 1)
	if !ok || t.word(s.To+1) == "another" || t.beginsAmount(s.To+1, p.to) {
		return
	}
	if _, _, unit := t.unit(p.to, false); unit && s.Kind != Time {
		return // "a cup and a half teaspoon"
	}
	if t.word(p.to) == "the" && t.open(p.to-1) {
		return
	}
	s.Amount.Range = measure.One(s.Amount.From.Add(p.value.Mul(of)))
	s.To, s.Article = p.to, false
}

// beginsAmount tells whether the part between two words begins an amount of its
// own: "a cup and half a lemon", "a cup and half of the sugar".
func (t Text) beginsAmount(from, to int) bool {
	if !t.open(to - 1) {
		return false
	}
	switch t.word(to) {
	case "a", "an":
		return true
	case "of":
		return t.word(to+1) == "a" || t.word(to+1) == "an" || t.word(from) == "half"
	}
	return false
}

// upTo reads "a teaspoon or two", "two cups to three cups".
func (t Text) upTo(s *Said) {
	if w := t.word(s.To); w != "or" && w != "to" || !s.Amount.IsSingle() {
		return
	}
	n, ok := t.number(s.To + 1)
	if !ok || n.value.Cmp(s.Amount.From) <= 0 {
		return
	}
	if u, to, ok := t.unit(n.to, !n.words); ok && u == s.Unit {
		s.Amount.To, s.To = n.value, to
	} else if !ok && s.Article && n.value.Equal(measure.Whole(2)) {
		s.Amount.To, s.To = n.value, n.to
		s.About = true
	}
}

// plus reads the second part of "a cup and two tablespoons", "1 lb 4 oz".
func (t Text) plus(s *Said) {
	k := s.To
	if !t.open(k-1) || !s.Amount.IsSingle() {
		return
	}
	joined := t.word(k) == "and" || t.word(k) == "plus"
	if joined {
		k++
	}
	var second Said
	n, ok := t.number(k)
	switch {
	case ok:
		second = Said{From: k, To: n.to, Amount: measure.Of(n.value, ""), Digits: !n.words}
		if n.part {
			if second, ok = t.part(second, n); !ok || second.Kind != Measure {
				return
			}
			break
		}
		fallthrough
	case joined && (t.word(k) == "a" || t.word(k) == "an"):
		if !ok {
			second = Said{From: k, To: k + 1, Amount: measure.Of(measure.Whole(1), "")}
		}
		u, to, ok := t.unit(second.To, second.Digits)
		if !ok {
			return
		}
		second.Amount.Unit, second.To = u, to
		t.half(&second, measure.Whole(1))
	default:
		return
	}
	a, b := s.Unit, second.Amount.Unit
	if a == b || a.Kind() != b.Kind() || a.Kind() == measure.Count || !isLarger(a, b) || !joined && a != measure.Pound {
		return
	}
	s.Plus, s.PlusAt, s.To = second.Amount, k, second.To
}

// thousandths reads the grams of "a kilo two hundred", which nobody names.
func (t Text) thousandths(s *Said) {
	if s.Unit != measure.Kilogram && s.Unit != measure.Litre || !t.open(s.To-1) || !s.Amount.From.IsWhole() || !s.Amount.IsSingle() {
		return
	}
	n, ok := t.number(s.To)
	if !ok || n.part || n.value.Cmp(measure.Whole(50)) < 0 || n.value.Cmp(measure.Whole(1000)) >= 0 {
		return
	}
	to := n.to
	u, end, unit := t.unit(n.to, !n.words)
	switch {
	case unit && (u == measure.Gram && s.Unit == measure.Kilogram || u == measure.Millilitre && s.Unit == measure.Litre):
		to = end
	case unit || n.to < len(t.Words) && t.open(n.to-1) && !joins[t.word(n.to)]:
		return
	}
	s.Amount.Range = measure.One(s.Amount.From.Add(n.value.Quo(measure.Whole(1000))))
	s.To, s.Article = to, false
}

// isLarger tells whether one a holds more than one b.
func isLarger(a, b measure.Unit) bool {
	if a.Kind() == measure.Mass {
		x, _ := measure.Grams(a)
		y, _ := measure.Grams(b)
		return x.Cmp(y) > 0
	}
	x, _ := measure.US.Millilitres(a)
	y, _ := measure.US.Millilitres(b)
	return x.Cmp(y) > 0
}
