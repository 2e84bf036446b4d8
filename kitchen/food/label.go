package food

import "benchproof/kitchen/measure"

// Declared is one line of a nutrition declaration.
type Declared struct {
	Name   string // "Total Carbohydrate"; "of which sugars"
	Amount string // "5 g", "less than 1 g", "1046 kJ / 250 kcal"
	Part   bool   // a part of the line above it
	// Partial tells that the figure of some food in it is not known. A nutrient
	// of which nothing is known has no line.
	Partial bool
}

// Rounded is an amount as a label may state it.
type Rounded struct {
	Amount   measure.Number
	LessThan bool // "less than" the amount
}

// text writes the amount with its unit.
func (r Rounded) text(less, unit string) string {
	text := measure.FormatDecimal(r.Amount, 2) + " " + unit
	if r.LessThan {
		return less + text
	}
	return text
}

// USFacts gives the lines of a US nutrition facts panel for one serving that
// the larder knows, in the panel's order, rounded by 21 CFR 101.9(c). It is
// not a whole panel: trans fat, added sugars, vitamin D, iron and potassium
// are missing. Energy is the USDA's, by specific Atwater factors, which
// 101.9(c)(1)(i)(A) allows.
func USFacts(serving Totals) []Declared {
	var lines []Declared
	for _, l := range []struct {
		name string
		n    Nutrient
		part bool
	}{
		{"Calories", EnergyKcal, false}, {"Total Fat", Fat, false}, {"Saturated Fat", Saturated, true},
		{"Cholesterol", CholesterolMilligrams, false}, {"Sodium", SodiumMilligrams, false},
		{"Total Carbohydrate", Carbohydrate, false}, {"Dietary Fiber", Fibre, true}, {"Total Sugars", Sugars, true},
		{"Protein", Protein, false},
	} {
		if serving.known[l.n].IsZero() {
			continue
		}
		sum, share := serving.Of(l.n)
		amount := RoundUS(l.n, sum)
		text := amount.text("less than ", l.n.Unit())
		if l.n == EnergyKcal {
			text = amount.Amount.String()
		}
		lines = append(lines, Declared{Name: l.name, Amount: text, Part: l.part, Partial: isPart(share)})
	}
	return lines
}

// isPart tells whether a share is less than the whole.
func isPart(share measure.Number) bool { return share.Cmp(measure.Whole(1)) < 0 }

// RoundUS rounds the amount of a nutrient in one serving, in its unit, as a US
// label states it. Source: 21 CFR 101.9(c)(1) to (7), by FDA's rounding table
// (Appendix H of its labelling guide, October 2009). Water, alcohol and
// calcium have no rule there and go to the nearest gram or milligram.
func RoundUS(n Nutrient, amount measure.Number) Rounded {
	switch n {
	case EnergyKcal:
		return steps(amount, step{below: "5", by: "0"}, step{upTo: "50", by: "5"}, step{by: "10"})
	case Fat, Saturated:
		return steps(amount, step{below: "0.5", by: "0"}, step{below: "5", by: "0.5"}, step{by: "1"})
	case CholesterolMilligrams:
		return steps(amount, step{below: "2", by: "0"}, step{upTo: "5", less: "5"}, step{by: "5"})
	case SodiumMilligrams:
		return steps(amount, step{below: "5", by: "0"}, step{upTo: "140", by: "5"}, step{by: "10"})
	case Carbohydrate, Fibre, Sugars, Protein:
		return steps(amount, step{below: "0.5", by: "0"}, step{below: "1", less: "1"}, step{by: "1"})
	}
	return steps(amount, step{by: "1"})
}

