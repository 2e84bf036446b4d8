package exact_test

import (
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/measure/exact"
)

func anyRange(t *rapid.T, name string) exact.Range {
	a := exact.Ratio(rapid.Int64Range(-500, 500).Draw(t, name+" a"), rapid.Int64Range(1, 12).Draw(t, name+" under"))
	if rapid.Bool().Draw(t, name+" single") {
		return exact.One(a)
	}
	return exact.Between(a, exact.Whole(rapid.Int64Range(-50, 50).Draw(t, name+" b")))
}

// Ranges keep their order under all that is done to them.
func TestRangesKeepTheirOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, s := anyRange(t, "r"), anyRange(t, "s")
		by := exact.Ratio(rapid.Int64Range(-20, 20).Draw(t, "by"), 3)
		for name, got := range map[string]exact.Range{
			"itself": r, "scaled": r.Scale(by), "sum": r.Add(s), "mapped": r.Map(func(n exact.Number) exact.Number { return n.Round(exact.Whole(5)) }),
		} {
			if got.From.Cmp(got.To) > 0 {
				t.Fatalf("%s: %v, %v is out of order", name, got.From, got.To)
			}
		}
		if sum, other := r.Add(s), s.Add(r); !sum.From.Equal(other.From) || !sum.To.Equal(other.To) {
			t.Fatalf("%v + %v is %v one way and %v the other", r, s, sum, other)
		}
		if !by.IsZero() {
			if back := r.Scale(by).Scale(exact.Whole(1).Quo(by)); !back.From.Equal(r.From) || !back.To.Equal(r.To) {
				t.Fatalf("%v by %v and back is %v", r, by, back)
			}
		}
	})
}

func TestRangePredicates(t *testing.T) {
	two, three := exact.Whole(2), exact.Whole(3)
	for _, test := range []struct {
		name           string
		r              exact.Range
		single, zero   bool
		multipleOfHalf bool
	}{
		{"the zero range", exact.Range{}, true, true, true},
		{"one", exact.One(two), true, false, true},
		{"two", exact.Between(three, two), false, false, true},
		{"from nothing", exact.Between(exact.Whole(0), two), false, false, true},
		{"thirds", exact.One(exact.Ratio(1, 3)), true, false, false},
		{"half a multiple", exact.Between(two, exact.Ratio(7, 3)), false, false, false},
	} {
		if test.r.IsSingle() != test.single || test.r.IsZero() != test.zero || test.r.IsMultiple(exact.Ratio(1, 2)) != test.multipleOfHalf {
			t.Errorf("%s: single %v, zero %v, in halves %v", test.name, test.r.IsSingle(), test.r.IsZero(), test.r.IsMultiple(exact.Ratio(1, 2)))
		}
	}
	if r := exact.Between(three, two); !r.From.Equal(two) || !r.To.Equal(three) {
		t.Errorf("Between(3, 2) = %v", r)
	}
}

// What does not fit a machine word comes back to one when it fits again.
func TestBigNumbersComeBackToWords(t *testing.T) {
	huge := exact.Whole(1 << 62)
	n := huge.Mul(huge).Quo(huge).Quo(huge)
	if n != exact.Whole(1) {
		t.Errorf("2⁶² × 2⁶² ÷ 2⁶² ÷ 2⁶² = %#v, want plain 1", n)
	}
	least := exact.Whole(-1 << 63)
	if got := least.String(); got != "-9223372036854775808" {
		t.Errorf("the least int64 = %s", got)
	}
	if got := least.Mul(exact.Whole(-1)).String(); got != "9223372036854775808" {
		t.Errorf("… times −1 = %s", got)
	}
	if got := exact.Ratio(1, -1<<63).String(); got != "-1/9223372036854775808" {
		t.Errorf("one over it = %s", got)
	}
	if !least.Sub(least).IsZero() || least.Sub(least) != (exact.Number{}) {
		t.Error("a difference of nothing must be the zero Number")
	}
}

func TestDivisionByNothingPanics(t *testing.T) {
	for name, f := range map[string]func(){
		"Ratio": func() { exact.Ratio(1, 0) }, "Quo": func() { exact.Whole(1).Quo(exact.Number{}) }, "MustNumber": func() { exact.MustNumber("two") },
	} {
		t.Run(name, func(t *testing.T) {
			defer func() {
				if recover() == nil {
					t.Error("no panic")
				}
			}()
			f()
		})
	}
}
