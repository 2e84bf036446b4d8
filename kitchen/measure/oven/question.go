package oven

import (
	"fmt"

	"benchproof/kitchen/measure/exact"
)

// Question is something about given heats that is likely a slip.
type Question struct {
	Text   string   // what is odd and what may be meant, in a sentence or two
	About  Heat     // the heat it is about
	Likely []string // what was likely meant, the likelier first: "160 °C fan"
}

// A fan oven is set 20 °C below a conventional one, 25 °C by an older UK rule,
// 15 to 30 °C by a professional textbook. A pair from 15 to 25 °C apart passes;
// in °F, from 20 to 50, as the US rule is 25 and the textbook's 25 to 50.
var (
	leastApart  = exact.Whole(15)
	mostApart   = exact.Whole(25)
	leastApartF = exact.Whole(20)
	mostApartF  = exact.Whole(50)
)

// together is how many bytes may part two heats of one statement: "/", " (",
// ", ", " or ", " (or ".
const together = 5

// Check questions heats that are given together and do not agree: a
// conventional and a fan setting not about 20 °C (25 °F) apart, °C against °F,
// either against a gas mark. Heats stand together if at most 5 bytes of text
// part them, or if they have no places at all. A heat without an oven counts
// as conventional.
func Check(heats []Heat) []Question {
	var all []Question
	for len(heats) > 0 {
		n := 1
		for n < len(heats) && heats[n].At-heats[n-1].At-len(heats[n-1].Text) <= together {
			n++
		}
		all = append(all, checkStatement(heats[:n])...)
		heats = heats[n:]
	}
	return all
}

// statement is what one statement of an oven gives, nil where it does not.
type statement struct{ c, fanC, f, fanF, gas *Heat }

func sortHeats(heats []Heat) statement {
	var s statement
	set := func(to **Heat, h *Heat) {
		if *to == nil {
			*to = h
		}
	}
	for i := range heats {
		h := &heats[i]
		switch fan := h.Oven == "fan"; {
		case h.Scale == "gas":
			set(&s.gas, h)
		case h.Scale == "C" && fan:
			set(&s.fanC, h)
		case h.Scale == "C":
			set(&s.c, h)
		case h.Scale == "F" && fan:
			set(&s.fanF, h)
		case h.Scale == "F":
			set(&s.f, h)
		}
	}
	return s
}

func checkStatement(heats []Heat) []Question {
	var all []Question
	add := func(q Question, odd bool) {
		if odd {
			all = append(all, q)
		}
	}
	s := sortHeats(heats)
	paired := len(all)
	add(s.checkPair(s.c, s.fanC, leastApart, mostApart))
	add(s.checkPair(s.f, s.fanF, leastApartF, mostApartF))
	doubted := len(all) > paired
	add(checkScales(s.conventional("C"), s.conventional("F"), doubted, s.fanC))
	add(checkScales(s.conventional("C"), s.gas, doubted, s.fanC))
	if s.c == nil && s.fanC == nil {
		add(checkScales(s.conventional("F"), s.gas, doubted, nil))
	}
	return all
}

// conventional gives the statement's setting on a scale for a conventional
// oven, from the fan setting by the rule if only that is given.
func (s statement) conventional(scale string) *Heat {
	plain, fan := s.c, s.fanC
	if scale == "F" {
		plain, fan = s.f, s.fanF
	}
	if plain != nil || fan == nil {
		return plain
	}
	h := *fan
	h.Degrees = h.Degrees.Map(func(n exact.Number) exact.Number { return fanRule(n, scale, "fan", "") })
	h.Oven = ""
	return &h
}

// checkPair questions a conventional and a fan setting on one scale.
func (s statement) checkPair(plain, fan *Heat, least, most exact.Number) (Question, bool) {
	if plain == nil || fan == nil {
		return Question{}, false
	}
	from, to := plain.Degrees.From.Sub(fan.Degrees.From), plain.Degrees.To.Sub(fan.Degrees.To)
	if from.Cmp(least) >= 0 && from.Cmp(most) <= 0 && to.Cmp(least) >= 0 && to.Cmp(most) <= 0 {
		return Question{}, false
	}
	otherFan, otherPlain := s.shift(*plain, "fan"), s.shift(*fan, "conventional")
	q := Question{About: *fan, Likely: []string{otherFan.String(), otherPlain.String()}}
	witness, forFan := s.witness(*plain, otherPlain)
	if witness != nil && !forFan {
		q.About = *plain
		q.Likely[0], q.Likely[1] = q.Likely[1], q.Likely[0]
	}
	said := *plain
	said.Oven = ""
	if from.Sign() < 0 {
		q.Text = fmt.Sprintf("A fan oven is set lower than a conventional one, but %s stands with %s.", fan, said)
		if swapped := from.Mul(exact.Whole(-1)); witness == nil && swapped.Cmp(least) >= 0 && swapped.Cmp(most) <= 0 {
			a, b := *fan, *plain
			a.Oven, b.Oven = "conventional", "fan"
			q.Likely = append([]string{a.String() + " and " + b.String()}, q.Likely...)
		}
	} else {
		q.Text = fmt.Sprintf("%s and %s are %s, where about %s is usual.", said, fan, gapText(from, to, plain.Scale), usualGap(plain.Scale))
	}
	q.Text += " Was " + orList(q.Likely) + " meant?"
	if witness != nil {
		agreed := said
		if !forFan {
			agreed = *fan
		}
		q.Text += fmt.Sprintf(" %s agrees with %s.", capital(witness.String()), agreed)
	}
	return q, true
}

