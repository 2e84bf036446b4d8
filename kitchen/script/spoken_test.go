package script

import (
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"
)

func TestWithoutSounds(t *testing.T) {
	for text, want := range map[string]string{
		"stir the pan":                     "stir the pan",
		"[rain] stir":                      "       stir",
		"stir [oven door closes] the [x]!": "stir                    the    !",
		"[never shut":                      "[never shut",
		"stir ] the [":                     "stir ] the [",
		"[[a]]":                            "    ]",
		"":                                 "",
	} {
		if got := withoutSounds(text); got != want {
			t.Errorf("withoutSounds(%q) = %q, want %q", text, got, want)
		}
	}
}

// Sounds are blanked, so that the words keep their places.
func TestWithoutSoundsKeepsTheLength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`[a-c\[\] é]{0,20}`).Draw(t, "text")
		if got := withoutSounds(text); len(got) != len(text) {
			t.Fatalf("withoutSounds(%q) = %q, of another length", text, got)
		}
	})
}

func TestEndsSentence(t *testing.T) {
	for rest, want := range map[string]bool{
		".": true, "! And": true, "?": true, "…": true, `." And`: true, "”. And": true,
		"": false, ", and": false, " and.": false, "; so": false, "-half.": false, "3.": false,
	} {
		if got := endsSentence(rest); got != want {
			t.Errorf("endsSentence(%q) = %v, want %v", rest, got, want)
		}
	}
}

func TestSpokenWords(t *testing.T) {
	second := func(n float64) time.Duration { return time.Duration(n * float64(time.Second)) }
	words := spokenWords(Captions{Cues: []Cue{
		{Start: second(1), End: second(3), Text: "Rub it. Now"},
		{Start: second(3), End: second(4), Text: "[hum]"},
		{Start: second(6), End: second(5), Text: "pour"}, // ends before it begins
		{Start: second(6), End: second(8), Text: "the"},
	}})
	want := []spokenWord{
		{text: "rub", key: "rub", cue: 0, at: second(1), pause: second(1), opens: true},
		{text: "it", cue: 0, at: second(1) + second(2)*4/11},
		{text: "now", cue: 0, at: second(1) + second(2)*8/11, opens: true},
		{text: "pour", key: "pour", cue: 2, at: second(6), pause: second(3)},
		{text: "the", cue: 3, at: second(6)},
	}
	if len(words) != len(want) {
		t.Fatalf("%d words, want %d: %+v", len(words), len(want), words)
	}
	for i, w := range words {
		if (w.at - want[i].at).Abs() > time.Millisecond {
			t.Errorf("%q is said at %v, want %v", w.text, w.at, want[i].at)
		}
		w.at, want[i].at = 0, 0
		if w != want[i] {
			t.Errorf("word %d is %+v, want %+v", i, w, want[i])
		}
	}
}

func TestKeysOf(t *testing.T) {
	if got := strings.Join(keysOf("Knead the dough, 200 g; kneading doughs. Rest it!"), " "); got != "knead dough rest" {
		t.Errorf("keys %q", got)
	}
}
