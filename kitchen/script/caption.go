package script

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	"benchproof/kitchen/fault"
)

// Cue is one caption: words and the time they stand on the picture.
type Cue struct {
	ID    string        // its identifier or number as written; "" if none
	Start time.Duration // from the start of the video
	End   time.Duration // the words are gone then; not after Start in some files
	Text  string        // the words without any mark-up, lines parted by \n
	Line  int           // the line of its times in the text, from 1
	// Speaker is who speaks, where the captions name them; the name is not in
	// Text.
	Speaker string
}

// Words lists the cue's words by the rules of WordsOf.
func (c Cue) Words() []string { return WordsOf(c.Text) }

// CaptionFormat is how captions are written.
type CaptionFormat string

// The formats ReadCaptions knows.
const (
	WebVTT CaptionFormat = "WebVTT"
	SRT    CaptionFormat = "SRT"
	// Transcript is plain text with times in front of what is said.
	Transcript CaptionFormat = "transcript"
)

// Captions are a cut's captions in the order of their start times; cues may
// overlap. The zero value is no captions.
type Captions struct {
	Format CaptionFormat
	Cues   []Cue
	// Notices are sentences on what was read but looks wrong, with its line.
	Notices []string
}

// End is when the last cue to go is gone; 0 without cues.
func (c Captions) End() time.Duration {
	var end time.Duration
	for _, cue := range c.Cues {
		end = max(end, cue.End)
	}
	return end
}

// maxCaptionFaults is how many faults ReadCaptions lists: a text in some other
// format would have one a line.
const maxCaptionFaults = 10

// ReadCaptions reads captions written as WebVTT (W3C WebVTT, sections 4.1 and
// 6.1), as SRT, which has no specification: numbered blocks with hh:mm:ss,mmm
// times, or as a transcript with a time in front of what is said. A byte-order
// mark, UTF-16 and any line ends are fine. Empty text gives no captions and no
// error.
//
// The cues come in the order of their starts, whatever the file's. Tags, marks
// of position and the names of speakers are taken off the words. Captions that
// roll, each showing the line before once more, give every line once.
//
// What cannot be read is an error of kind fault.Invalid, field "captions", that
// names the line; errors.Join holds them when there are several. The cues that
// could be read come back all the same.
func ReadCaptions(text string) (Captions, error) {
	lines := captionLines(text)
	var (
		captions Captions
		faults   []error
	)
	switch {
	case !slices.ContainsFunc(lines, hasText):
		return Captions{}, nil
	case isVTTSignature(lines[0]):
		captions.Format = WebVTT
		captions.Cues, faults, captions.Notices = readVTT(lines)
	case slices.ContainsFunc(lines, hasArrow):
		captions.Format = SRT
		captions.Cues, faults = readSRT(lines)
	case isTranscript(lines):
		captions.Format = Transcript
		captions.Cues, faults = readTranscript(lines)
	default:
		return Captions{}, fault.Invalidf("captions",
			"These are no captions: there is neither “WEBVTT” on the first line nor a line of times such as 00:00:01,000 --> 00:00:03,000, nor a time such as 1:23 in front of what is said.")
	}
	captions.Notices = shortList(append(captions.Notices, backwardNotices(captions.Cues)...))
	slices.SortStableFunc(captions.Cues, func(a, b Cue) int { return cmp.Compare(a.Start, b.Start) })
	if captions.Format == Transcript {
		captions.Cues = endTranscript(captions.Cues)
	}
	captions.Cues = settled(captions.Cues)
	if len(faults) > maxCaptionFaults {
		more := len(faults) - maxCaptionFaults
		faults = append(faults[:maxCaptionFaults:maxCaptionFaults], fault.Invalidf("captions", "… and %d more lines like these.", more))
	}
	return captions, errors.Join(faults...)
}

// captionLines splits text at CR LF, LF or CR, without the byte-order mark and
// with U+0000 and broken bytes replaced, as the WebVTT parser asks (section 6.1).
func captionLines(text string) []string {
	text = strings.ToValidUTF8(captionText(text), "\ufffd")
	text = strings.NewReplacer("\r\n", "\n", "\r", "\n", "\x00", "\ufffd").Replace(text)
	return strings.Split(text, "\n")
}

func hasText(line string) bool { return strings.TrimSpace(line) != "" }

func hasArrow(line string) bool { return strings.Contains(line, "-->") }

// cueFault says what is wrong with the line of the given index.
func cueFault(index int, format string, args ...any) error {
	return fault.Invalidf("captions", "Line %d: "+format, append([]any{index + 1}, args...)...)
}

// timeReader reads one time; ok is false for anything else.
type timeReader func(s string) (t time.Duration, ok bool)

// cueNotice says what looks wrong on the line of the given index.
func cueNotice(index int, format string, args ...any) string {
	return fmt.Sprintf("Line %d: "+format, append([]any{index + 1}, args...)...)
}

// cueTimes reads the line of times "start --> end settings"; example shows the
// person how a time is written.
func cueTimes(line string, index int, read timeReader, example string) (start, end time.Duration, err error) {
	left, right, _ := strings.Cut(line, "-->")
	left = strings.TrimSpace(left)
	start, ok := read(left)
	if !ok {
		return 0, 0, cueFault(index, "“%s” is no start time; write it as %s.", left, example)
	}
	right, _, _ = strings.Cut(strings.ReplaceAll(strings.TrimSpace(right), "\t", " "), " ")
	end, ok = read(right)
	if !ok {
		return 0, 0, cueFault(index, "“%s” is no end time; write it as %s.", right, example)
	}
	return start, end, nil
}

// backwardNotices tells of captions that end before they begin or as they do:
// players never show them, but their words count.
func backwardNotices(cues []Cue) []string {
	var notices []string
	for _, cue := range cues {
		if cue.End <= cue.Start {
			notices = append(notices, cueNotice(cue.Line-1, "the caption ends at %s, which is not after its start at %s, so that players never show it.", captionClock(cue.End, '.'), captionClock(cue.Start, '.')))
		}
	}
	return notices
}

// shortList cuts a list of notices.
func shortList(notices []string) []string {
	if more := len(notices) - maxCaptionFaults; more > 0 {
		return append(notices[:maxCaptionFaults:maxCaptionFaults], fmt.Sprintf("… and %d more lines like these.", more))
	}
	return notices
}

// clockTime puts the parts of a time together; ok is false if one is not a run
// of digits or out of range.
func clockTime(hours, minutes, seconds, thousandths string) (t time.Duration, ok bool) {
	if len(minutes) != 2 || len(seconds) != 2 || len(thousandths) != 3 || len(hours) > 6 {
		return 0, false
	}
	values := make([]time.Duration, 0, 4)
	for _, part := range []string{hours, minutes, seconds, thousandths} {
		var n time.Duration
		for _, c := range part {
			if c < '0' || c > '9' {
				return 0, false
			}
			n = n*10 + time.Duration(c-'0')
		}
		values = append(values, n)
	}
	if values[1] > 59 || values[2] > 59 {
		return 0, false
	}
	return values[0]*time.Hour + values[1]*time.Minute + values[2]*time.Second + values[3]*time.Millisecond, true
}
