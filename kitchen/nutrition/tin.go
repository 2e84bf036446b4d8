package nutrition

import (
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// drainedShare is the share of a tin's stated weight that is left when it is
// drained: a 400 g tin of pulses holds 240 g. Common practice, no source.
var drainedShare = measure.Ratio(3, 5)

// drainTins takes the liquid off tins that are drained, where their weight is
// the one printed on them.
func (c *count) drainTins() {
	for i := range c.entries {
		e := &c.entries[i]
		if !e.isDrainedTin() {
			continue
		}
		e.Eaten = e.grams.Mul(e.leftInTin())
		e.because(inGrams(e.Eaten) + " of " + inGrams(e.grams) + " is counted: the tin is drained.")
	}
}

// isDrainedTin tells a tin or jar by its printed weight that the cook drains.
func (e *entry) isDrainedTin() bool {
	l := e.line
	if l.Packs.Unit != measure.Tin && l.Packs.Unit != measure.Jar || l.Packs.Size.Unit.Kind() != measure.Mass {
		return false
	}
	text := strings.ToLower(l.Text)
	return strings.Contains(text, "drained") && !strings.Contains(text, "drained weight") && !strings.Contains(text, "undrained")
}

// leftInTin is the share left of this food's tin, by the larder's own drained
// weight of one and the usual tin that holds it.
func (e *entry) leftInTin() measure.Number {
	if e.Food == nil {
		return drainedShare
	}
	for _, w := range e.Food.Weights {
		if w.Unit != measure.Tin || w.Form != "drained" {
			continue
		}
		if size, ok := smallestTin(e.Food, w.Grams); ok {
			return w.Grams.Quo(size)
		}
	}
	return drainedShare
}

// smallestTin is the least of a food's tins that holds more than this.
func smallestTin(f *food.Food, drained measure.Number) (size measure.Number, ok bool) {
	for _, p := range f.Packs {
		per, mass := measure.Grams(p.Amount.Unit)
		if !mass || p.Name != "tin" {
			continue
		}
		printed := p.Amount.From.Mul(per)
		if printed.Cmp(drained) > 0 && (!ok || printed.Cmp(size) < 0) {
			size, ok = printed, true
		}
	}
	return size, ok
}
