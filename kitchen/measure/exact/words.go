package exact

import (
	"cmp"
	"math"
	"math/big"
	"math/bits"
)

// This file holds the arithmetic of Numbers that fit machine words. Each
// function's ok is false where a word would overflow; the caller then turns to
// math/big.

// ofBig takes r as a Number, in machine words if it fits. r is not kept shared:
// the caller gives it away.
func ofBig(r *big.Rat) Number {
	if r.Num().IsInt64() && r.Denom().IsInt64() && r.Num().Int64() != math.MinInt64 {
		return fitting(r.Num().Int64(), r.Denom().Int64())
	}
	return Number{rat: r}
}

// big gives n as math/big has it; it must not be changed.
func (n Number) big() *big.Rat {
	if n.rat != nil {
		return n.rat
	}
	return big.NewRat(n.num, max(n.den, 1))
}

// fitting makes num/den of lowest terms with den > 0; 0 is always the zero value.
func fitting(num, den int64) Number {
	if num == 0 {
		return Number{}
	}
	return Number{num: num, den: den}
}

// reduced makes num/den in lowest terms.
func reduced(num, den int64) (Number, bool) {
	if num == math.MinInt64 || den == math.MinInt64 {
		return Number{}, false
	}
	if den < 0 {
		num, den = -num, -den
	}
	if den > 1 {
		g := gcd(num, den)
		num, den = num/g, den/g
	}
	return fitting(num, den), true
}

// gcd gives the greatest common divisor of |a| and b > 0.
func gcd(a, b int64) int64 {
	if a < 0 {
		a = -a
	}
	for a != 0 {
		a, b = b%a, a
	}
	return b
}

// mulWords multiplies two words, neither of which is MinInt64.
func mulWords(a, b int64) (int64, bool) {
	negative := (a < 0) != (b < 0)
	hi, lo := bits.Mul64(abs(a), abs(b))
	if hi != 0 || lo > math.MaxInt64 {
		return 0, false
	}
	if negative {
		return -int64(lo), true
	}
	return int64(lo), true
}

func abs(a int64) uint64 {
	if a < 0 {
		return uint64(-a)
	}
	return uint64(a)
}

// addWords adds two words.
func addWords(a, b int64) (int64, bool) {
	c := a + b
	return c, (c > a) == (b > 0) && c != math.MinInt64
}

// addSmall gives n + sign × m.
func (n Number) addSmall(m Number, sign int64) (Number, bool) {
	switch {
	case n.rat != nil || m.rat != nil:
		return Number{}, false
	case m.num == 0:
		return n, true
	case n.num == 0:
		return Number{num: sign * m.num, den: m.den}, true
	}
	g := gcd(n.den, m.den)
	den, ok := mulWords(n.den, m.den/g)
	if !ok {
		return Number{}, false
	}
	left, okLeft := mulWords(n.num, m.den/g)
	right, okRight := mulWords(m.num, n.den/g)
	if !okLeft || !okRight {
		return Number{}, false
	}
	num, ok := addWords(left, sign*right)
	if !ok {
		return Number{}, false
	}
	return reduced(num, den)
}

// mulSmall gives n × m.
func (n Number) mulSmall(m Number) (Number, bool) {
	switch {
	case n.rat != nil || m.rat != nil:
		return Number{}, false
	case n.num == 0 || m.num == 0:
		return Number{}, true
	}
	g, h := gcd(n.num, m.den), gcd(m.num, n.den)
	num, okNum := mulWords(n.num/g, m.num/h)
	den, okDen := mulWords(n.den/h, m.den/g)
	return fitting(num, den), okNum && okDen
}

// cmpSmall compares n and m.
func (n Number) cmpSmall(m Number) (int, bool) {
	if n.rat != nil || m.rat != nil {
		return 0, false
	}
	if s, t := n.Sign(), m.Sign(); s != t || s == 0 {
		return cmp.Compare(s, t), true
	}
	hi, lo := bits.Mul64(abs(n.num), uint64(m.den))
	otherHi, otherLo := bits.Mul64(abs(m.num), uint64(n.den))
	c := cmp.Or(cmp.Compare(hi, otherHi), cmp.Compare(lo, otherLo))
	if n.num < 0 {
		c = -c
	}
	return c, true
}
