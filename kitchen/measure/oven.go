package measure

// OvenSetting is one row of the published table of oven settings. There is no
// governing standard. Sources: "Conversion chart for oven temperatures Celsius
// Fahrenheit and Gas Mark"; "Oven temperature conversion guide" (fan); "Oven
// Temperature Conversions" (nearest 5).
type OvenSetting struct {
	Gas         Number   // gas mark
	Fahrenheit  Number   // conventional
	Celsius     []Number // conventional, as UK and Australian tables print it; some rows have two
	Fan         Number   // °C in a fan oven, 0 where tables print none
	NearestFive Number   // the exact °C to the nearest 5, as other tables print it
	Word        string   // the UK word: "moderate"
}

// Exact gives the row's °F in °C, exact.
func (s OvenSetting) Exact() Number { return FahrenheitToCelsius(s.Fahrenheit) }

// OvenSettings gives the table, coolest first. The slice is the caller's.
func OvenSettings() []OvenSetting {
	row := func(gas Number, f, fan, five int64, word string, celsius ...int64) OvenSetting {
		s := OvenSetting{Gas: gas, Fahrenheit: Whole(f), Fan: Whole(fan), NearestFive: Whole(five), Word: word}
		for _, c := range celsius {
			s.Celsius = append(s.Celsius, Whole(c))
		}
		return s
	}
	return []OvenSetting{
		row(quarter, 225, 0, 105, "very slow", 110),
		row(half, 250, 0, 120, "very slow", 120, 130),
		row(Whole(1), 275, 120, 135, "slow", 140),
		row(Whole(2), 300, 130, 150, "slow", 150),
		row(Whole(3), 325, 140, 165, "moderate", 160, 170),
		row(Whole(4), 350, 160, 175, "moderate", 180),
		row(Whole(5), 375, 170, 190, "moderately hot", 190),
		row(Whole(6), 400, 180, 205, "moderately hot", 200),
		row(Whole(7), 425, 200, 220, "hot", 220),
		row(Whole(8), 450, 210, 230, "hot", 230),
		row(Whole(9), 475, 220, 245, "very hot", 240),
	}
}

var ovenTable = OvenSettings()

// nearestRow gives the row nearest to a conventional setting n, the cooler of
// two; near is false if none lies within 5 °C, 12 °F or half a mark.
func nearestRow(n Number, scale string) (row OvenSetting, near bool) {
	best := map[string]Number{"C": five, "F": Whole(12), "gas": half}[scale]
	for _, s := range ovenTable {
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
func (s OvenSetting) on(scale string) []Number {
	switch scale {
	case "C":
		return s.Celsius
	case "F":
		return []Number{s.Fahrenheit}
	case "gas":
		return []Number{s.Gas}
	}
	return nil
}

func distance(a, b Number) Number {
	d := a.Sub(b)
	if d.Sign() < 0 {
		return d.Mul(Whole(-1))
	}
	return d
}

// agreeCF tells whether a conventional °C and a °F can mean one setting: a row
// of the table has both, or they are within 5 °C of each other, within 2 °C
// below 100 °C, where temperatures are those of food.
func agreeCF(c, f Number) bool {
	limit := five
	if c.Cmp(hundred) < 0 {
		limit = Whole(2)
	}
	if distance(c, FahrenheitToCelsius(f)).Cmp(limit) <= 0 {
		return true
	}
	for _, s := range ovenTable {
		if s.Fahrenheit.Equal(f) && s.prints(c) {
			return true
		}
	}
	return false
}

// agreeCGas tells whether a conventional °C and a gas mark can mean one
// setting: a row has both, or c is within 5 °C of the row's exact value. A mark
// between two rows agrees with anything between theirs.
func agreeCGas(c, gas Number) bool {
	var below, above *OvenSetting
	for i := range ovenTable {
		s := &ovenTable[i]
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
func agreeFGas(f, gas Number) bool {
	for _, s := range ovenTable {
		if s.Gas.Equal(gas) {
			return distance(f, s.Fahrenheit).Cmp(five) <= 0
		}
	}
	return agreeCGas(FahrenheitToCelsius(f), gas)
}

// prints tells whether some table prints c in this row.
func (s OvenSetting) prints(c Number) bool {
	for _, m := range s.Celsius {
		if m.Equal(c) {
			return true
		}
	}
	return s.NearestFive.Equal(c)
}
