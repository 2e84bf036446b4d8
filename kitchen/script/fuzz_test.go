package script_test

import (
	"cmp"
	"slices"
	"strings"
	"testing"
	"time"

	gocmp "github.com/google/go-cmp/cmp"

	"benchproof/kitchen/script"
)

// FuzzReadCaptions: no input panics, cues stand in order, each names the line
// its arrow is on, and what is written of them reads the same.
func FuzzReadCaptions(f *testing.F) {
	f.Add(ferryVTT)
	f.Add(ferrySRT)
	f.Add("WEBVTT\n\n-->\n\nx\n-->")
	f.Add("1\n-->\n2\n00:00:01,000 --> 00:00:02,000")
	f.Add("WEBVTT\n\n00:01.000 --> 00:02.000\n<v Dee &amp; co>HOST: hi &#13;&lt;b&gt;\n\n00:02.000 --> 00:03.000\nhi\nthere\n")
	f.Add("0:01 >> HOST: so\n[0:05] so\n(1:00:00.5) - so it goes")
	f.Add("0:00\n0:00 A  B :0")
	f.Add("\xff\xfeW\x00E\x00B\x00V\x00T\x00T\x00")
	f.Fuzz(func(t *testing.T, text string) {
		captions, err := script.ReadCaptions(text)
		lines := strings.Split(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(text), "\n")
		isUTF8 := !strings.Contains(text, "\x00") && !strings.HasPrefix(text, "\xff\xfe") && !strings.HasPrefix(text, "\xfe\xff")
		if !slices.IsSortedFunc(captions.Cues, func(a, b script.Cue) int { return cmp.Compare(a.Start, b.Start) }) {
			t.Fatal("the cues are out of order")
		}
		for _, cue := range captions.Cues {
			if isUTF8 && captions.Format != script.Transcript && !strings.Contains(lines[cue.Line-1], "-->") {
				t.Fatalf("cue %+v names line %q", cue, lines[cue.Line-1])
			}
		}
		if arrows := strings.Count(text, "-->"); err == nil && arrows > 0 && captions.Format == script.SRT && len(captions.Cues) == 0 {
			t.Fatalf("%d arrows, no cue and no fault", arrows)
		}
		readsTheSame(t, captions)
	})
}

// readsTheSame holds what is written of captions against them.
func readsTheSame(t *testing.T, captions script.Captions) {
	t.Helper()
	want := clean(captions)
	again, err := script.ReadCaptions(script.WriteVTT(captions))
	if diff := gocmp.Diff(want, clean(again)); err != nil || diff != "" {
		t.Fatalf("WebVTT, %v (-written +read):\n%s", err, diff)
	}
	for i := range want { // SRT numbers, and names nobody
		want[i].ID, want[i].Speaker = "", ""
	}
	again, err = script.ReadCaptions(script.WriteSRT(captions))
	got := clean(again)
	for i := range got {
		got[i].ID = ""
	}
	if err != nil || len(again.Notices) > 0 {
		t.Fatalf("SRT: %v, notices %q", err, again.Notices)
	}
	if diff := gocmp.Diff(want, got); diff != "" && !hasMarks(captions) {
		t.Fatalf("SRT (-written +read):\n%s", diff)
	}
}

// clean are the cues that a clean file can hold: with words, and an end after
// the start.
func clean(captions script.Captions) (cues []script.Cue) {
	for _, cue := range captions.Cues {
		if cue.Text == "" {
			continue
		}
		cue.Line = 0
		cue.End = max(cue.End, cue.Start+time.Millisecond)
		if strings.Contains(cue.ID, "-->") {
			cue.ID = ""
		}
		cues = append(cues, cue)
	}
	return cues
}

// hasMarks tells whether the words hold what an SRT reader takes for a mark.
func hasMarks(captions script.Captions) bool {
	return slices.ContainsFunc(captions.Cues, func(c script.Cue) bool {
		return strings.ContainsAny(c.Text, "<{") || strings.Contains(c.Text, "-->")
	})
}
