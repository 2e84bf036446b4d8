package script

import (
	"regexp"
	"strings"
	"time"
)

// readSRT reads SRT captions: a number, a line of times, the words, a blank
// line. The number may be missing, and words may hold blank lines: a caption
// goes on until the next number with times, or the next times. A number
// without times is a fault, for its words would go to the caption before.
func readSRT(lines []string) (cues []Cue, faults []error) {
	open := false   // the cue under way is sound and takes words
	opened := false // any line of times was seen
	var words []string
	finish := func() {
		if open {
			cues[len(cues)-1].Text = srtText(strings.Join(words, "\n"))
		}
		open, words = false, nil
	}
	for at, line := range lines {
		afterBlank := at == 0 || strings.TrimSpace(lines[at-1]) == ""
		switch {
		case hasArrow(line):
			finish()
			opened = true
			start, end, err := cueTimes(line, at, srtTime, "00:00:01,000")
			if err != nil {
				faults = append(faults, err)
				continue
			}
			cues = append(cues, Cue{ID: srtNumber(lines, at), Start: start, End: end, Line: at + 1})
			open = true
		case isNumber(line) && nextHasArrow(lines, at):
			finish()
		case isNumber(line) && afterBlank:
			faults = append(faults, cueFault(at, "caption %s has no times; a line such as 00:00:01,000 --> 00:00:03,000 must follow its number.", strings.TrimSpace(line)))
			finish()
		case strings.TrimSpace(line) != "" && !opened:
			faults = append(faults, cueFault(at, "“%s” stands before the first times.", excerpt(line)))
		default:
			words = append(words, line)
		}
	}
	finish()
	return cues, faults
}

func isNumber(line string) bool {
	line = strings.TrimSpace(line)
	return line != "" && strings.Trim(line, "0123456789") == ""
}

func nextHasArrow(lines []string, at int) bool { return at+1 < len(lines) && hasArrow(lines[at+1]) }

// srtNumber is the number above the line of times at the index; "" if none.
func srtNumber(lines []string, at int) string {
	if at > 0 && isNumber(lines[at-1]) {
		return strings.TrimSpace(lines[at-1])
	}
	return ""
}

// srtTime reads hh:mm:ss,mmm, with a full stop for the comma where a tool
// wrote it so.
func srtTime(s string) (time.Duration, bool) {
	whole, thousandths, found := strings.Cut(strings.Replace(s, ".", ",", 1), ",")
	parts := strings.Split(whole, ":")
	if !found || len(parts) != 3 || parts[0] == "" {
		return 0, false
	}
	return clockTime(parts[0], parts[1], parts[2], thousandths)
}

// srtMarks are the tags and the {\an8}-like placings that tools write into SRT.
var srtMarks = regexp.MustCompile(`(?i)</?(?:b|i|u|s|font)(?:\s[^<>]*)?>|\{\\[a-z]+[^{}]*\}`)

func srtText(text string) string { return tidyText(srtMarks.ReplaceAllString(text, "")) }
