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

// mostRounds bounds how often captions are gone over; two rounds do for all but
// invented ones.
const mostRounds = 16

// settled takes the marks of speakers off captions, and what they repeat, until
// nothing is left to take: what is written of them then reads the same.
func settled(cues []Cue) []Cue {
	for range mostRounds {
		marked := unmark(cues)
		rolled, kept := unroll(cues)
		cues = kept
		if !marked && !rolled {
			break
		}
	}
	return cues
}

// unroll takes out of captions what the caption with words before them showed
// already, where they roll or grow throughout. A line said twice in other
// captions stays.
func unroll(cues []Cue) (rolled bool, kept []Cue) {
	fresh := make([]string, len(cues))
	repeats, spoken, before := 0, 0, -1
	for i, cue := range cues {
		fresh[i] = cue.Text
		if cue.Text == "" {
			continue
		}
		spoken++
		if before >= 0 {
			if text, ok := freshLines(cues[before], cue); ok && text != cue.Text {
				fresh[i] = text
				repeats++
			}
		}
		before = i
	}
	if repeats < rollingLeast || repeats*rollingShare < spoken-1 {
		return false, cues
	}
	for i, cue := range cues {
		if cue.Text = fresh[i]; cue.Text != "" {
			kept = append(kept, cue)
		}
	}
	return true, kept
}

// freshLines gives what a caption shows that the one before it did not; ok is
// false where it does not follow at once or repeats nothing.
func freshLines(before, cue Cue) (string, bool) {
	if cue.Start-cleanEnd(before) > rollingGap {
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
