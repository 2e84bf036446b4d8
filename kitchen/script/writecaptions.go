package script

import (
	"fmt"
	"strings"
	"time"
)

// WriteVTT writes captions as a WebVTT file that any reader of the standard
// takes: W3C WebVTT, section 4.1. Identifiers that the standard forbids, and
// cues without words, are left out.
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
		fmt.Fprintf(&b, "%s --> %s\n%s\n", captionClock(cue.Start, '.'), captionClock(cue.End, '.'), escape.Replace(text))
	}
	return b.String()
}

// WriteSRT writes captions as SRT, numbered from 1, with LF line ends. An arrow
// in the words becomes "→", since readers take it for a line of times.
func WriteSRT(c Captions) string {
	var b strings.Builder
	n := 0
	for _, cue := range c.Cues {
		text := strings.ReplaceAll(tidyText(cue.Text), "-->", "→")
		if text == "" {
			continue
		}
		n++
		fmt.Fprintf(&b, "%d\n%s --> %s\n%s\n\n", n, captionClock(cue.Start, ','), captionClock(cue.End, ','), text)
	}
	return b.String()
}

// captionClock writes a time with hours of at least two digits: "00:01:23.450".
func captionClock(t time.Duration, point byte) string {
	ms := t.Milliseconds()
	return fmt.Sprintf("%02d:%02d:%02d%c%03d", ms/3_600_000, ms/60_000%60, ms/1000%60, point, ms%1000)
}