// EUDeclaration gives the nutrition declaration per 100 g in the order of
// Regulation (EU) No 1169/2011, Annex XV, with fibre before protein, as
// optional. Energy is computed by the factors of Annex XIV, kilojoules from
// their own; carbohydrate leaves fibre out and salt is sodium × 2.5, Annex I.
func EUDeclaration(per100 Totals) []Declared {
	kilojoules, kilocalories, partial, ok := per100.EUEnergy()
	var lines []Declared
	if ok {
		lines = append(lines, Declared{
			Name:    "Energy",
			Amount:  kilojoules.Round(measure.Whole(1)).String() + " kJ / " + kilocalories.Round(measure.Whole(1)).String() + " kcal",
			Partial: partial,
		})
	}
	add := func(name string, n Nutrient, amount measure.Number, part bool, round func(measure.Number) Rounded) {
		if per100.known[n].IsZero() {
			return
		}
		_, share := per100.Of(n)
		lines = append(lines, Declared{Name: name, Amount: round(amount).text("< ", "g"), Part: part, Partial: isPart(share)})
	}
	add("Fat", Fat, per100.sums[Fat], false, roundEUGrams)
	add("of which saturates", Saturated, per100.sums[Saturated], true, roundEUSaturates)
	add("Carbohydrate", Carbohydrate, per100.availableCarbohydrate(), false, roundEUGrams)
	add("of which sugars", Sugars, per100.sums[Sugars], true, roundEUGrams)
	add("Fibre", Fibre, per100.sums[Fibre], false, roundEUGrams)
	add("Protein", Protein, per100.sums[Protein], false, roundEUGrams)
	add("Salt", SodiumMilligrams, per100.sums[SodiumMilligrams].Mul(saltOfSodium), false, roundEUSalt)
	return lines
}

// saltOfSodium turns milligrams of sodium into grams of salt: × 2.5 ÷ 1000.
var saltOfSodium = measure.Ratio(25, 10_000)

// availableCarbohydrate is carbohydrate without fibre, never below 0.
func (t Totals) availableCarbohydrate() measure.Number {
	rest := t.sums[Carbohydrate].Sub(t.sums[Fibre])
	if rest.Sign() < 0 {
		return measure.Number{}
	}
	return rest
}

// EUEnergy computes energy by the conversion factors of Regulation (EU)
// No 1169/2011, Annex XIV, unrounded. partial tells that a figure it needs is
// not known of some food; ok is false if none is known at all.
func (t Totals) EUEnergy() (kilojoules, kilocalories measure.Number, partial, ok bool) {
	for _, f := range []struct {
		n        Nutrient
		grams    measure.Number
		kj, kcal int64
		main     bool // without any of these there is no energy to state
	}{
		{Fat, t.sums[Fat], 37, 9, true},
		{Carbohydrate, t.availableCarbohydrate(), 17, 4, true},
		{Protein, t.sums[Protein], 17, 4, true},
		{Fibre, t.sums[Fibre], 8, 2, false},
		{Alcohol, t.sums[Alcohol], 29, 7, false},
	} {
		_, share := t.Of(f.n)
		partial = partial || isPart(share)
		ok = ok || f.main && !t.known[f.n].IsZero()
		kilojoules = kilojoules.Add(f.grams.Mul(measure.Whole(f.kj)))
		kilocalories = kilocalories.Add(f.grams.Mul(measure.Whole(f.kcal)))
	}
	return kilojoules, kilocalories, partial, ok
}

// The rounding of the Commission's guidance on tolerances, December 2012,
// table 4. Where it leaves "0 g" or "< 0.5 g" open, an amount above 0 is
// stated as less than the limit.
func roundEUGrams(amount measure.Number) Rounded {
	return steps(amount, step{upTo: "0.5", less: "0.5"}, step{below: "10", by: "0.1"}, step{by: "1"})
}

func roundEUSaturates(amount measure.Number) Rounded {
	return steps(amount, step{upTo: "0.1", less: "0.1"}, step{below: "10", by: "0.1"}, step{by: "1"})
}

func roundEUSalt(amount measure.Number) Rounded {
	return steps(amount, step{upTo: "0.0125", less: "0.01"}, step{below: "1", by: "0.01"}, step{by: "0.1"})
}

// step is one row of a rounding table: what holds below or up to a limit.
type step struct {
	below, upTo string // exclusive or inclusive limit; neither: everything
	by          string // nearest multiple of this; "0" states 0
	less        string // states "less than" this, if the amount is above 0
}

// steps rounds by the first row that amount falls under.
func steps(amount measure.Number, table ...step) Rounded {
	for _, s := range table {
		if s.below != "" && amount.Cmp(measure.MustNumber(s.below)) >= 0 ||
			s.upTo != "" && amount.Cmp(measure.MustNumber(s.upTo)) > 0 {
			continue
		}
		switch {
		case amount.Sign() <= 0 || s.by == "0":
			return Rounded{}
		case s.less != "":
			return Rounded{Amount: measure.MustNumber(s.less), LessThan: true}
		}
		return Rounded{Amount: amount.Round(measure.MustNumber(s.by))}
	}
	return Rounded{Amount: amount}
}
