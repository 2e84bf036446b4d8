package oven

import "benchproof/kitchen/measure/exact"

// Setting is one row of the published table of oven settings. There is no
// governing standard. Sources: "Conversion chart for oven temperatures Celsius
// Fahrenheit and Gas Mark"; "Oven temperature conversion guide" (fan); "Oven
// Temperature Conversions" (nearest 5).
type Setting struct {
	Gas         exact.Number   // gas mark
	Fahrenheit  exact.Number   // conventional
	Celsius     []exact.Number // conventional, as UK and Australian tables print it; some rows have two
	Fan         exact.Number   // °C in a fan oven, 0 where tables print none
	NearestFive exact.Number   // the exact °C to the nearest 5, as other tables print it
	Word        string         // the UK word: "moderate"
}

// Exact gives the row's °F in °C, exact.
func (s Setting) Exact() exact.Number { return FahrenheitToCelsius(s.Fahrenheit) }

// Settings gives the table, coolest first. The slice is the caller's.
func Settings() []Setting {
	row := func(gas exact.Number, f, fan, five int64, word string, celsius ...int64) Setting {
		s := Setting{Gas: gas, Fahrenheit: exact.Whole(f), Fan: exact.Whole(fan), NearestFive: exact.Whole(five), Word: word}
		for _, c := range celsius {
			s.Celsius = append(s.Celsius, exact.Whole(c))
		}
		return s
	}
	return []Setting{
		row(quarter, 225, 0, 105, "very slow", 110),
		row(half, 250, 0, 120, "very slow", 120, 130),
		row(exact.Whole(1), 275, 120, 135, "slow", 140),
		row(exact.Whole(2), 300, 130, 150, "slow", 150),
		row(exact.Whole(3), 325, 140, 165, "moderate", 160, 170),
		row(exact.Whole(4), 350, 160, 175, "moderate", 180),
		row(exact.Whole(5), 375, 170, 190, "moderately hot", 190),
		row(exact.Whole(6), 400, 180, 205, "moderately hot", 200),
		row(exact.Whole(7), 425, 200, 220, "hot", 220),
		row(exact.Whole(8), 450, 210, 230, "hot", 230),
		row(exact.Whole(9), 475, 220, 245, "very hot", 240),
	}
}

var table = Settings()

var (
	quarter = exact.Ratio(1, 4)
	half    = exact.Ratio(1, 2)
	whole   = exact.Whole(1)
	five    = exact.Whole(5)
	ten     = exact.Whole(10)
	hundred = exact.Whole(100)
)

// nearestRow gives the row nearest to a conventional setting n, the cooler of
// two; near is false if none lies within 5 °C, 12 °F or half a mark.
func nearestRow(n exact.Number, scale string) (row Setting, near bool) {
	best := map[string]exact.Number{"C": five, "F": exact.Whole(12), "gas": half}[scale]
	for _, s := range table {
		if scale == "C" && s.NearestFive.Equal(n) {
			return s, true
		}
		for _, m := range s.on(scale) {
			if d := distance(n, m); d.Cmp(best) < 0 || !near && d.Equal(best) {
				row, near, best = s, true, d
			}
		}
	}
	return row, near
}

// on gives the row's printed figures on a scale.
func (s Setting) on(scale string) []exact.Number {
	switch scale {
	case "C":
		return s.Celsius
	case "F":
		return []exact.Number{s.Fahrenheit}
	case "gas":
		return []exact.Number{s.Gas}
	}
	return nil
}

func distance(a, b exact.Number) exact.Number {
	d := a.Sub(b)
	if d.Sign() < 0 {
		return d.Mul(exact.Whole(-1))
	}
	return d
}

// agreeCF tells whether a conventional °C and a °F can mean one setting: a row
// of the table has both, or they are within 5 °C of each other, within 2 °C
// below 100 °C, where temperatures are those of food.
func agreeCF(c, f exact.Number) bool {
	limit := five
	if c.Cmp(hundred) < 0 {
		limit = exact.Whole(2)
	}
	if distance(c, FahrenheitToCelsius(f)).Cmp(limit) <= 0 {
		return true
	}
	for _, s := range table {
		if s.Fahrenheit.Equal(f) && s.prints(c) {
			return true
		}
	}
	return false
}

// agreeCGas tells whether a conventional °C and a gas mark can mean one
// setting: a row has both, or c is within 5 °C of the row's exact value. A mark
// between two rows agrees with anything between theirs.
func agreeCGas(c, gas exact.Number) bool {
	var below, above *Setting
	for i := range table {
		s := &table[i]
		switch s.Gas.Cmp(gas) {
		case 0:
			return s.prints(c) || distance(c, s.Exact()).Cmp(five) <= 0
		case -1:
			below = s
		case 1:
			if above == nil {
				above = s
			}
		}
	}
	return below != nil && above != nil && c.Cmp(below.Celsius[0]) >= 0 && c.Cmp(above.Celsius[len(above.Celsius)-1]) <= 0
}

// agreeFGas is agreeCGas for °F, within 5 °F of the row's.
func agreeFGas(f, gas exact.Number) bool {
	for _, s := range table {
		if s.Gas.Equal(gas) {
			return distance(f, s.Fahrenheit).Cmp(five) <= 0
		}
	}
	return agreeCGas(FahrenheitToCelsius(f), gas)
}

// prints tells whether some table prints c in this row.
func (s Setting) prints(c exact.Number) bool {
	for _, m := range s.Celsius {
		if m.Equal(c) {
			return true
		}
	}
	return s.NearestFive.Equal(c)
}
