package measure_test

import (
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
)

// kitchenNumber draws a positive number that a scaled recipe can have.
func kitchenNumber(t *rapid.T, name string) measure.Number {
	den := rapid.SampledFrom([]int64{1, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 16, 100, 1000}).Draw(t, name+" under")
	return measure.Ratio(rapid.Int64Range(1, 3000).Draw(t, name+" over"), den)
}

func kitchenAmount(t *rapid.T) measure.Amount {
	u := rapid.SampledFrom(writable()).Draw(t, "unit")
	a := kitchenNumber(t, "from")
	if !rapid.Bool().Draw(t, "range") {
		return measure.Of(a, u)
	}
	return measure.Amount{Range: measure.Between(a, kitchenNumber(t, "to")), Unit: u}
}

// writable are the units ReadAmount reads: all but times and temperatures.
func writable() []measure.Unit {
	var all []measure.Unit
	for _, u := range measure.Units() {
		if u.Kind() != measure.Time && u.Kind() != measure.Temperature {
			all = append(all, u)
		}
	}
	return all
}

// readSum reads what Write wrote: an amount, or a sum of them.
func readSum(t *rapid.T, text string, s measure.System) measure.Amount {
	// A food must follow, or "6 cloves" would be the spice.
	sum, rest, ok := measure.ReadAmount(text + " of food")
	for ok && strings.HasPrefix(rest, "+ ") {
		var more measure.Reading
		more, rest, ok = measure.ReadAmount(rest[2:])
		if ok {
			sum.Amount, ok = sum.Amount.Add(more.Amount, s)
		}
	}
	if !ok || strings.TrimPrefix(rest, "of ") != "food" {
		t.Fatalf("%q reads as %v, leaving %q", text, sum.Amount, rest)
	}
	return sum.Amount
}

// What is written for hands is read as what it says, and is written the same
// again.
func TestWriteReadWriteIsStable(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := measure.Hand{System: rapid.SampledFrom(measure.Systems()).Draw(t, "system")}
		first := h.Write(kitchenAmount(t))
		read := readSum(t, first.Text, h.System)
		second := h.Write(read)
		if second.Text != first.Text || !second.ErrorPercent.IsZero() {
			t.Fatalf("%q reads as %v and is written %q, %v %% off", first.Text, read, second.Text, second.ErrorPercent)
		}
		same, err := measure.Convert(read, first.Amount.Unit, h.System, h.System)
		if err != nil || !cmp.Equal(same, first.Amount) {
			t.Fatalf("%q says %v, but Amount is %v", first.Text, read, first.Amount)
		}
	})
}

// The parts add up to the amount, the error is what it says, and a range keeps
// its order.
func TestShownIsHonest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := measure.Hand{System: rapid.SampledFrom(measure.Systems()).Draw(t, "system")}
		exact := kitchenAmount(t)
		shown := h.Write(exact)
		sum := shown.Parts[0]
		for _, p := range shown.Parts[1:] {
			var ok bool
			if sum, ok = sum.Add(p, h.System); !ok {
				t.Fatalf("%v do not add", shown.Parts)
			}
		}
		if same, err := measure.Convert(sum, shown.Amount.Unit, h.System, h.System); err != nil || !cmp.Equal(same, shown.Amount) {
			t.Fatalf("parts %v make %v, not %v", shown.Parts, sum, shown.Amount)
		}
		if shown.Amount.From.Cmp(shown.Amount.To) > 0 || shown.Amount.From.Sign() <= 0 {
			t.Fatalf("%v is written %q", exact, shown.Text)
		}
		back, err := measure.Convert(shown.Amount, exact.Unit, h.System, h.System)
		if err != nil {
			t.Fatal(err)
		}
		off := max(relative(exact.From, back.From), relative(exact.To, back.To))
		if math.Abs(off-shown.ErrorPercent.Float()) > 1e-6*(1+off) {
			t.Fatalf("%v is written %q: %v %% off, said %v", exact, shown.Text, off, shown.ErrorPercent.Float())
		}
	})
}

func relative(exact, got measure.Number) float64 {
	return math.Abs(got.Sub(exact).Quo(exact).Float()) * 100
}

