package method_test

import (
	"testing"

	"benchproof/kitchen/recipe/method"
)

// Where a cue begins and where it ends. The sentences are our own, in the ways
// cooks write: common practice, no source.
func TestCue(t *testing.T) {
	for _, tt := range []struct{ name, text, want string }{
		{"to the full stop", "Bake until risen.", "until risen"},
		{"to the end", "Bake until risen", "until risen"},
		{"with its conjunction", "Bake until risen and golden.", "until risen and golden"},
		{"with its own commas", "Cook until soft, sweet and brown.", "until soft, sweet and brown"},
		{"or another sign", "Bake until golden or until a skewer comes out clean.", "until golden or until a skewer comes out clean"},
		{"behind or", "Bake for 20 minutes, or until golden.", "until golden"},
		{"before about", "Bake until golden, about 20 minutes.", "until golden"},
		{"before about, without a comma", "Simmer until thick for about 20 minutes.", "until thick"},
		{"before a number", "Bake until golden, 20 minutes.", "until golden"},
		{"before a bracket", "Cook until done (63 °C inside).", "until done"},
		{"before then", "Whip until stiff, then fold in.", "until stiff"},
		{"before then, without a comma", "Whip until stiff then fold in.", "until stiff"},
		{"before another order", "Whisk until smooth, add the milk.", "until smooth"},
		{"before and an order", "Whisk until smooth and add the milk.", "until smooth"},
		{"before what goes on", "Cook until thick, stirring.", "until thick"},
		{"before but", "Cook until soft, but not brown.", "until soft"},
		{"but within", "Cook until soft but not brown.", "until soft but not brown"},
		{"before a dash", "Bake until golden – it colours fast.", "until golden"},
		{"before a colon", "Bake until done: a skewer comes out clean.", "until done"},
		{"before a semicolon", "Bake until done; cool.", "until done"},
		{"over a decimal", "Heat until it reads 82.5 °C, then cool.", "until it reads 82.5 °C"},
		{"a verb that is also a sign", "Bake until the edges brown.", "until the edges brown"},
		{"till", "Bake till golden.", "till golden"},
		{"til", "bake til golden", "til golden"},
		{"'til", "Bake 'til golden.", "'til golden"},
		{"when it is done", "It is ready when it floats.", "when it floats"},
		{"when it is set", "The custard is set when it only trembles.", "when it only trembles"},
		{"the first of two", "Whisk until pale. Fold until even.", "until pale"},
		{"not until needed", "Chill until needed.", ""},
		{"not until serving", "Chill until serving.", ""},
		{"not until a day", "Leave until the next day.", ""},
		{"not until ready to use", "Chill until ready to use.", ""},
		{"the sign behind a wait", "Chill until needed. Beat until soft.", "until soft"},
		{"not another when", "When it boils, add the rice.", ""},
		{"not inside a word", "Untilled soil.", ""},
		{"nothing behind it", "Bake until", ""},
		{"nothing but a stop", "Bake until .", ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := method.Read(tt.text).Cue; got != tt.want {
				t.Errorf("%q has the cue %q, want %q", tt.text, got, tt.want)
			}
		})
	}
}
