package recipe

import (
	"strings"
	"sync"

	"benchproof/kitchen/measure"
)

// written is an amount written for hands.
type written struct {
	text   string
	off    float64
	family family // of the measure that was written
}

// family tells measures that are the same people's.
type family int

const (
	neutral  family = iota // counts; spoons, which everybody has
	metric                 // g, ml
	foreign                // cups, ounces, pints
	imperial               // imperial fluid ounces and pints
)

// show writes the line's amount in a style.
func (t *teller) show(style Style) written {
	if style == AsWritten {
		return t.showOwn()
	}
	if t.isPacked() {
		if w, ok := t.showPacks(style); ok {
			return w
		}
	}
	amount := t.stated(style)
	kind := amount.Unit.Kind()
	switch {
	case kind == measure.Length:
		return t.showLength(amount, style)
	case kind == measure.Mass:
		return t.showMass(amount, style)
	case kind == measure.Volume, amount.Unit == measure.Stick:
		return t.showVolume(amount, style)
	}
	return t.showCount(amount)
}

// showOwn writes the amount in its own unit's family.
func (t *teller) showOwn() written {
	if t.isPacked() {
		if w, ok := t.showPacks(AsWritten); ok {
			return w
		}
	}
	amount := t.sum(t.line.Amount)
	if amount.Unit.Kind() == measure.Count {
		return t.showCount(amount)
	}
	return t.hand(t.system, amount, familyOf(amount.Unit))
}

// sum adds the line's "plus" amounts to its own, where they can be added.
func (t *teller) sum(own measure.Amount) measure.Amount {
	for _, plus := range t.line.Plus {
		if total, ok := own.Add(plus, t.system); ok {
			own = total
		}
	}
	return own
}

// stated picks, of the line's statements of its amount, the one that is in the
// style's own measures: the cook's figure goes before a computed one.
func (t *teller) stated(style Style) measure.Amount {
	want := metric
	if style != MetricStyle {
		want = foreign
	}
	own := t.sum(t.line.Amount)
	if len(t.line.Plus) > 0 || familyOf(own.Unit) == want || isCount(own.Unit) {
		return own
	}
	for _, other := range t.line.Equals {
		if familyOf(other.Unit) == want && isWeighed(other.Unit) && !(style == ImperialStyle && other.Unit == measure.Cup) {
			return other
		}
	}
	return own
}

// showCount writes pieces. Part of an egg has its weight beside it.
func (t *teller) showCount(amount measure.Amount) written {
	w := t.hand(t.system, amount, neutral)
	if len(t.line.Plus) > 0 && amount.Range == t.line.Amount.Range {
		for _, plus := range t.line.Plus {
			if sum, ok := amount.Add(plus, t.system); !ok || sum.Unit == "" {
				w.text += " + " + t.hand(t.system, plus, neutral).text
			}
		}
	}
	return w
}

func (t *teller) showLength(amount measure.Amount, style Style) written {
	to := measure.Centimetre
	if style != MetricStyle {
		to = measure.Inch
	}
	if (amount.Unit == measure.Inch) == (to == measure.Inch) {
		return t.hand(t.system, amount, familyOf(amount.Unit))
	}
	return t.converted(amount, to, t.system)
}

// showMass writes a mass: in grams for metric; for US in cups and spoons where
// cooks measure the food so, else in ounces.
func (t *teller) showMass(amount measure.Amount, style Style) written {
	own := familyOf(amount.Unit)
	switch {
	case style == MetricStyle && own == metric, style != MetricStyle && own == foreign:
		return t.hand(t.system, amount, own)
	case style == MetricStyle:
		return t.converted(amount, measure.Gram, measure.Metric)
	case style == USStyle && t.inCups():
		grams, err := measure.Convert(amount, measure.Gram, t.system, t.system)
		if err != nil {
			break
		}
		if ml, ok := t.food.Millilitres(grams.Range, t.line.form()); ok {
			t.assumeUnit(measure.US, measure.Cup)
			t.source = t.weightSource()
			return fromShown(measure.Hand{System: measure.US}.InVolume(ml), foreign)
		}
	}
	if style == ImperialStyle {
		if w, ok := t.spooned(amount); ok {
			return w
		}
	}
	return t.converted(amount, measure.Ounce, measure.US)
}

