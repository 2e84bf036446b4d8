package measure

// formatFor writes n as its unit is read: decimals on scales, jugs, rulers and
// thermometers, fractions on spoons, cups and counts.
func formatFor(u Unit, n Number) string {
	if isDecimal(u) {
		return FormatDecimal(n, 2)
	}
	return FormatNumber(n)
}

func isDecimal(u Unit) bool {
	switch u {
	case Milligram, Gram, Kilogram, Millilitre, Centilitre, Decilitre, Litre, Millimetre, Centimetre, Celsius, Fahrenheit:
		return true
	}
	return false
}
