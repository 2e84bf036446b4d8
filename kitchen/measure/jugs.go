package measure

// fluidOunces writes fl oz; an imperial kitchen's in pints from 20 up.
func (h Hand) fluidOunces(exact Range) Shown {
	to := exact.Map(func(n Number) Number {
		switch {
		case n.Cmp(four) < 0:
			return roundTo(n, quarter)
		case n.Cmp(twenty) < 0:
			return roundTo(n, half)
		}
		return roundTo(n, whole)
	})
	perPint := h.ouncesIn(Pint)
	if perPint.IsZero() || to.From.Cmp(perPint) < 0 || !h.hasImperialPint() {
		return show(exact, Amount{to, FluidOunce})
	}
	if to.IsMultiple(perPint.Mul(quarter)) {
		return showAs(exact, to, Pint, perPint)
	}
	if !to.IsSingle() {
		return show(exact, Amount{to, FluidOunce})
	}
	pints, _ := to.From.Quo(perPint).Int()
	first := Of(Whole(pints), Pint)
	return showSum(exact, first, Of(to.From.Sub(first.From.Mul(perPint)), FluidOunce), perPint, " + ")
}

// hasImperialPint tells whether h's pint is the imperial one, for which no cup
// is at hand.
func (h Hand) hasImperialPint() bool {
	_, from, _ := h.System.Or(US).volume(Pint)
	return from == Imperial
}

// ouncesIn gives how many fluid ounces u holds in h's system.
func (h Hand) ouncesIn(u Unit) Number {
	s := h.System.Or(US)
	a, okA := s.Millilitres(u)
	b, okB := s.Millilitres(FluidOunce)
	if !okA || !okB {
		return Number{}
	}
	return a.Quo(b)
}

// jugs writes gills, pints, quarts and gallons: in quarters where that is close
// enough, else in cups; where the pint is imperial, in quarters only if exact,
// else in pints and fluid ounces.
func (h Hand) jugs(a Amount) Shown {
	to := a.Range.Map(func(n Number) Number { return roundTo(n, quarter) })
	shown := show(a.Range, Amount{to, a.Unit})
	imperial := h.hasImperialPint()
	if shown.ErrorPercent.IsZero() || !imperial && !shown.IsOff() {
		return shown
	}
	if imperial {
		if per := h.ouncesIn(a.Unit); !per.IsZero() {
			return h.fluidOunces(a.Range.Scale(per))
		}
		return shown
	}
	cups, err := Convert(a, Cup, h.System.Or(US), h.System.Or(US))
	if err != nil {
		return shown
	}
	return h.spoons(cups)
}
