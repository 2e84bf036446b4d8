package exact

import (
	"math/big"
	"strconv"
	"strings"
)

// glyphs are the fractions the product's fonts can draw in one character.
var glyphs = map[[2]int64]string{
	{1, 4}: "¼", {1, 2}: "½", {3, 4}: "¾", {1, 3}: "⅓", {2, 3}: "⅔",
	{1, 8}: "⅛", {3, 8}: "⅜", {5, 8}: "⅝", {7, 8}: "⅞",
}

// FormatNumber writes n as cooks do: "3", "1½", "⅓". Fifths, sixths and
// sixteenths are written with the fraction slash U+2044, "1⁄5", "1 1⁄5" (with a
// no-break space), because the fonts have no single character for them. Any
// other number is a decimal of at most two places, "2.35", or two figures that
// count below 0.1, "0.014": only then is the text not exact.
func FormatNumber(n Number) string {
	if n.rat != nil || n.den <= 1 {
		return FormatDecimal(n, 2)
	}
	num, den, sign := n.num, n.den, ""
	if num < 0 {
		sign, num = "−", -num
	}
	lead := ""
	if num > den {
		lead = strconv.FormatInt(num/den, 10)
	}
	part := num % den
	if g, ok := glyphs[[2]int64{part, den}]; ok {
		return sign + lead + g
	}
	if den == 5 || den == 6 || den == 16 {
		if lead != "" {
			lead += NoBreak
		}
		return sign + lead + strconv.FormatInt(part, 10) + "⁄" + strconv.FormatInt(den, 10)
	}
	return FormatDecimal(n, 2)
}

// FormatDecimal writes n with at most places decimals, halves away from zero,
// without trailing zeros: "2.5". A number below 0.1 keeps two figures that
// count, so that no amount becomes nothing.
func FormatDecimal(n Number, places int) string {
	if n.IsWhole() {
		return minus(n.String())
	}
	text, ok := n.decimal(places)
	if !ok {
		r := n.big()
		text = r.FloatString(max(places, placesToCount(r)))
	}
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return minus(text)
}

// decimal is FormatDecimal's rounding in machine words; ok is false where a
// number or its places need more.
func (n Number) decimal(places int) (text string, ok bool) {
	abs := n.num
	if abs < 0 {
		abs = -abs
	}
	if n.rat != nil || places < 1 || places > 6 || n.den > maxDecimal || abs > maxDecimal || abs*10 < n.den {
		return "", false
	}
	scale := int64(1)
	for range places {
		scale *= 10
	}
	scaled := (2*abs*scale + n.den) / (2 * n.den)
	text = strconv.FormatInt(scaled%scale+scale, 10)[1:]
	text = strconv.FormatInt(scaled/scale, 10) + "." + text
	if n.num < 0 {
		text = "-" + text
	}
	return text, true
}

// maxDecimal keeps a number times twice the largest scale within a word.
const maxDecimal = 1 << 40

// placesToCount gives the decimals that show two figures of r that count, 0 if
// r is 0.1 or more.
func placesToCount(r *big.Rat) int {
	abs := new(big.Rat).Abs(r)
	places := 0
	for limit := big.NewRat(1, 10); places < 12 && abs.Cmp(limit) < 0; limit.Quo(limit, big.NewRat(10, 1)) {
		places = max(places, 2) + 1
	}
	return places
}

// minus gives a leading hyphen the true sign, U+2212.
func minus(text string) string {
	if strings.HasPrefix(text, "-") {
		return "−" + text[1:]
	}
	return text
}