// shift gives h for the other oven, without its text.
func (s statement) shift(h Heat, oven string) Heat {
	to, _, _ := h.In(h.Scale, oven)
	return to
}

// witness finds a heat on another scale that agrees with one of the two
// conventional settings; first tells that it is a.
func (s statement) witness(a, b Heat) (w *Heat, first bool) {
	for _, w := range []*Heat{s.gas, s.f, s.c} {
		if w == nil || w.Scale == a.Scale {
			continue
		}
		withA, withB := agree(a, *w), agree(b, *w)
		if withA != withB {
			return w, withA
		}
	}
	return nil, false
}

// agree tells whether two conventional settings on two scales can be one.
func agree(a, b Heat) bool {
	ends := func(x, y exact.Number) bool {
		switch a.Scale + b.Scale {
		case "CF":
			return agreeCF(x, y)
		case "FC":
			return agreeCF(y, x)
		case "Cgas":
			return agreeCGas(x, y)
		case "Fgas":
			return agreeFGas(x, y)
		}
		return true
	}
	if a.Degrees.IsSingle() == b.Degrees.IsSingle() {
		return ends(a.Degrees.From, b.Degrees.From) && ends(a.Degrees.To, b.Degrees.To)
	}
	for _, x := range within(a.Degrees) {
		for _, y := range within(b.Degrees) {
			if ends(x, y) {
				return true
			}
		}
	}
	return false
}

// within gives what one figure may be held against in r: its ends and middle.
func within(r exact.Range) []exact.Number {
	if r.IsSingle() {
		return []exact.Number{r.From}
	}
	return []exact.Number{r.From, r.From.Add(r.To).Mul(half), r.To}
}

// checkScales questions two conventional settings on different scales. If the
// pair has been questioned already, one that agrees with either of it passes.
// fan is the fan setting that a °F may have been converted from as it stands.
func checkScales(a, b *Heat, doubted bool, fan *Heat) (Question, bool) {
	if a == nil || b == nil || agree(*a, *b) {
		return Question{}, false
	}
	if fan != nil && b.Scale == "F" && agree(*fan, *b) {
		return Question{}, false
	}
	if doubted && fan != nil {
		h := *fan
		h.Degrees = h.Degrees.Map(func(n exact.Number) exact.Number { return fanRule(n, "C", "fan", "") })
		if agree(h, *b) {
			return Question{}, false
		}
	}
	q := Question{About: *b}
	for _, each := range []struct {
		h     *Heat
		scale string
	}{{a, b.Scale}, {b, a.Scale}} {
		if to, ok := nearest5(*each.h, each.scale); ok {
			q.Likely = append(q.Likely, to.String())
		}
	}
	q.Text = fmt.Sprintf("%s and %s do not agree.", capital(a.String()), b)
	if len(q.Likely) > 0 {
		q.Text += " Was " + orList(q.Likely) + " meant?"
	}
	return q, true
}

// nearest5 converts h for a suggestion: by the table for ovens, else exact to
// the degree.
func nearest5(h Heat, scale string) (Heat, bool) {
	to, how, err := h.In(scale, "")
	if err != nil {
		return Heat{}, false
	}
	if how == "exact conversion" {
		to.Degrees = to.Degrees.Map(func(n exact.Number) exact.Number { return n.Round(whole) })
	}
	return to, true
}

// gapText writes how far apart two settings are, both ends if they differ.
func gapText(from, to exact.Number, scale string) string {
	text := exact.FormatDecimal(from, 1) + exact.NoBreak + "°" + scale
	if from.Equal(to) {
		return text + " apart"
	}
	return text + " apart at the lower end and " + exact.FormatDecimal(to, 1) + exact.NoBreak + "°" + scale + " at the upper"
}

func usualGap(scale string) string {
	if scale == "F" {
		return "25" + exact.NoBreak + "°F"
	}
	return "20" + exact.NoBreak + "°C"
}

func orList(words []string) string {
	text := words[0]
	for i, w := range words[1:] {
		if i == len(words)-2 {
			text += " or " + w
		} else {
			text += ", " + w
		}
	}
	return text
}

// capital makes the first letter of a sentence's "gas 4" a capital.
func capital(text string) string {
	if len(text) > 0 && text[0] >= 'a' && text[0] <= 'z' {
		return string(text[0]-'a'+'A') + text[1:]
	}
	return text
}