// spooned writes a mass too small for ounces in spoons.
func (t *teller) spooned(amount measure.Amount) (written, bool) {
	grams, err := measure.Convert(amount, measure.Gram, t.system, t.system)
	if err != nil || !t.inCups() || grams.To.Cmp(measure.Whole(20)) >= 0 {
		return written{}, false
	}
	ml, ok := t.food.Millilitres(grams.Range, t.line.form())
	if !ok {
		return written{}, false
	}
	t.source = t.weightSource()
	return fromShown(measure.Hand{System: measure.US}.InVolume(ml), foreign), true
}

// showVolume writes a volume. Spoons stay spoons but of butter; cups of what
// cooks weigh become grams in metric, ounces in imperial measures.
func (t *teller) showVolume(amount measure.Amount, style Style) written {
	switch style {
	case USStyle:
		return t.showUS(amount)
	case MetricStyle, ImperialStyle:
		if spoon[amount.Unit] && !t.isButter() && t.isSpoonful(amount) {
			return t.showSpoons(amount)
		}
		if familyOf(amount.Unit) == metric && style == MetricStyle {
			break
		}
		if !t.isLiquid() && t.food != nil {
			if w, ok := t.weighedAs(amount, style); ok {
				return w
			}
		}
		if amount.Unit == measure.Stick {
			break
		}
		return t.poured(amount, style)
	}
	return t.hand(t.system, amount, familyOf(amount.Unit))
}

// isSpoonful tells an amount that is less than a quarter of a cup: more is
// poured or weighed.
func (t *teller) isSpoonful(amount measure.Amount) bool {
	one, ok := t.system.Millilitres(amount.Unit)
	return !ok || amount.To.Mul(one).Cmp(measure.Whole(59)) < 0
}

// showSpoons writes spoons for the reader's own, which are not the line's where
// that means the Australian tablespoon of 20 mL.
func (t *teller) showSpoons(amount measure.Amount) written {
	to := t.spoons()
	was, ok := t.system.Millilitres(amount.Unit)
	is, known := to.Millilitres(amount.Unit)
	if !ok || !known || was.Sub(is).Quo(is).Cmp(sameSpoon) <= 0 && is.Sub(was).Quo(is).Cmp(sameSpoon) <= 0 {
		return t.hand(t.system, amount, neutral)
	}
	t.assumeUnit(t.system, amount.Unit)
	return fromShown(measure.Hand{System: to}.Write(amount.Scale(was.Quo(is))), neutral)
}

// sameSpoon is how far two spoons may be apart and pass for one another: a US
// teaspoon holds 1.4 % less than a metric one.
var sameSpoon = measure.Ratio(3, 100)

// showUS writes a volume in US cups and spoons.
func (t *teller) showUS(amount measure.Amount) written {
	if amount.Unit == measure.Stick || t.system == measure.US && familyOf(amount.Unit) != metric {
		return t.hand(measure.US, amount, familyOf(amount.Unit))
	}
	ml, err := measure.Convert(amount, measure.Millilitre, t.system, t.system)
	if err != nil || informal(amount.Unit) {
		return t.hand(t.system, amount, familyOf(amount.Unit))
	}
	t.assumeUnit(t.system, amount.Unit)
	return fromShown(measure.Hand{System: measure.US}.InVolume(ml.Range), foreign)
}

// poured writes a volume in millilitres or imperial fluid ounces.
func (t *teller) poured(amount measure.Amount, style Style) written {
	ml, err := measure.Convert(amount, measure.Millilitre, t.system, t.system)
	if err != nil {
		return t.hand(t.system, amount, familyOf(amount.Unit))
	}
	t.assumeUnit(t.system, amount.Unit)
	if style == MetricStyle {
		return t.hand(measure.Metric, ml, metric)
	}
	return fromShown(measure.Hand{System: measure.Imperial}.InVolume(ml.Range), imperial)
}

