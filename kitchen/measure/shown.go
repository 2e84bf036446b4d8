package measure

// Shown is an amount written for hands.
type Shown struct {
	Text   string   // "¾ cup + 1 tbsp"; no-break spaces join numbers to units
	Amount Amount   // what Text says, exact, in the unit of its first part
	Parts  []Amount // the measures to take, whose sum Amount is; one but for sums
	// ErrorPercent is how far Amount lies from the exact amount, 0 or more; of
	// a range, the end that lies farther.
	ErrorPercent Number
}

// noticeable is the error from which it is shown, in per cent.
var noticeable = Whole(5)

// IsOff tells whether the error is large enough to be told: over 5 %.
func (s Shown) IsOff() bool { return s.ErrorPercent.Cmp(noticeable) > 0 }

// show writes the amount to in one measure; exact and to are in one unit.
func show(exact Range, to Amount) Shown {
	return Shown{Text: to.String(), Amount: to, Parts: []Amount{to}, ErrorPercent: errorOf(exact, to.Range)}
}

// showAs writes the amount to in one measure of another unit, factor of which
// make one of to's: the text is in u, the error is that of to.
func showAs(exact, to Range, u Unit, factor Number) Shown {
	a := Amount{Range{From: to.From.Quo(factor), To: to.To.Quo(factor)}, u}
	return Shown{Text: a.String(), Amount: a, Parts: []Amount{a}, ErrorPercent: errorOf(exact, to)}
}

// showSum writes two measures; each is how many of the second make one of the
// first's unit, and exact is in the second's.
func showSum(exact Range, first, second Amount, each Number, join string) Shown {
	total := first.From.Mul(each).Add(second.From)
	return Shown{
		Text:         first.String() + join + second.String(),
		Amount:       Of(total.Quo(each), first.Unit),
		Parts:        []Amount{first, second},
		ErrorPercent: errorOf(exact, One(total)),
	}
}

// errorOf gives how far to lies from exact in per cent, the larger of both ends.
func errorOf(exact, to Range) Number {
	e := endError(exact.From, to.From)
	if !exact.IsSingle() {
		if f := endError(exact.To, to.To); f.Cmp(e) > 0 {
			return f
		}
	}
	return e
}

func endError(exact, to Number) Number {
	if exact.IsZero() || exact.Equal(to) {
		return Number{}
	}
	e := to.Sub(exact).Quo(exact).Mul(hundred)
	if e.Sign() < 0 {
		return e.Mul(Whole(-1))
	}
	return e
}

var hundred = Whole(100)
