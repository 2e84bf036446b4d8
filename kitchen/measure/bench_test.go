package measure_test

import (
	"testing"

	"benchproof/kitchen/measure"
)

// BenchmarkReadAmount bounds the reading of one ingredient line's amount, from
// the plainest line to the wordiest, and of a line without one.
func BenchmarkReadAmount(b *testing.B) {
	for _, row := range []struct{ name, text string }{
		{"plain", "200 g flour"},
		{"mixed fraction", "1 1/2 cups plain flour, sifted"},
		{"range", "2–3 tbsp. olive oil"},
		{"wordy", "about 2 to 3 heaped Australian tablespoons of cocoa"},
		{"spelled", "two hundred and fifty grams of butter"},
		{"no number", "a good pinch of salt"},
	} {
		b.Run(row.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, _, ok := measure.ReadAmount(row.text); !ok {
					b.Fatal("not read")
				}
			}
		})
	}
	b.Run("none", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			if _, _, ok := measure.ReadAmount("flaky sea salt, to finish"); ok {
				b.Fatal("read")
			}
		}
	})
}

// BenchmarkWrite bounds the writing of one scaled line for hands.
func BenchmarkWrite(b *testing.B) {
	for _, row := range []struct{ name, exact string }{
		{"grams", "1234/10 g"},
		{"kilograms", "5/4 kg"},
		{"pounds and ounces", "77/4 oz"},
		{"millilitres", "2365882365/10000000 ml"},
		{"cups", "7/3 cup"},
		{"sum", "13/16 cup"},
		{"worst sum", "1037/1000 cup"},
		{"range", "7/3..10/3 tbsp"},
		{"count", "10/3"},
	} {
		a := amount(b, row.exact)
		b.Run(row.name, func(b *testing.B) {
			b.ReportAllocs()
			h := measure.Hand{System: measure.US}
			for b.Loop() {
				if h.Write(a).Text == "" {
					b.Fatal("nothing written")
				}
			}
		})
	}
}

// BenchmarkFind bounds the reading of a method's step for its times and heats.
func BenchmarkFind(b *testing.B) {
	const step = "Preheat the oven to 180 °C/160 °C fan/350 °F/gas 4. Beat the butter and sugar for 3 to 5 minutes until pale, add 2 eggs one at a time, then bake for 1 hour 10 minutes or until a skewer comes out clean."
	b.ReportAllocs()
	for b.Loop() {
		if len(measure.Heats(step)) != 4 || len(measure.Durations(step)) != 2 {
			b.Fatal("not found")
		}
	}
}

// BenchmarkNumber bounds one exact operation, in machine words and beyond.
func BenchmarkNumber(b *testing.B) {
	for _, row := range []struct{ name, n, m string }{
		{"words", "2365882365/10000000", "3/2"},
		{"big", "100000000000000000001/3", "3/2"},
	} {
		n, m := num(b, row.n), num(b, row.m)
		b.Run(row.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				n.Mul(m).Add(m)
			}
		})
	}
}
