package measure

import (
	"strings"

	"benchproof/kitchen/measure/scan"
)

// Duration is a stretch of time as written in a text.
type Duration struct {
	Minutes Range  // exact: 45 seconds are ¾
	Text    string // as written: "10 to 12 minutes"
	At      int    // where Text begins, in bytes
}

// Durations finds the stretches of time in text, in order: "10 to 12 minutes",
// "1 hr 30", "1½ hours", "a good quarter of an hour", "an hour and a half",
// "30 minutes to 1 hour", "a minute or two", "45 secs", "90 minutes or so",
// "2 days". "overnight" is 8 to 12 hours: common practice, no source. A bound
// ("up to 2 days") is read as its figure, a rate ("20 minutes per 500 g") as
// its time. "A few minutes" names no number and is not read; nor are ordinals
// ("a second time"), ages ("day-old") and times of day.
func Durations(text string) []Duration {
	var all []Duration
	for at := 0; at < len(text); {
		c := newCursor(text, at)
		var d Duration
		if !c.insideNumber() && c.duration(&d.Minutes) {
			d.At, d.Text = at, text[at:c.At]
			all = append(all, d)
			at = c.At
			continue
		}
		at += newCursor(text, at).Token()
	}
	return all
}

// insideNumber tells whether the digit here continues a time of day or the
// like: the 30 of "9:30".
func (c cursor) insideNumber() bool {
	return c.At > 0 && scan.IsDigit(c.Byte(0)) && (c.Text[c.At-1] == ':' || c.Text[c.At-1]|0x20 >= 'a' && c.Text[c.At-1]|0x20 <= 'z')
}

// duration reads one stretch of time here.
func (c *cursor) duration(r *Range) bool {
	if c.AcceptWord("overnight") {
		*r = Range{From: Whole(8 * 60), To: Whole(12 * 60)}
		return true
	}
	start := *c
	between := c.AcceptThenGap("between")
	article := c.timeArticle()
	unit, ok := c.timed(r, between, article, start.At)
	if !ok {
		*c = start
		return false
	}
	c.longer(r, unit)
	if r.IsSingle() {
		c.untilTime(r)
	}
	before := *c
	if !c.Gap() || !c.AcceptPhrase("or so") && !c.AcceptPhrase("or thereabouts") {
		*c = before
	}
	return true
}

// timeArticle skips the "a" of "an hour", "a good half hour", but not of
// "a half hour".
func (c *cursor) timeArticle() bool {
	start := *c
	if !c.AcceptThenGap("a") && !c.AcceptThenGap("an") && !c.AcceptThenGap("another") {
		return false
	}
	article := *c
	for _, w := range []string{"good", "full", "generous", "whole", "solid", "further", "scant", "bare", "quick"} {
		if c.AcceptThenGap(w) {
			return true
		}
	}
	*c = start
	if _, ok := c.Quantity(); ok {
		*c = start
		return false
	}
	*c = article
	return true
}

// timed reads the number and the unit; at is where the whole began.
func (c *cursor) timed(r *Range, between, article bool, at int) (unit Number, ok bool) {
	first := Reading{Amount: Of(whole, Each)}
	q, counted := c.Quantity()
	if counted {
		first.Amount.Range = One(q.Number())
		c.ranged(&first, q, between)
		c.Gap()
		c.stretched()
	} else if !article {
		return unit, false
	}
	word := *c
	unit, ok = c.timeUnit()
	if !ok || q.Num == 0 && counted || word.isAge(*c) {
		return unit, false
	}
	*r = first.Amount.Range.Scale(unit)
	if !counted || q.Words && q.Num == q.Den {
		return unit, c.orTwo(r, unit) || c.andPartOf(r, unit) || counted || word.isSpan(at)
	}
	return unit, true
}

// stretched skips the word between a number and its unit: "10 more minutes",
// "ten or so minutes".
func (c *cursor) stretched() {
	before := *c
	if c.AcceptPhrase("or so") && c.Space() {
		return
	}
	*c = before
	switch w := scan.Lower(c.Word()); w {
	case "more", "full", "additional", "further", "extra", "whole", "good", "long", "solid", "generous":
		c.At += len(w)
		if c.Space() {
			return
		}
	}
	*c = before
}

// isAge tells whether the unit that ends at end speaks of an age or names a
// food: "3 days old", "2 minute steaks".
func (c cursor) isAge(end cursor) bool {
	minute := scan.Lower(c.Word()) == "minute"
	end.Gap()
	switch scan.Lower(end.Word()) {
	case "old":
		return true
	case "steak", "steaks", "rice", "noodles":
		return minute
	}
	return false
}

// isSpan tells whether "a" with this unit is a stretch of time: "an hour" and
// "a minute" are, "a second time" and "once a day" are not, "for a day" is.
func (c cursor) isSpan(at int) bool {
	w := scan.Lower(c.Word())
	if strings.HasPrefix(w, "h") || strings.HasPrefix(w, "min") {
		return true
	}
	switch scan.LastWord(strings.TrimRight(c.Text[:at], " \u00a0")) {
	case "for", "about", "least", "to", "after", "within", "than", "nearly", "almost", "in":
		return !strings.HasPrefix(w, "sec")
	}
	return false
}

