package recipe

import (
	"slices"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

// Scaled is a recipe times a factor.
type Scaled struct {
	By     measure.Number
	Recipe Recipe // every amount exact; the texts are those written before scaling
	Lines  []ScaledLine
	Yield  string   // "makes 24 knots"; the recipe's own words if they hold no number
	Notes  []string // what does not scale, in the person's words
}

// ScaledLine is one line of the scaled recipe as it is shown.
type ScaledLine struct {
	Component, Line int // indexes into Recipe.Components and its Lines
	Written
}

// Scale multiplies every amount of r by a factor, exactly, and writes the lines
// with w. Minutes and temperatures stay as they are: Notes say what follows from
// that. A factor of 0 or less changes nothing. r itself is left as it is.
func Scale(r Recipe, by measure.Number, w Writer) Scaled {
	if by.Sign() <= 0 {
		by = measure.Whole(1)
	}
	w = w.For(r)
	s := Scaled{By: by, Recipe: r.times(by)}
	for i, c := range s.Recipe.Components {
		for k, l := range c.Lines {
			s.Lines = append(s.Lines, ScaledLine{Component: i, Line: k, Written: w.line(l, r.Components[i].Lines[k].Amount)})
		}
	}
	s.Yield = w.Yield(s.Recipe.Yield)
	s.Notes = notes(r, by, w)
	return s
}

// times gives a copy of r with every amount times by.
func (r Recipe) times(by measure.Number) Recipe {
	r.Yield.Amount = r.Yield.Amount.Scale(by)
	r.Components = slices.Clone(r.Components)
	for i := range r.Components {
		c := &r.Components[i]
		c.Lines, c.Steps = slices.Clone(c.Lines), slices.Clone(c.Steps)
		for k := range c.Lines {
			c.Lines[k] = c.Lines[k].times(by)
		}
		for k := range c.Steps {
			s := &c.Steps[k]
			s.Uses = slices.Clone(s.Uses)
			for u := range s.Uses {
				s.Uses[u].Amount = s.Uses[u].Amount.Scale(by)
			}
		}
	}
	return r
}

func (l Line) times(by measure.Number) Line {
	l.Amount = l.Amount.Scale(by)
	l.Plus = scaleAll(l.Plus, by)
	l.Equals = scaleAll(l.Equals, by)
	l.Packs.Count = l.Packs.Count.Scale(by)
	return l
}

func scaleAll(amounts []measure.Amount, by measure.Number) []measure.Amount {
	if amounts == nil {
		return nil
	}
	scaled := make([]measure.Amount, len(amounts))
	for i, a := range amounts {
		scaled[i] = a.Scale(by)
	}
	return scaled
}

// ReadFactor reads a factor as people write it: "3/2", "1.5", "1½", "×2",
// "double", "half". The error is fault.Invalid on "by". A factor is above 0 and
// at most 1000.
func ReadFactor(text string) (measure.Number, error) {
	n, ok := readFactor(text)
	if !ok || n.Sign() <= 0 || n.Cmp(mostScale) > 0 {
		return measure.Number{}, fault.Invalidf("by", "“%.40s” is no factor. Write a number above 0 and up to 1000, such as 2, 1.5 or 3/2.", text)
	}
	return n, nil
}

var mostScale = measure.Whole(1000)

// Makes splits a scaled recipe into equal makes, none above what the kitchen
// can take at once: of is the whole (grams of dough, pieces), capacity what
// mixer, tray or oven takes. It gives how many makes, and the share of the whole
// that each is. The error is fault.Invalid on "capacity".
func Makes(of, capacity measure.Number) (count int, share measure.Number, err error) {
	if capacity.Sign() <= 0 {
		return 0, measure.Number{}, fault.Invalidf("capacity", "A capacity is above 0: how many grams or pieces fit at once?")
	}
	n, ok := of.Quo(capacity).Ceil().Int()
	if !ok || n > 10000 {
		return 0, measure.Number{}, fault.Invalidf("capacity", "That would be more than 10,000 makes. Is the capacity in the same unit as the recipe?")
	}
	n = max(n, 1)
	return int(n), measure.Ratio(1, n), nil
}
