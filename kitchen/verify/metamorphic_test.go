package verify_test

import (
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/verify"
)

// bare writes captions as speech recognisers do: in lower case, without stops.
func bare(cues []verify.Cue) []verify.Cue {
	var all []verify.Cue
	for _, c := range cues {
		c.Text = strings.ToLower(strings.Map(func(r rune) rune {
			if strings.ContainsRune(".,;:!?()“”\"–—…", r) {
				return ' '
			}
			return r
		}, keepDecimals(c.Text)))
		c.Text = strings.ReplaceAll(c.Text, "·", ".")
		all = append(all, c)
	}
	return all
}

// keepDecimals writes the point of "1.5" so that it outlasts the others.
func keepDecimals(text string) string {
	b := []byte(text)
	var out strings.Builder
	for i, c := range b {
		if c == '.' && i > 0 && i+1 < len(b) && b[i-1] >= '0' && b[i-1] <= '9' && b[i+1] >= '0' && b[i+1] <= '9' {
			out.WriteString("·")
			continue
		}
		out.WriteByte(c)
	}
	return out.String()
}

// breathless takes the pauses out.
func breathless(cues []verify.Cue) []verify.Cue {
	var all []verify.Cue
	for i, c := range cues {
		if i+1 < len(cues) {
			c.End = max(c.End, cues[i+1].Start-40*time.Millisecond)
		}
		all = append(all, c)
	}
	return all
}

// A cut says the same however its captions are written.
func TestCutsWrittenOtherwise(t *testing.T) {
	for _, way := range []struct {
		name   string
		change func([]verify.Cue) []verify.Cue
	}{
		{"without stops", bare},
		{"without pauses", breathless},
		{"without either", func(c []verify.Cue) []verify.Cue { return breathless(bare(c)) }},
		{"in figures", inFigures},
	} {
		var sum tally
		for _, c := range readCuts(t) {
			if c.heldOut() {
				continue
			}
			c.cues = way.change(c.cues)
			if way.name == "in figures" {
				for i, m := range c.marks {
					c.marks[i].words = inFigures([]verify.Cue{{Text: m.words}})[0].Text
				}
			}
			sum.add(c.judged(t.Logf))
		}
		t.Logf("%s: %v", way.name, sum)
		if !sum.meets(barFound, barFalse) {
			t.Errorf("%s: %v", way.name, sum)
		}
	}
}
