package measure

// Hand writes amounts for hands: as the scale, the spoons and the cups of one
// kitchen can take them. The zero Hand is usable: US spoons, a scale that shows
// 1 g, and 0.1 g below 10 g.
type Hand struct {
	System    System // whose cups and spoons; US where not said
	GramStep  Number // the scale's step from 10 g up, 0 for 1 g
	GramsFine Number // its step below 10 g, 0 for 0.1 g
}

var (
	ten      = Whole(10)
	twenty   = Whole(20)
	sixteen  = Whole(16)
	fifty    = Whole(50)
	thousand = Whole(1000)
	tenth    = Ratio(1, 10)
	five     = Whole(5)
	eight    = Whole(8)
	four     = Whole(4)
)

// Write rounds a to what a hand can measure and writes it, staying with the
// family of a's unit and moving to the unit a cook would take: 16 tbsp are
// 1 cup, 1500 g are 1.5 kg. A range stays a range. What it rounds to:
//
//   - g, kg: the scale's steps; kg from 1 kg in steps of 50 g; mg below
//     the scale's finest step;
//   - oz, lb: ⅛ oz below 1 oz, ¼ below 8, ½ below 5 lb, 1 above; from 1 lb
//     quarters of a pound, or pounds and ounces;
//   - mL, cL, dL, L: 0.1 mL below 1, ½ below 10, 1 below 50, 5 below 1 L,
//     10 above; dL in quarters and cL in halves where they come out so;
//   - tsp, tbsp, cup: sets as they exist (⅛ ¼ ½ 1 tsp; ½ 1 tbsp; ¼ ⅓ ½ 1 cup,
//     and ⅔, ¾ as two scoops). The sum of two, "¾ cup + 1 tbsp", where no single
//     measure is within 5 %, or within 2.5 % and one filling more is better by
//     half. Below ½ tsp a pinch may be added, below ⅛ it stands alone;
//   - fl oz: ¼ below 4, ½ below 20, 1 above; pint, quart, gallon, gill:
//     quarters, or in smaller measures where that is more than 5 % off;
//   - counts: quarters and thirds below 4, halves below 10, then whole ones;
//     what is not cut (sprigs, drops) whole; never none.
//
// A zero amount is written as it is; so is a negative one, which no hand takes.
func (h Hand) Write(a Amount) Shown {
	if a.From.Sign() <= 0 && (a.From.Sign() < 0 || a.To.IsZero()) {
		return show(a.Range, a)
	}
	switch a.Unit {
	case Milligram, Gram, Kilogram:
		return h.grams(toBase(a.Range, masses[a.Unit]))
	case Ounce:
		return ounces(a.Range)
	case Pound:
		return ounces(a.Range.Scale(sixteen))
	case Millilitre, Centilitre, Decilitre, Litre:
		return millilitres(toBase(a.Range, fixed[a.Unit]), a.Unit)
	case Teaspoon, Tablespoon, Cup:
		return h.spoons(a)
	case Pinch, Dash, Smidgen:
		return h.smallSpoons(a)
	case FluidOunce:
		return h.fluidOunces(a.Range)
	case Gill, Pint, Quart, Gallon:
		return h.jugs(a)
	}
	return counted(a)
}

// InVolume writes a volume given in millilitres in h's system: mL and L for
// Metric and Australian, spoons, fluid ounces and pints for Imperial, spoons,
// cups and (from 16 cups) quarts for the others.
func (h Hand) InVolume(ml Range) Shown {
	switch h.System {
	case Metric, Australian:
		return h.Write(Amount{ml, Millilitre})
	case Imperial:
		if ml.To.Cmp(Whole(30)) >= 0 {
			return h.Write(Amount{ml, FluidOunce}.perUnit(h.System))
		}
	default:
		if ml.From.Cmp(Whole(3785)) >= 0 && h.System.Or(US) != Japanese {
			return h.Write(Amount{ml, Quart}.perUnit(h.System.Or(US)))
		}
	}
	return h.Write(Amount{ml, Cup}.perUnit(h.System.Or(US)))
}

// perUnit takes a's numbers as millilitres and gives them in a's unit.
func (a Amount) perUnit(s System) Amount {
	size, _ := s.Millilitres(a.Unit)
	return Amount{Range{From: a.From.Quo(size), To: a.To.Quo(size)}, a.Unit}
}

