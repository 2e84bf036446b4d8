package script

import (
	"html"
	"regexp"
	"strings"
)

// speakerMark is how captions in capitals name who speaks: ">>", "DEE:",
// ">> HOST 2:". Common practice, no source.
var speakerMark = regexp.MustCompile(`^\s*(?:(?:>>+|»)\s*)?([A-Z][A-Z0-9 .'’-]{1,24}:)?\s*`)

// voiceTag is a WebVTT voice span: <v Dee>, <v.loud Dee>. W3C WebVTT, section
// 4.2.2.
var voiceTag = regexp.MustCompile(`<v(?:\.[^ \t>]*)?[ \t]+([^>]*)>`)

// unmark takes the marks of speakers off captions; marked tells whether there
// were any.
func unmark(cues []Cue) (marked bool) {
	for i := range cues {
		words, speaker := withoutSpeakers(cues[i].Text)
		marked = marked || words != cues[i].Text
		cues[i].Text = words
		if cues[i].Speaker == "" {
			cues[i].Speaker = speaker
		}
	}
	return marked
}

// withoutSpeakers takes the marks of speakers off the lines of a caption and
// gives the first name.
func withoutSpeakers(text string) (words, speaker string) {
	if !strings.ContainsAny(text, ">»:") {
		return text, ""
	}
	lines := strings.Split(text, "\n")
	for i, line := range lines {
		m := speakerMark.FindStringSubmatchIndex(line)
		if m == nil || m[1] == 0 {
			continue
		}
		marked := strings.ContainsAny(line[:m[1]], ">»")
		if m[2] < 0 && !marked {
			continue
		}
		if m[2] >= 0 && speaker == "" {
			speaker = nameText(strings.TrimSuffix(line[m[2]:m[3]], ":"))
		}
		lines[i] = line[m[1]:]
	}
	return tidyText(strings.Join(lines, "\n")), speaker
}

// voiceOf is the name in the first voice span of a cue's raw text, "" without.
func voiceOf(raw string) string {
	if m := voiceTag.FindStringSubmatch(raw); m != nil {
		return nameText(html.UnescapeString(m[1]))
	}
	return ""
}

// nameText is a name on one line, with single blanks.
func nameText(name string) string { return strings.Join(strings.Fields(name), " ") }
