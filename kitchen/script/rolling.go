package script

import (
	"strings"
	"time"
)

// Automatic captions often roll: each shows the line before once more above its
// own, with short captions between that show nothing new. Others grow word by
// word. The share of captions that must do so before they are taken for such.
const (
	rollingShare = 4 // one in four
	rollingLeast = 3
	rollingGap   = 200 * time.Millisecond
)

// unroll takes out of captions what the caption before showed already, where
// they roll or grow throughout. A line said twice in other captions stays.
func unroll(cues []Cue) []Cue {
	repeats := 0
	for i := 1; i < len(cues); i++ {
		if fresh, ok := freshLines(cues[i-1], cues[i]); ok && fresh != cues[i].Text {
			repeats++
		}
	}
	if repeats < rollingLeast || repeats*rollingShare < len(cues)-1 {
		return cues
	}
	kept := cues[:0:0]
	for i, cue := range cues {
		if i > 0 {
			if fresh, ok := freshLines(cues[i-1], cue); ok {
				cue.Text = fresh
			}
		}
		if cue.Text != "" {
			kept = append(kept, cue)
		}
	}
	return kept
}

// freshLines gives what a caption shows that the one before it did not; ok is
// false where it does not follow at once or repeats nothing.
func freshLines(before, cue Cue) (string, bool) {
	if cue.Start-before.End > rollingGap || before.Text == "" {
		return "", false
	}
	old, lines := strings.Split(before.Text, "\n"), strings.Split(cue.Text, "\n")
	for n := min(len(old), len(lines)); n > 0; n-- {
		if equalLines(old[len(old)-n:], lines[:n]) {
			return strings.Join(lines[n:], "\n"), true
		}
	}
	if rest, ok := strings.CutPrefix(cue.Text, before.Text); ok && strings.TrimLeft(rest, " \n") != rest {
		return strings.TrimSpace(rest), true // grows: its beginning is the caption before
	}
	last := old[len(old)-1]
	if rest, ok := strings.CutPrefix(cue.Text, last); ok && strings.HasPrefix(rest, " ") && strings.Contains(last, " ") {
		return strings.TrimSpace(rest), true
	}
	return "", false
}

func equalLines(a, b []string) bool {
	for i := range a {
		if strings.Join(strings.Fields(a[i]), " ") != strings.Join(strings.Fields(b[i]), " ") {
			return false
		}
	}
	return true
}