// weighedAs writes a volume, or a stick, by the food's weight.
func (t *teller) weighedAs(amount measure.Amount, style Style) (written, bool) {
	weighed, err := t.food.Grams(amount, t.line.form(), t.system)
	if err != nil {
		return written{}, false
	}
	t.assume(weighed.Assumed)
	t.source = weighed.Source
	if style == ImperialStyle {
		return fromShown(measure.Hand{System: measure.Imperial}.InMass(weighed.Grams), foreign), true
	}
	return fromShown(measure.Hand{System: measure.Metric}.InMass(weighed.Grams), metric), true
}

// other writes the amount in the other people's measures, "" if that says
// nothing new.
func (t *teller) other(style Style, shown written) string {
	if text := t.beaten(); text != "" {
		return text
	}
	quiet := *t
	quiet.packed, quiet.quiet = false, true
	to := USStyle
	if shown.family == foreign || shown.family == imperial || style == USStyle || style == ImperialStyle {
		to = MetricStyle
	}
	if isCount(t.line.Amount.Unit) && t.line.Amount.Unit != measure.Stick && !t.isPacked() {
		return ""
	}
	w := quiet.show(to)
	if w.text == shown.text || w.family == shown.family {
		return ""
	}
	return w.text
}

// beaten says what part of an egg weighs: "75 g beaten" for 1½ large eggs.
func (t *teller) beaten() string {
	l := t.line
	if t.food == nil || !strings.HasPrefix(t.food.ID, "egg") || l.Amount.Unit != measure.Each || l.Amount.From.IsWhole() && l.Amount.To.IsWhole() {
		return ""
	}
	weighed, err := t.food.Grams(l.Amount, l.form(), t.system)
	if err != nil {
		return ""
	}
	t.assume(weighed.Assumed)
	t.source = weighed.Source
	return measure.Hand{System: measure.Metric}.InMass(weighed.Grams).Text + " beaten"
}

func (t *teller) hand(s measure.System, a measure.Amount, f family) written {
	if f == neutral && a.Unit.Kind() == measure.Volume || f == foreign && a.Unit.Kind() == measure.Volume {
		t.assumeUnit(t.system, a.Unit)
	}
	return fromShown(measure.Hand{System: s}.Write(a), f)
}

// converted writes the amount in another unit of its kind.
func (t *teller) converted(a measure.Amount, to measure.Unit, s measure.System) written {
	c, err := measure.Convert(a, to, t.system, s)
	if err != nil {
		return t.hand(t.system, a, familyOf(a.Unit))
	}
	return fromShown(measure.Hand{System: s}.Write(c), familyOf(to))
}

func fromShown(s measure.Shown, f family) written {
	return written{text: s.Text, off: s.ErrorPercent.Float(), family: f}
}

func (t *teller) assume(text string) {
	if text != "" && t.assumed == "" && !t.quiet {
		t.assumed = text
	}
}

// assumeUnit keeps what a unit was taken to hold.
func (t *teller) assumeUnit(s measure.System, u measure.Unit) {
	if t.assumed == "" && !t.quiet {
		t.assume(descriptions()[sized{s, u}])
	}
}

// sized is a unit in somebody's measures.
type sized struct {
	system measure.System
	unit   measure.Unit
}

// descriptions has the words of measure.System.Describe for every unit, made
// once: a page of lines asks for the same few again and again.
var descriptions = sync.OnceValue(func() map[sized]string {
	all := map[sized]string{}
	for _, s := range measure.Systems() {
		for _, u := range measure.Units() {
			if text := s.Describe(u); text != "" {
				all[sized{s, u}] = text
			}
		}
	}
	return all
})

func (t *teller) weightSource() string {
	if t.quiet {
		return ""
	}
	if w, err := t.food.Grams(measure.Of(measure.Whole(1), measure.Cup), t.line.form(), measure.US); err == nil {
		return w.Source
	}
	return ""
}
