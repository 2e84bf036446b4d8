package script

import (
	"html"
	"strings"
)

// isVTTSignature tells whether line begins a WebVTT file: "WEBVTT", alone or
// followed by a space or tab and anything. W3C WebVTT, section 4.1.
func isVTTSignature(line string) bool {
	rest, found := strings.CutPrefix(line, "WEBVTT")
	return found && (rest == "" || rest[0] == ' ' || rest[0] == '\t')
}

// readVTT reads the blocks of a WebVTT file, whose first line is its signature,
// by the standard's parser (W3C WebVTT, section 6.1). What that drops, words and
// all, is a fault; what a person should know, and no more, is a notice.
func readVTT(lines []string) (cues []Cue, faults []error, notices []string) {
	at := 1
	for at < len(lines) && lines[at] != "" && !hasArrow(lines[at]) {
		at++ // header lines that later versions may define
	}
	for at < len(lines) {
		if lines[at] == "" {
			at++
			continue
		}
		block := vttBlock(lines, at)
		at = block.end
		if block.times >= 0 {
			cue, err := vttCue(lines, block)
			switch {
			case err == nil:
				cues = append(cues, cue)
			case block.name(lines) != "NOTE":
				faults = append(faults, err)
			}
			continue
		}
		switch block.name(lines) {
		case "NOTE":
		case "STYLE", "REGION":
			if len(cues) > 0 {
				notices = append(notices, cueNotice(block.start, "“%s” stands below the first caption, where players pass over it.", excerpt(lines[block.start])))
			}
		default:
			faults = append(faults, cueFault(block.start, "“%s” stands without times above it; captions need a line such as 00:01.000 --> 00:03.000.", excerpt(lines[block.start])))
		}
	}
	return cues, faults, notices
}

// block is a run of lines up to a blank one, as indexes into the file's lines.
type block struct {
	start, end int // end is excluded
	times      int // the line with the arrow; −1 if none
}

// vttBlock finds the block that begins at start. A cue's times stand on its
// first line or, below an identifier, on its second; a later arrow begins a
// block of its own. W3C WebVTT, section 6.1, "collect a WebVTT block".
func vttBlock(lines []string, start int) block {
	b := block{start: start, times: -1}
	for at := start; at < len(lines) && lines[at] != ""; at++ {
		if hasArrow(lines[at]) {
			if at > start+1 || b.times >= 0 {
				b.end = at
				return b
			}
			b.times = at
		}
		b.end = at + 1
	}
	return b
}

// name is NOTE, STYLE or REGION for a block that the standard knows by its first
// line, else "".
func (b block) name(lines []string) string {
	first := lines[b.start]
	name, rest, _ := strings.Cut(strings.ReplaceAll(first, "\t", " "), " ")
	switch name {
	case "NOTE":
		return name
	case "STYLE", "REGION":
		if strings.Trim(rest, asciiBlanks) == "" {
			return name
		}
	}
	return ""
}

func vttCue(lines []string, b block) (Cue, error) {
	start, end, err := vttTimes(lines[b.times], b.times)
	if err != nil {
		return Cue{}, err
	}
	cue := Cue{Start: start, End: end, Line: b.times + 1}
	if b.times > b.start {
		cue.ID = lines[b.start]
	}
	raw := strings.Join(lines[b.times+1:b.end], "\n")
	cue.Speaker = voiceOf(raw)
	cue.Text = vttText(raw)
	return cue, nil
}

// vttText takes the tags out of a cue's text and resolves its character
// references. A tag left open runs to the end of the text, as the standard's
// tokenizer has it (section 6.4).
func vttText(text string) string {
	var b strings.Builder
	for text != "" {
		before, tag, found := strings.Cut(text, "<")
		b.WriteString(before)
		if !found {
			break
		}
		_, text, _ = strings.Cut(tag, ">")
	}
	return tidyText(html.UnescapeString(b.String()))
}

// tidyText drops the marks that only steer the direction of writing, blanks at
// the ends of lines, and empty lines.
func tidyText(text string) string {
	text = strings.NewReplacer("\u200e", "", "\u200f", "", "\r", "\n").Replace(text)
	var kept []string
	for line := range strings.SplitSeq(text, "\n") {
		if line = strings.TrimSpace(line); line != "" {
			kept = append(kept, line)
		}
	}
	return strings.Join(kept, "\n")
}

// excerpt is the beginning of a line, short enough to stand in a sentence.
func excerpt(line string) string {
	runes := []rune(strings.TrimSpace(line))
	if len(runes) > 30 {
		return string(runes[:29]) + "…"
	}
	return string(runes)
}
