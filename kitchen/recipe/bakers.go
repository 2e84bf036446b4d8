package recipe

import (
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

// Formula is a component in baker's percentages: every weight as a percentage of
// all its flour together. Of a range the smaller end counts.
type Formula struct {
	FlourGrams measure.Number
	DoughGrams measure.Number
	Lines      []Percentage
	Sum        measure.Number // of all percentages, above 100
	Hydration  measure.Number // water in everything but the flour, as a percentage of it
	Missing    []string       // foods that have no weight, or whose water is not known
}

// Percentage is one line of a Formula.
type Percentage struct {
	Line    int // index into the component's Lines
	Grams   measure.Number
	Percent measure.Number
	IsFlour bool
}

// Bakers computes the formula of a component. Hydration is the true one: water
// in milk, eggs, butter and honey counts by the larder's figures, the moisture
// of the flour does not. A sourdough starter counts as its flour and its water,
// half and half unless the line says its hydration. ok is false if the component
// has no flour. Source: "Bakers' Percentages", "Percentage of Ingredients"
// (baking textbooks).
func Bakers(c Component, w Writer) (f Formula, ok bool) {
	b := baker{writer: w}
	for i, l := range c.Lines {
		if l.Read && l.HasAmount {
			b.add(i, l)
		}
	}
	f = b.formula
	if f.FlourGrams.Sign() <= 0 {
		return Formula{}, false
	}
	hundred := measure.Whole(100)
	for i := range f.Lines {
		p := &f.Lines[i]
		p.Percent = p.Grams.Mul(hundred).Quo(f.FlourGrams)
		f.Sum = f.Sum.Add(p.Percent)
	}
	f.Hydration = b.water.Mul(hundred).Quo(f.FlourGrams)
	return f, true
}

// baker adds a formula up.
type baker struct {
	writer  Writer
	formula Formula
	water   measure.Number
}

func (b *baker) add(i int, l Line) {
	f := &b.formula
	grams, _, err := b.writer.Grams(l)
	if err != nil {
		f.Missing = append(f.Missing, l.Food)
		return
	}
	weight := grams.From
	line := Percentage{Line: i, Grams: weight, IsFlour: isFlour(l)}
	f.DoughGrams = f.DoughGrams.Add(weight)
	switch {
	case line.IsFlour:
		f.FlourGrams = f.FlourGrams.Add(weight)
	case isStarter(l):
		hydration := starterHydration(l)
		flour := weight.Quo(measure.Whole(1).Add(hydration))
		f.FlourGrams = f.FlourGrams.Add(flour)
		b.water = b.water.Add(weight.Sub(flour))
	default:
		b.addWater(l, weight)
	}
	f.Lines = append(f.Lines, line)
}

// addWater counts the water in a food that is no flour.
func (b *baker) addWater(l Line, grams measure.Number) {
	if strings.HasSuffix(strings.ToLower(l.Food), "water") {
		b.water = b.water.Add(grams)
		return
	}
	if food := b.writer.teller(l).food; food != nil && food.Per100.Water != nil {
		b.water = b.water.Add(grams.Mul(*food.Per100.Water).Quo(measure.Whole(100)))
		return
	}
	b.formula.Missing = append(b.formula.Missing, l.Food)
}

// isFlour tells flours and meals from starches: cornflour and potato flour are
// no base of a dough.
func isFlour(l Line) bool {
	for _, name := range []string{strings.ToLower(l.Food), strings.ReplaceAll(l.FoodID, "-", " ")} {
		if strings.Contains(name, "cornflour") || strings.Contains(name, "corn flour") || strings.Contains(name, "tapioca") {
			return false
		}
		if strings.HasSuffix(name, "flour") || strings.HasSuffix(name, "semolina") || strings.HasSuffix(name, "flours") {
			return true
		}
	}
	return false
}

func isStarter(l Line) bool {
	name := strings.ToLower(l.Food)
	return l.FoodID == "sourdough-starter" || strings.HasSuffix(name, "starter") || strings.HasSuffix(name, "levain") || strings.HasSuffix(name, "leaven")
}

// starterHydration reads "(80 % hydration)" off a starter's line; 1 if it says
// nothing.
func starterHydration(l Line) measure.Number {
	for _, part := range strings.Split(l.Note+";"+l.Preparation+";"+l.Food, ";") {
		number, _, ok := strings.Cut(part, "%")
		if !ok {
			continue
		}
		fields := strings.Fields(number)
		if len(fields) == 0 {
			continue
		}
		if n, rest, ok := measure.ReadNumber(fields[len(fields)-1]); ok && rest == "" && n.Sign() > 0 && n.Cmp(measure.Whole(300)) <= 0 {
			return n.Quo(measure.Whole(100))
		}
	}
	return measure.Whole(1)
}

// DoughFor gives the dough that bakes to a wanted weight: baked ÷ (1 − loss).
// loss is the share lost in the oven, 0 up to but not including 1: trials tell
// it. The error is fault.Invalid on "loss".
func DoughFor(baked, loss measure.Number) (measure.Number, error) {
	if loss.Sign() < 0 || loss.Cmp(measure.Whole(1)) >= 0 {
		return measure.Number{}, fault.Invalidf("loss", "The loss in the oven must be from 0 to under 100 %%.")
	}
	return baked.Quo(measure.Whole(1).Sub(loss)), nil
}

// BakeLoss gives the share of its weight that a dough lost in the oven, as a
// trial measured it. The error is fault.Invalid on "dough".
func BakeLoss(dough, baked measure.Number) (measure.Number, error) {
	if dough.Sign() <= 0 || baked.Sign() < 0 || baked.Cmp(dough) > 0 {
		return measure.Number{}, fault.Invalidf("dough", "The weights before and after baking do not fit: what is baked weighs less than its dough.")
	}
	return dough.Sub(baked).Quo(dough), nil
}

// WaterTemperature gives how warm the water must be for a dough to come out at a
// wanted temperature: wanted × (n + 1) − the sum of n others − friction. The
// others are room and flour, and the preferment if there is one; friction is
// what kneading adds, a difference. All in one scale, °C or °F. Source: "Dough
// temperature" (baking school notes).
func WaterTemperature(wanted, friction measure.Number, others ...measure.Number) measure.Number {
	water := wanted.Mul(measure.Whole(int64(len(others) + 1))).Sub(friction)
	for _, o := range others {
		water = water.Sub(o)
	}
	return water
}
