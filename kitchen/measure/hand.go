package measure

// Hand writes amounts for hands: as the scale, the spoons and the cups of one
// kitchen can take them. The zero Hand is usable.
type Hand struct {
	System System // which cups and spoons; US where not said
}

// Shown is an amount written for hands.
type Shown struct {
	Text         string   // "¾ cup + 1 tbsp", with no-break spaces
	Amount       Amount   // what Text says, in the unit of its first part
	Parts        []Amount // the measures to take, at least one; summands of Text
	ErrorPercent Number   // how far Amount is from the exact one, 0 or more
}

// Write rounds a to what a hand can measure and writes it.
func (h Hand) Write(a Amount) Shown {
	return Shown{Text: a.String(), Amount: a, Parts: []Amount{a}}
}

// InVolume writes a volume in millilitres in h's system.
func (h Hand) InVolume(ml Range) Shown { return h.Write(Amount{ml, Millilitre}) }

// InMass writes a mass in grams in h's system.
func (h Hand) InMass(grams Range) Shown { return h.Write(Amount{grams, Gram}) }