// timeUnit reads a unit of time and gives it in minutes.
func (c *cursor) timeUnit() (Number, bool) {
	w := c.Word()
	switch scan.Lower(w) {
	case "week", "weeks", "wk", "wks":
		c.At += len(w)
		return Whole(7 * 24 * 60), true
	}
	meaning, ok := lookUpUnit(w)
	if !ok || meaning.unit.Kind() != Time {
		return Number{}, false
	}
	c.At += len(w)
	if meaning.short {
		c.acceptStop()
	}
	return minutes[meaning.unit], true
}

// acceptStop skips the full stop of an abbreviation, not that of a sentence.
func (c *cursor) acceptStop() {
	before := *c
	if !c.Accept(".") {
		return
	}
	after := *c
	after.Space()
	if r := after.Rune(); after.Done() || r >= 'A' && r <= 'Z' || r == '\n' || r == '\r' {
		*c = before
	}
}

// orTwo reads "or two" after "a minute".
func (c *cursor) orTwo(r *Range, unit Number) bool {
	before := *c
	if c.Space() && (c.AcceptPhrase("or two") || c.AcceptPhrase("or 2")) {
		r.To = unit.Mul(Whole(2))
		return true
	}
	*c = before
	return false
}

// andPartOf reads "and a half" after "an hour".
func (c *cursor) andPartOf(r *Range, unit Number) bool {
	f := scan.Over(1, 1)
	if !c.AndPart(&f) {
		return false
	}
	*r = One(unit.Mul(f.Number()))
	return true
}

// longer adds the smaller units of "1 hr 30", "1 hour and 20 to 30 minutes",
// "5 minutes 30 seconds".
func (c *cursor) longer(r *Range, unit Number) bool {
	before := *c
	if unit.Cmp(whole) < 0 || !r.IsSingle() {
		return false
	}
	c.Accept(",")
	c.Space()
	if c.AcceptWord("and") || c.Accept("&") {
		c.Space()
	}
	q, ok := c.Quantity()
	if ok && q.Num > 0 {
		alone := *c
		more := Reading{Amount: Of(q.Number(), Each)}
		if c.ranged(&more, q, false) && c.smaller(r, unit, q, more.Amount.Range) {
			return true
		}
		*c = alone // the 15 of "1 hour 15 to 1 hour 30" ends before "to"
		if c.smaller(r, unit, q, One(q.Number())) {
			return true
		}
	}
	*c = before
	return false
}

// smaller adds n of the unit that follows, where it is smaller than unit.
func (c *cursor) smaller(r *Range, unit Number, q scan.Quantity, n Range) bool {
	bare := *c
	c.Gap()
	size, ok := c.timeUnit()
	if !ok {
		size, ok = c.minutesLeft(bare, unit, q)
	}
	if !ok || size.Cmp(unit) >= 0 {
		return false
	}
	*r = r.Add(n.Scale(size))
	return true
}

// minutesLeft lets the minutes of "1 hr 30" and "1h 30m" stand without their
// word; bare stands after the number.
func (c *cursor) minutesLeft(bare cursor, unit Number, q scan.Quantity) (Number, bool) {
	if !unit.Equal(minutes[Hour]) || q.Den != 1 || q.Num >= 60 {
		return Number{}, false
	}
	if c.AcceptWord("m") {
		return whole, true
	}
	*c = bare
	if bare.untilHours() {
		return whole, true
	}
	bare.Space()
	if bare.Done() || strings.ContainsRune(".,;:)\n\r", bare.Rune()) {
		return whole, true
	}
	switch scan.Lower(bare.Word()) {
	case "until", "till", "or", "then", "and", "in", "at", "for", "with", "on", "total":
		return whole, true
	}
	return Number{}, false
}

// untilHours tells whether the longer end of a range of hours follows.
func (c cursor) untilHours() bool {
	if _, ok := c.RangeSign(false); !ok {
		return false
	}
	var to Range
	article := c.timeArticle()
	unit, ok := c.timed(&to, false, article, c.At)
	return ok && unit.Equal(minutes[Hour])
}

// untilTime reads the longer end of "30 minutes to 1 hour", "45 minutes to an
// hour", "1 hour 15 to 1 hour 30".
func (c *cursor) untilTime(r *Range) {
	before := *c
	if dash, ok := c.RangeSign(false); ok {
		joint := c.Text[before.At:c.At]
		var to Range
		article := c.timeArticle()
		unit, ok := c.timed(&to, false, article, c.At)
		or := !dash && strings.Contains(scan.Lower(joint), "or")
		if ok && to.IsSingle() && !or {
			c.longer(&to, unit)
			if to.IsSingle() && to.From.Cmp(r.From) > 0 {
				*r = Range{From: r.From, To: to.From}
				return
			}
		}
	}
	*c = before
}