// InMass writes a mass given in grams in h's system: ounces and pounds for US
// and Imperial, else g and kg. Ounces are poor for small masses: see
// ErrorPercent.
func (h Hand) InMass(grams Range) Shown {
	switch h.System {
	case US, Imperial, USLabel, "":
		oz := masses[Ounce]
		return ounces(Range{From: grams.From.Quo(oz), To: grams.To.Quo(oz)})
	}
	return h.grams(grams)
}

// toBase gives r in the base unit of which one unit is size.
func toBase(r Range, size Number) Range {
	if size.Equal(whole) {
		return r
	}
	return r.Scale(size)
}

// roundTo rounds n to step, but never to nothing.
func roundTo(n, step Number) Number {
	if n.IsWhole() && step.Equal(whole) {
		return n
	}
	if r := n.Round(step); !r.IsZero() || n.IsZero() {
		return r
	}
	return step
}

func (h Hand) grams(exact Range) Shown {
	step, fine := h.GramStep, h.GramsFine
	if step.Sign() <= 0 {
		step = whole
	}
	if fine.Sign() <= 0 {
		fine = tenth
	}
	if exact.To.Cmp(fine) < 0 {
		milligrams := exact.Scale(thousand)
		to := milligrams.Map(func(n Number) Number { return roundTo(n, whole) })
		if to.To.Cmp(fine.Mul(thousand)) < 0 {
			return show(milligrams, Amount{to, Milligram})
		}
	}
	to := exact.Map(func(n Number) Number {
		if n.Cmp(ten) < 0 {
			return roundTo(n, fine)
		}
		return roundTo(n, step)
	})
	if to.From.Cmp(thousand) >= 0 && to.IsMultiple(fifty) {
		return showAs(exact, to, Kilogram, thousand)
	}
	return show(exact, Amount{to, Gram})
}

func ounces(exact Range) Shown {
	to := exact.Map(func(n Number) Number {
		switch {
		case n.Cmp(whole) < 0:
			return roundTo(n, eighth)
		case n.Cmp(eight) < 0:
			return roundTo(n, quarter)
		case n.Cmp(Whole(80)) < 0:
			return roundTo(n, half)
		}
		return roundTo(n, whole)
	})
	if to.From.Cmp(sixteen) < 0 {
		return show(exact, Amount{to, Ounce})
	}
	if to.IsMultiple(four) {
		return showAs(exact, to, Pound, sixteen)
	}
	if !to.IsSingle() {
		return show(exact, Amount{to, Ounce})
	}
	pounds, _ := to.From.Quo(sixteen).Int()
	first := Of(Whole(pounds), Pound)
	return showSum(exact, first, Of(to.From.Sub(first.From.Mul(sixteen)), Ounce), sixteen, " ")
}

// millilitres writes a volume in mL, in L from one litre up, in u where u is dL
// or cL and the figure is a plain one.
func millilitres(exact Range, u Unit) Shown {
	to := exact.Map(func(n Number) Number {
		switch {
		case n.Cmp(whole) < 0:
			return roundTo(n, tenth)
		case n.Cmp(ten) < 0:
			return roundTo(n, half)
		case n.Cmp(fifty) < 0:
			return roundTo(n, whole)
		case n.Cmp(thousand) < 0:
			return roundTo(n, five)
		}
		return roundTo(n, ten)
	})
	switch {
	case to.From.Cmp(thousand) >= 0:
		return showAs(exact, to, Litre, thousand)
	case u == Decilitre && to.IsMultiple(Whole(25)):
		return showAs(exact, to, Decilitre, hundred)
	case u == Centilitre && to.IsMultiple(five):
		return showAs(exact, to, Centilitre, ten)
	}
	return show(exact, Amount{to, Millilitre})
}

// counted writes what is counted: pieces, packs, drops, and lengths by their
// rule's step.
func counted(a Amount) Shown {
	step := quarter
	if e := entries[a.Unit]; e != nil && !e.step.IsZero() {
		step = e.step
	}
	to := a.Range.Map(func(n Number) Number {
		switch {
		case a.Unit.Kind() != Count:
			return roundTo(n, step)
		case n.Cmp(ten) >= 0 || step.Equal(whole):
			return roundTo(n, whole)
		case n.Cmp(four) >= 0 && step.Cmp(half) < 0:
			return roundTo(n, half)
		case step.Equal(quarter):
			return nearestScoop(n)
		}
		return roundTo(n, step)
	})
	return show(a.Range, Amount{to, a.Unit})
}
