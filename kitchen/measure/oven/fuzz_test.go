package oven_test

import (
	"testing"

	"benchproof/kitchen/measure/oven"
)

// FuzzHeats holds the finder's laws on any text: each heat stands where it
// says, in order, none inside another; and no text upsets Check or In.
func FuzzHeats(f *testing.F) {
	for _, test := range heatTexts {
		f.Add(test.text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		end := 0
		heats := oven.Heats(text)
		for _, h := range heats {
			if h.At < end || h.At+len(h.Text) > len(text) || text[h.At:h.At+len(h.Text)] != h.Text {
				t.Fatalf("%q: %+v", text, h)
			}
			if h.Degrees.From.Cmp(h.Degrees.To) > 0 {
				t.Fatalf("%q: %v", text, h)
			}
			for _, scale := range []string{"C", "F", "gas"} {
				if to, _, err := h.In(scale, "fan"); err == nil && to.Scale != scale {
					t.Fatalf("%q: %v in %s = %v", text, h, scale, to)
				}
			}
			end = h.At + len(h.Text)
		}
		for _, q := range oven.Check(heats) {
			if q.Text == "" {
				t.Fatalf("%q: an empty question", text)
			}
		}
	})
}
