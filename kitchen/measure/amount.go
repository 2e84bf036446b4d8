package measure

// Amount is a range with its unit: "2–3 tbsp". The zero Amount means none.
type Amount struct {
	Range
	Unit Unit `json:"unit"`
}

// Of makes the amount of n units u.
func Of(n Number, u Unit) Amount { return Amount{One(n), u} }

// Scale gives a times by, exact, in the same unit.
func (a Amount) Scale(by Number) Amount { return Amount{a.Range.Scale(by), a.Unit} }

// Add gives a + b in a's unit, exact; s decides what cups and spoons hold. ok
// is false if the two cannot be added: two kinds, two counted units, or sizes
// that depend on a system when s is not said. Adding to the zero Amount, which
// means none, gives the other.
func (a Amount) Add(b Amount, s System) (sum Amount, ok bool) {
	switch {
	case a.IsZero() && a.Unit == Each:
		return b, true
	case b.IsZero() && b.Unit == Each:
		return a, true
	case a.Unit == b.Unit:
		return Amount{a.Range.Add(b.Range), a.Unit}, true
	case a.Unit.Kind() == Temperature:
		return Amount{}, false
	}
	c, err := Convert(b, a.Unit, s, s)
	if err != nil {
		return Amount{}, false
	}
	return Amount{a.Range.Add(c.Range), a.Unit}, true
}

// String writes the amount as it is, without rounding for hands: "1½ cups",
// "2.5 kg", "2–3 tbsp". A number that is neither a kitchen fraction nor a short
// decimal is cut as FormatNumber says. The zero Amount, meaning none, is "".
func (a Amount) String() string {
	if a.IsZero() && a.Unit == Each {
		return ""
	}
	text := formatFor(a.Unit, a.From)
	if !a.IsSingle() {
		text += "–" + formatFor(a.Unit, a.To)
	}
	if name := a.Unit.Name(a.To.Cmp(whole) > 0); name != "" {
		text += noBreak + name
	}
	return text
}
