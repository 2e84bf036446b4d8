package exact_test

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/measure/exact"
)

func TestNumbersWriteExactly(t *testing.T) {
	for text, want := range map[string]string{
		"3": "3", "3/2": "3/2", "-3/2": "-3/2", "1.25": "5/4", "6/4": "3/2", "0": "0", "0.1": "1/10", "-0.5": "-1/2",
		"100000000000000000000000000001/3": "100000000000000000000000000001/3",
	} {
		n, err := exact.ParseNumber(text)
		if err != nil || n.String() != want {
			t.Errorf("ParseNumber(%q) = %v, %v, want %s", text, n, err, want)
		}
	}
	for _, text := range []string{"", "x", "1e9", "1_000", "½", "1 1/2", "1/0", "--1", "1..2", "0x10", "Inf", "9999999999999999999999999999999999999999999999999999999999999"} {
		if n, err := exact.ParseNumber(text); err == nil {
			t.Errorf("ParseNumber(%q) = %v, want an error", text, n)
		}
	}
}

func TestZeroNumberIsZero(t *testing.T) {
	var n exact.Number
	if !n.IsZero() || n.String() != "0" || !n.Equal(exact.Whole(0)) || !n.Add(exact.Whole(2)).Equal(exact.Whole(2)) || !n.IsWhole() || n.Float() != 0 {
		t.Errorf("the zero Number is %v", n)
	}
	if got := n.Mul(exact.Whole(5)).Sub(exact.Ratio(1, 2)); !got.Equal(exact.Ratio(-1, 2)) {
		t.Errorf("0 × 5 − ½ = %v", got)
	}
}

func TestRoundCeilInt(t *testing.T) {
	for _, test := range []struct{ n, step, want string }{
		{"5/2", "1", "3"}, {"-5/2", "1", "-3"}, {"7/3", "1/4", "9/4"}, {"1/8", "1/4", "1/4"}, {"123/10", "5", "10"},
		{"3/2", "0", "3/2"}, {"3/2", "-1", "3/2"}, {"0", "1", "0"}, {"1/10", "1", "0"},
	} {
		if got := exact.MustNumber(test.n).Round(exact.MustNumber(test.step)); got.String() != test.want {
			t.Errorf("Round(%s, %s) = %v, want %s", test.n, test.step, got, test.want)
		}
	}
	for n, want := range map[string]string{"5/2": "3", "-5/2": "-2", "3": "3", "0": "0", "1/100": "1"} {
		if got := exact.MustNumber(n).Ceil(); got.String() != want {
			t.Errorf("Ceil(%s) = %v, want %s", n, got, want)
		}
	}
	for n, want := range map[string]int64{"5/2": 2, "-5/2": -2, "3": 3} {
		if got, ok := exact.MustNumber(n).Int(); !ok || got != want {
			t.Errorf("Int(%s) = %d, %v, want %d", n, got, ok, want)
		}
	}
	if got, ok := exact.MustNumber("123456789012345678901234567890").Int(); ok {
		t.Errorf("Int of a huge number = %d, want not ok", got)
	}
}

// edges are the integers at which machine words overflow.
var edges = []int64{0, 1, -1, 2, 3, 7, 48, 1000, math.MaxInt32, math.MinInt32, math.MaxInt32 + 1, math.MaxInt64, math.MinInt64, math.MaxInt64 - 1, 1 << 53, 3037000500}

func anyNumber(t *rapid.T, name string) (exact.Number, *big.Rat) {
	whole := rapid.OneOf(rapid.Int64(), rapid.Int64Range(-1000, 1000), rapid.SampledFrom(edges))
	a, b := whole.Draw(t, name+" over"), whole.Draw(t, name+" under")
	if b == 0 {
		b = 1
	}
	return exact.Ratio(a, b), big.NewRat(a, b)
}

// Every operation agrees with math/big, also where machine words overflow.
func TestNumbersAgreeWithBigRationals(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n, x := anyNumber(t, "n")
		m, y := anyNumber(t, "m")
		// Longer chains reach numbers no int64 holds.
		if rapid.Bool().Draw(t, "square") {
			n, x = n.Mul(n), new(big.Rat).Mul(x, x)
		}
		same := func(op string, got exact.Number, want *big.Rat) {
			if got.String() != want.RatString() {
				t.Fatalf("%v %s %v = %v, want %s", n, op, m, got, want.RatString())
			}
		}
		same("+", n.Add(m), new(big.Rat).Add(x, y))
		same("-", n.Sub(m), new(big.Rat).Sub(x, y))
		same("×", n.Mul(m), new(big.Rat).Mul(x, y))
		if y.Sign() != 0 {
			same("÷", n.Quo(m), new(big.Rat).Quo(x, y))
		}
		if n.Cmp(m) != x.Cmp(y) || n.Equal(m) != (x.Cmp(y) == 0) || n.Sign() != x.Sign() || n.IsWhole() != x.IsInt() {
			t.Fatalf("%v and %v compare as %d", n, m, n.Cmp(m))
		}
		if f, _ := x.Float64(); n.Float() != f {
			t.Fatalf("Float(%v) = %v, want %v", n, n.Float(), f)
		}
		back, err := exact.ParseNumber(n.String())
		if len(n.String()) <= 60 && (err != nil || !back.Equal(n)) {
			t.Fatalf("%v reads back as %v, %v", n, back, err)
		}
		if !n.Add(m).Sub(m).Equal(n) {
			t.Fatalf("%v + %v − %v is not itself", n, m, m)
		}
		ceil := n.Ceil()
		if !ceil.IsWhole() || ceil.Cmp(n) < 0 || ceil.Sub(n).Cmp(exact.Whole(1)) >= 0 {
			t.Fatalf("Ceil(%v) = %v", n, ceil)
		}
	})
}

// A number rounded to a step is a whole multiple of it, at most half a step
// away.
func TestRoundStaysWithinHalfAStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n, _ := anyNumber(t, "n")
		step := exact.Ratio(rapid.Int64Range(1, 1000).Draw(t, "over"), rapid.Int64Range(1, 1000).Draw(t, "under"))
		r := n.Round(step)
		off := r.Sub(n)
		if off.Sign() < 0 {
			off = off.Mul(exact.Whole(-1))
		}
		if !r.Quo(step).IsWhole() || off.Mul(exact.Whole(2)).Cmp(step) > 0 {
			t.Fatalf("Round(%v, %v) = %v", n, step, r)
		}
	})
}
