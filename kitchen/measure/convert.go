package measure

import "benchproof/kitchen/fault"

// Convert gives a in the unit to, exact. from decides what a's unit holds, into
// what to holds: an Australian tablespoon in US teaspoons. Both units must be
// of one kind, and counted units the same unit: only a food knows what a clove
// weighs or a cup of it. Otherwise the error is fault.Invalid and says why.
func Convert(a Amount, to Unit, from, into System) (Amount, error) {
	if a.Unit == to && (from == into || a.Unit.Kind() != Volume) {
		return a, nil
	}
	kind := a.Unit.Kind()
	if kind != to.Kind() {
		if !weighable(kind) || !weighable(to.Kind()) {
			return Amount{}, fault.Invalidf("unit", "%s is a %s and %s a %s: neither can be given in the other. Name a unit of the same kind.",
				spoken(a.Unit), kind, spoken(to), to.Kind())
		}
		return Amount{}, fault.Invalidf("unit", "%s is a %s and %s a %s: only a food's own weight joins the two. Name the food, or a unit of the same kind.",
			spoken(a.Unit), kind, spoken(to), to.Kind())
	}
	if kind == Temperature {
		return Amount{convertDegrees(a.Range, to), to}, nil
	}
	one, err := sizeOf(a.Unit, from)
	if err != nil {
		return Amount{}, err
	}
	other, err := sizeOf(to, into)
	if err != nil {
		return Amount{}, err
	}
	return Amount{a.Range.Scale(one.Quo(other)), to}, nil
}

// weighable tells whether a food's weight can join amounts of this kind to others.
func weighable(k Kind) bool { return k == Mass || k == Volume || k == Count }

// sizeOf gives u in its kind's base: grams, millilitres, millimetres, minutes.
func sizeOf(u Unit, s System) (Number, error) {
	var n Number
	var ok bool
	switch u.Kind() {
	case Mass:
		n, ok = Grams(u)
	case Volume:
		if n, ok = s.Millilitres(u); !ok {
			return n, fault.Invalidf("system", "A %s holds different amounts in different countries: say which is meant, US, imperial, metric, Australian or Japanese.", u.Name(false))
		}
	case Length:
		n, ok = Millimetres(u)
	case Time:
		n, ok = minutes[u]
	}
	if !ok {
		return n, fault.Invalidf("unit", "What %s weighs or holds depends on the food: name the food.", spoken(u))
	}
	return n, nil
}

func convertDegrees(r Range, to Unit) Range {
	if to == Fahrenheit {
		return Range{From: CelsiusToFahrenheit(r.From), To: CelsiusToFahrenheit(r.To)}
	}
	return Range{From: FahrenheitToCelsius(r.From), To: FahrenheitToCelsius(r.To)}
}

// spoken names u in a sentence, Each too.
func spoken(u Unit) string {
	if u == Each {
		return "a plain number"
	}
	return "“" + u.Name(false) + "”"
}