// What scales, jugs, cups and spoons can take is never far off.
func TestWritingIsCloseEnough(t *testing.T) {
	for _, limit := range []struct {
		unit    measure.Unit
		from    string
		percent float64
	}{
		{measure.Gram, "1", 5}, {measure.Gram, "100", 0.5}, {measure.Millilitre, "1", 25}, {measure.Millilitre, "10", 5}, {measure.Millilitre, "100", 2.5},
		{measure.Ounce, "1", 12.5}, {measure.Pound, "1", 1.6}, {measure.Teaspoon, "1", 8}, {measure.Tablespoon, "1", 8}, {measure.Cup, "1/4", 8}, {measure.FluidOunce, "1", 12.5},
	} {
		rapid.Check(t, func(t *rapid.T) {
			n := kitchenNumber(t, "n")
			if n.Cmp(measure.MustNumber(limit.from)) < 0 {
				return
			}
			for _, s := range measure.Systems() {
				if got := (measure.Hand{System: s}).Write(measure.Of(n, limit.unit)); got.ErrorPercent.Float() > limit.percent {
					t.Fatalf("%s: %v %s is written %q, %.2f %% off", s, n, limit.unit, got.Text, got.ErrorPercent.Float())
				}
			}
		})
	}
}

// String is read back as the same amount where FormatNumber is exact.
func TestAmountsReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := measure.Ratio(rapid.Int64Range(1, 400).Draw(t, "over"), rapid.SampledFrom([]int64{1, 2, 4, 8, 3, 5, 6}).Draw(t, "under"))
		u := rapid.SampledFrom(writable()).Draw(t, "unit")
		a := measure.Of(n, u)
		got, rest, ok := measure.ReadAmount(a.String() + " of food")
		exact := !strings.Contains(a.String(), ".")
		if !ok || strings.TrimPrefix(rest, "of ") != "food" || exact && !cmp.Equal(got.Amount, a) || got.Amount.Unit != u {
			t.Fatalf("%q reads as %v, %v, leaving %q", a.String(), got.Amount, ok, rest)
		}
	})
}

func TestScaleAndBackIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, by := kitchenAmount(t), kitchenNumber(t, "by")
		scaled := a.Scale(by)
		if scaled.From.Cmp(scaled.To) > 0 {
			t.Fatalf("%v × %v = %v is out of order", a, by, scaled)
		}
		if back := scaled.Scale(measure.Whole(1).Quo(by)); !cmp.Equal(back, a) {
			t.Fatalf("%v × %v and back = %v", a, by, back)
		}
	})
}

func TestConvertAndBackIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := kitchenAmount(t)
		to := rapid.SampledFrom(writable()).Draw(t, "to")
		s, other := rapid.SampledFrom(measure.Systems()).Draw(t, "system"), rapid.SampledFrom(measure.Systems()).Draw(t, "other")
		b, err := measure.Convert(a, to, s, other)
		if err != nil {
			if a.Unit.Kind() == to.Kind() && a.Unit.Kind() != measure.Count {
				t.Fatalf("%v in %s: %v", a, to, err)
			}
			return
		}
		if back, err := measure.Convert(b, a.Unit, other, s); err != nil || !cmp.Equal(back, a) {
			t.Fatalf("%v in %s (%s) and back = %v, %v", a, to, other, back, err)
		}
	})
}

// Adding is the same both ways round, whatever the units.
func TestAddCommutes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := kitchenAmount(t), kitchenAmount(t)
		s := rapid.SampledFrom(measure.Systems()).Draw(t, "system")
		ab, ok := a.Add(b, s)
		ba, okToo := b.Add(a, s)
		if ok != okToo {
			t.Fatalf("%v + %v: %v one way, %v the other", a, b, ok, okToo)
		}
		if ok {
			if same, err := measure.Convert(ba, ab.Unit, s, s); err != nil || !cmp.Equal(same, ab) {
				t.Fatalf("%v + %v = %v, and %v the other way", a, b, ab, ba)
			}
		}
	})
}

// Whatever ReadAmount reads, its parts make up the text, and a written time or
// heat is found where it is put.
func TestHeatsAndTimesAreFoundInProse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.Int64Range(100, 260).Draw(t, "°C")
		minutes := rapid.Int64Range(1, 59).Draw(t, "minutes")
		heat := measure.Heat{Degrees: measure.One(measure.Whole(c)), Scale: "C"}
		time := measure.FormatMinutes(measure.One(measure.Whole(minutes)))
		text := "Bake at " + heat.String() + " for " + time + ", then rest."
		heats, times := measure.Heats(text), measure.Durations(text)
		if len(heats) != 1 || !cmp.Equal(heats[0].Degrees, heat.Degrees) || heats[0].Scale != "C" {
			t.Fatalf("Heats(%q) = %v", text, heats)
		}
		if len(times) != 1 || !times[0].Minutes.From.Equal(measure.Whole(minutes)) {
			t.Fatalf("Durations(%q) = %v", text, times)
		}
	})
}
