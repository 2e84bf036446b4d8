package measure

import (
	"fmt"
	"math/big"
)

// Number is an exact rational. The zero value is 0. Numbers are values: no
// method changes its receiver, and a Number may be copied freely.
type Number struct{ rat *big.Rat }

var zero = new(big.Rat)

// Whole makes the number n.
func Whole(n int64) Number { return Number{big.NewRat(n, 1)} }

// Ratio makes a/b. It panics if b is 0, a mistake of the programmer.
func Ratio(a, b int64) Number { return Number{big.NewRat(a, b)} }

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
	return Number{r}, nil
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
func (n Number) Add(m Number) Number { return Number{new(big.Rat).Add(n.get(), m.get())} }

// Sub gives n − m.
func (n Number) Sub(m Number) Number { return Number{new(big.Rat).Sub(n.get(), m.get())} }

// Mul gives n × m.
func (n Number) Mul(m Number) Number { return Number{new(big.Rat).Mul(n.get(), m.get())} }

// Quo gives n ÷ m. It panics if m is 0: check IsZero first.
func (n Number) Quo(m Number) Number { return Number{new(big.Rat).Quo(n.get(), m.get())} }

// Cmp is −1, 0 or 1 as n is less than, equal to or greater than m.
func (n Number) Cmp(m Number) int { return n.get().Cmp(m.get()) }

// Equal tells whether n and m are the same number; go-cmp uses it too.
func (n Number) Equal(m Number) bool { return n.Cmp(m) == 0 }

// Sign is −1, 0 or 1.
func (n Number) Sign() int { return n.get().Sign() }

// IsZero tells whether n is 0.
func (n Number) IsZero() bool { return n.Sign() == 0 }

// IsWhole tells whether n has no fraction.
func (n Number) IsWhole() bool { return n.get().IsInt() }

// Float gives the nearest float64: for showing a percentage or drawing, never
// for further computing.
func (n Number) Float() float64 { f, _ := n.get().Float64(); return f }

// String gives the exact text, "3" or "3/2", that ParseNumber reads.
func (n Number) String() string { return n.get().RatString() }

// Round gives the multiple of step nearest to n, halves away from zero. A step
// of 0 or less gives n itself.
func (n Number) Round(step Number) Number {
	if step.Sign() <= 0 {
		return n
	}
	q := n.Quo(step).get()
	twice := new(big.Int).Lsh(q.Num(), 1)
	den := q.Denom()
	if twice.Sign() >= 0 {
		twice.Add(twice, den)
	} else {
		twice.Sub(twice, den)
	}
	twice.Quo(twice, new(big.Int).Lsh(den, 1))
	return Number{new(big.Rat).SetInt(twice)}.Mul(step)
}

// Ceil gives the smallest whole number that is at least n.
func (n Number) Ceil() Number {
	r := n.get()
	q, m := new(big.Int).DivMod(r.Num(), r.Denom(), new(big.Int))
	if m.Sign() != 0 {
		q.Add(q, big.NewInt(1))
	}
	return Number{new(big.Rat).SetInt(q)}
}

// Int gives n's whole part, cut towards zero; ok is false if it does not fit.
func (n Number) Int() (whole int64, ok bool) {
	q := new(big.Int).Quo(n.get().Num(), n.get().Denom())
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

func (n Number) get() *big.Rat {
	if n.rat == nil {
		return zero
	}
	return n.rat
}
