package demo_test

import (
	"slices"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
	"benchproof/seed/demo"
)

// captioned lists the cuts that have captions, with their episodes.
func captioned(show demo.Show) (episodes []demo.Episode) {
	for _, e := range show.Episodes {
		if slices.ContainsFunc(e.Cuts, func(c episode.Cut) bool { return c.Captions != "" }) {
			episodes = append(episodes, e)
		}
	}
	return episodes
}

// Limits: two lines, and 37 characters a line, the Teletext limit that the BBC
// Subtitle Guidelines give; six to eight minutes is the demo's own promise.
func TestCaptionsAreWellFormed(t *testing.T) {
	show := newShow(t)
	if got := captioned(show); len(got) < 2 {
		t.Fatalf("%d episodes have captions, want one released and one in the edit", len(got))
	}
	for _, e := range captioned(show) {
		cut := e.Cuts[0]
		captions, err := script.ReadCaptions(cut.Captions)
		if err != nil {
			t.Fatalf("episode %d: %v", e.Brief.Number, err)
		}
		if cut.Seconds < 6*60 || cut.Seconds > 8*60 {
			t.Errorf("episode %d: cut of %d s, want 6 to 8 minutes", e.Brief.Number, cut.Seconds)
		}
		length := time.Duration(cut.Seconds) * time.Second
		if captions.End() > length || captions.End() < length-20*time.Second {
			t.Errorf("episode %d: captions end at %s in a cut of %s", e.Brief.Number, captions.End(), length)
		}
		var free time.Duration
		for _, cue := range captions.Cues {
			if cue.Start < free {
				t.Errorf("episode %d, line %d: starts at %s, before the cue above ends", e.Brief.Number, cue.Line, cue.Start)
			}
			free = cue.End
			checkCue(t, e.Brief.Number, cue)
		}
	}
}

func checkCue(t *testing.T, number int, cue script.Cue) {
	t.Helper()
	lines := strings.Split(cue.Text, "\n")
	if len(lines) > 2 {
		t.Errorf("episode %d, line %d: %d lines, at most 2", number, cue.Line, len(lines))
	}
	for _, line := range lines {
		if n := utf8.RuneCountInString(line); n > 37 {
			t.Errorf("episode %d, line %d: %q has %d characters, at most 37", number, cue.Line, line, n)
		}
	}
	// BBC Subtitle Guidelines § 4.1: at least about 0.3 s a word.
	if stays, least := cue.End-cue.Start, time.Duration(len(cue.Words()))*300*time.Millisecond; stays < least {
		t.Errorf("episode %d, line %d: %q stays %s, want at least %s", number, cue.Line, cue.Text, stays, least)
	}
}

// The captions of a cut are the narration as spoken: nearly every word of the
// narration is in them, in digits where captions use digits.
func TestCaptionsFollowTheNarration(t *testing.T) {
	for _, e := range captioned(newShow(t)) {
		said := map[string]int{}
		captions, err := script.ReadCaptions(e.Cuts[0].Captions)
		if err != nil {
			t.Fatal(err)
		}
		for _, cue := range captions.Cues {
			for _, word := range cue.Words() {
				said[strings.ToLower(word)]++
			}
		}
		total, missing := 0, 0
		for _, s := range e.Segments {
			for _, word := range script.WordsOf(s.Narration) {
				total++
				if word = strings.ToLower(word); said[word] == 0 {
					missing++
				} else {
					said[word]--
				}
			}
		}
		if missing*100 > total*10 {
			t.Errorf("episode %d: %d of %d words of the narration are not in the captions", e.Brief.Number, missing, total)
		}
	}
}

// The one planned slip, for the check of said against written.
func TestTheOneSlipOnAir(t *testing.T) {
	show := newShow(t)
	tart := show.Episodes[slices.IndexFunc(show.Episodes, func(e demo.Episode) bool { return e.Recipe == "tart" })]
	captions, err := script.ReadCaptions(tart.Cuts[0].Captions)
	if err != nil {
		t.Fatal(err)
	}
	found := 0
	for _, cue := range captions.Cues {
		if strings.Contains(strings.ReplaceAll(cue.Text, "\n", " "), "180 with a fan") {
			found++
		}
	}
	if found != 1 {
		t.Errorf("the fan is said as 180 in %d cues, want 1", found)
	}
	text := versions(show, "tart")[tart.Version-1].Text
	if !strings.Contains(text, "190 °C / 170 °C fan") || strings.Contains(text, "180") {
		t.Error("the tart's recipe must say 190 °C / 170 °C fan and nowhere 180")
	}
}
