package script

import (
	"fmt"
	"strings"
	"time"
)

// WriteVTT writes captions as a WebVTT file that any reader of the standard
// takes: W3C WebVTT, section 4.1. Identifiers that the standard forbids, and
// cues without words, are left out; a cue ends after its start.
func WriteVTT(c Captions) string {
	var b strings.Builder
	b.WriteString("WEBVTT\n")
	escape := strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;")
	for _, cue := range c.Cues {
		text := tidyText(cue.Text)
		if text == "" {
			continue
		}
		b.WriteByte('\n')
		if cue.ID != "" && !strings.Contains(cue.ID, "-->") && !strings.ContainsAny(cue.ID, "\r\n") {
			b.WriteString(cue.ID + "\n")
		}
		fmt.Fprintf(&b, "%s --> %s\n", captionClock(cue.Start, '.'), captionClock(cleanEnd(cue), '.'))
		if cue.Speaker != "" {
			fmt.Fprintf(&b, "<v %s>", escape.Replace(cue.Speaker))
		}
		b.WriteString(escape.Replace(text) + "\n")
	}
	return b.String()
}

// WriteSRT writes captions as SRT, numbered from 1, with LF line ends, without
// the names of speakers. An arrow in the words becomes "→", since readers take it
// for a line of times, and what they would take for a mark is left out.
func WriteSRT(c Captions) string {
	var b strings.Builder
	n := 0
	for _, cue := range c.Cues {
		text := strings.ReplaceAll(tidyText(cue.Text), "-->", "→")
		for unmarked := srtText(text); unmarked != text; unmarked = srtText(text) {
			text = unmarked
		}
		if text == "" {
			continue
		}
		n++
		fmt.Fprintf(&b, "%d\n%s --> %s\n%s\n\n", n, captionClock(cue.Start, ','), captionClock(cleanEnd(cue), ','), text)
	}
	return b.String()
}

// cleanEnd is the cue's end, at the least a thousandth of a second after its
// start.
func cleanEnd(c Cue) time.Duration { return max(c.End, c.Start+time.Millisecond) }

// captionClock writes a time with hours of at least two digits: "00:01:23.450".
func captionClock(t time.Duration, point byte) string {
	ms := t.Milliseconds()
	return fmt.Sprintf("%02d:%02d:%02d%c%03d", ms/3_600_000, ms/60_000%60, ms/1000%60, point, ms%1000)
}
