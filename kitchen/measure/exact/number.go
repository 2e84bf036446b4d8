package exact

import (
	"fmt"
	"math/big"
	"strconv"
)

// Number is an exact rational. The zero value is 0. Numbers are values: no
// method changes its receiver, and a Number may be copied freely.
//
// Kitchen numbers fit machine words and need no memory of their own; where one
// does not fit, math/big takes over without notice.
type Number struct {
	num, den int64    // in lowest terms, den > 0; both 0 for 0
	rat      *big.Rat // set only where num and den cannot hold the number
}

// Whole makes the number n.
func Whole(n int64) Number { return Ratio(n, 1) }

// Ratio makes a/b. It panics if b is 0, a mistake of the programmer.
func Ratio(a, b int64) Number {
	if b == 0 {
		panic("exact: a ratio over 0")
	}
	if n, ok := reduced(a, b); ok {
		return n
	}
	return ofBig(big.NewRat(a, b))
}

// ParseNumber reads the exact form that String writes ("3", "-3/2") and plain
// decimals ("1.25"). It does not read what people write; ReadAmount does.
func ParseNumber(s string) (Number, error) {
	if len(s) > 60 {
		return Number{}, fmt.Errorf("number %.20q… is too long", s)
	}
	for _, c := range s {
		if (c < '0' || c > '9') && c != '-' && c != '/' && c != '.' {
			return Number{}, fmt.Errorf("%q is not a number", s)
		}
	}
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		return Number{}, fmt.Errorf("%q is not a number", s)
	}
	return ofBig(r), nil
}

// MustNumber is ParseNumber for constants in code; it panics on a bad one.
func MustNumber(s string) Number {
	n, err := ParseNumber(s)
	if err != nil {
		panic(err)
	}
	return n
}

// Add gives n + m.
func (n Number) Add(m Number) Number {
	if sum, ok := n.addSmall(m, 1); ok {
		return sum
	}
	return ofBig(new(big.Rat).Add(n.big(), m.big()))
}

// Sub gives n − m.
func (n Number) Sub(m Number) Number {
	if difference, ok := n.addSmall(m, -1); ok {
		return difference
	}
	return ofBig(new(big.Rat).Sub(n.big(), m.big()))
}

// Mul gives n × m.
func (n Number) Mul(m Number) Number {
	if product, ok := n.mulSmall(m); ok {
		return product
	}
	return ofBig(new(big.Rat).Mul(n.big(), m.big()))
}

// Quo gives n ÷ m. It panics if m is 0: check IsZero first.
func (n Number) Quo(m Number) Number {
	if m.IsZero() {
		panic("exact: division by 0")
	}
	if m.rat == nil {
		upside, _ := reduced(m.den, m.num)
		if quotient, ok := n.mulSmall(upside); ok {
			return quotient
		}
	}
	return ofBig(new(big.Rat).Quo(n.big(), m.big()))
}

// Cmp is −1, 0 or 1 as n is less than, equal to or greater than m.
func (n Number) Cmp(m Number) int {
	if c, ok := n.cmpSmall(m); ok {
		return c
	}
	return n.big().Cmp(m.big())
}

// Equal tells whether n and m are the same number; go-cmp uses it too.
func (n Number) Equal(m Number) bool { return n.Cmp(m) == 0 }

// Sign is −1, 0 or 1.
func (n Number) Sign() int {
	switch {
	case n.rat != nil:
		return n.rat.Sign()
	case n.num < 0:
		return -1
	case n.num > 0:
		return 1
	}
	return 0
}

// IsZero tells whether n is 0.
func (n Number) IsZero() bool { return n.Sign() == 0 }

// IsWhole tells whether n has no fraction.
func (n Number) IsWhole() bool {
	if n.rat != nil {
		return n.rat.IsInt()
	}
	return n.den <= 1
}

// Float gives the nearest float64: for showing a percentage or drawing, never
// for further computing.
func (n Number) Float() float64 {
	if n.rat == nil && n.num > -exactFloat && n.num < exactFloat && n.den < exactFloat {
		return float64(n.num) / float64(max(n.den, 1))
	}
	f, _ := n.big().Float64()
	return f
}

// exactFloat is the first whole number beyond which float64 has gaps.
const exactFloat = 1 << 53

// String gives the exact text, "3" or "3/2", that ParseNumber reads.
func (n Number) String() string {
	switch {
	case n.rat != nil:
		return n.rat.RatString()
	case n.den <= 1:
		return strconv.FormatInt(n.num, 10)
	}
	return strconv.FormatInt(n.num, 10) + "/" + strconv.FormatInt(n.den, 10)
}

// Round gives the multiple of step nearest to n, halves away from zero. A step
// of 0 or less gives n itself.
func (n Number) Round(step Number) Number {
	if step.Sign() <= 0 {
		return n
	}
	return n.Quo(step).nearestWhole().Mul(step)
}

// nearestWhole rounds n, halves away from zero.
func (n Number) nearestWhole() Number {
	if n.IsWhole() {
		return n
	}
	if n.rat == nil {
		whole, part := n.num/n.den, n.num%n.den
		switch {
		case part > 0 && part >= n.den-part:
			whole++
		case part < 0 && -part >= n.den+part:
			whole--
		}
		return Whole(whole)
	}
	twice := new(big.Int).Lsh(n.rat.Num(), 1)
	if n.rat.Sign() > 0 {
		twice.Add(twice, n.rat.Denom())
	} else {
		twice.Sub(twice, n.rat.Denom())
	}
	twice.Quo(twice, new(big.Int).Lsh(n.rat.Denom(), 1))
	return ofBig(new(big.Rat).SetInt(twice))
}

// Ceil gives the smallest whole number that is at least n.
func (n Number) Ceil() Number {
	if n.IsWhole() {
		return n
	}
	if n.rat == nil {
		whole := n.num / n.den
		if n.num > 0 {
			whole++
		}
		return Whole(whole)
	}
	q := new(big.Int).Div(n.rat.Num(), n.rat.Denom())
	return ofBig(new(big.Rat).SetInt(q.Add(q, big.NewInt(1))))
}

// Int gives n's whole part, cut towards zero; ok is false if it does not fit.
func (n Number) Int() (whole int64, ok bool) {
	if n.rat == nil {
		return n.num / max(n.den, 1), true
	}
	q := new(big.Int).Quo(n.rat.Num(), n.rat.Denom())
	return q.Int64(), q.IsInt64()
}

// MarshalText writes the exact text.
func (n Number) MarshalText() ([]byte, error) { return []byte(n.String()), nil }

// UnmarshalText reads the exact text.
func (n *Number) UnmarshalText(text []byte) error {
	m, err := ParseNumber(string(text))
	if err == nil {
		*n = m
	}
	return err
}
