package script

import (
	"regexp"
	"strconv"
	"strings"
	"time"
)

// transcriptTime is a time at the start of a line, in brackets or bare: "[1:23]",
// "(00:01:23.5)", "1:23 -", "01:02:03".
var transcriptTime = regexp.MustCompile(`^\s*[\[(]?\s*(?:(\d{1,4}):)?(\d{1,3}):(\d{2})(?:[.,](\d{1,3}))?\s*[\])]?(?:\s*[-–—:]\s+|\s+|$)`)

// isTranscript tells whether lines are a transcript with times: the first that
// is not blank has one, and so has another.
func isTranscript(lines []string) bool {
	timed := 0
	for _, line := range lines {
		if strings.TrimSpace(line) == "" {
			continue
		}
		if transcriptTime.MatchString(line) {
			timed++
		} else if timed == 0 {
			return false
		}
	}
	return timed >= 2
}

// readTranscript reads a transcript with times. What stands behind a time, and
// the lines below it without one, are said from then until the next time; what
// is said last goes at the pace of plain conversation.
func readTranscript(lines []string) (cues []Cue, faults []error) {
	for at, line := range lines {
		m := transcriptTime.FindStringSubmatch(line)
		if m == nil {
			if line = strings.TrimSpace(line); line != "" && len(cues) > 0 {
				last := &cues[len(cues)-1]
				last.Text = strings.TrimSpace(last.Text + "\n" + line)
			}
			continue
		}
		start, ok := transcriptClock(m)
		if !ok {
			faults = append(faults, cueFault(at, "“%s” is no time; write it as 1:23 or 01:02:03.", strings.TrimSpace(m[0])))
			continue
		}
		cues = append(cues, Cue{Start: start, Text: strings.TrimSpace(line[len(m[0]):]), Line: at + 1})
	}
	return cues, faults
}

// endTranscript gives the cues their ends, once they are in order.
func endTranscript(cues []Cue) []Cue {
	kept := cues[:0]
	for i, cue := range cues {
		cue.Text = tidyText(cue.Text)
		spoken := time.Duration(max(Seconds(cue.Text, DefaultPace), 1)) * time.Second
		cue.End = cue.Start + spoken
		if i+1 < len(cues) {
			cue.End = max(min(cues[i+1].Start, cue.Start+2*spoken), cue.Start+100*time.Millisecond)
		}
		if cue.Text != "" {
			kept = append(kept, cue)
		}
	}
	return kept
}

func transcriptClock(m []string) (time.Duration, bool) {
	number := func(s string) time.Duration {
		n, _ := strconv.Atoi(s) // digits only, at most four
		return time.Duration(n)
	}
	hours, minutes, seconds := number(m[1]), number(m[2]), number(m[3])
	if seconds > 59 || m[1] != "" && minutes > 59 {
		return 0, false
	}
	part := time.Duration(0)
	if m[4] != "" {
		part = number((m[4] + "00")[:3])
	}
	return hours*time.Hour + minutes*time.Minute + seconds*time.Second + part*time.Millisecond, true
}
