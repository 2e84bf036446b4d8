package script_test

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"benchproof/kitchen/script"
)

// platformTakes reads a chapter list as a video platform does: it drops the
// whole list where a rule is broken. It shares no code with the room.
func platformTakes(lines []string, end int) bool {
	line := regexp.MustCompile(`^(?:(\d+):)?(\d?\d):(\d\d) (.+)$`)
	var starts []int
	for _, l := range lines {
		parts := line.FindStringSubmatch(l)
		if parts == nil || strings.ContainsAny(parts[4], "<>\n") {
			return false
		}
		at := 0
		for _, part := range parts[1:4] {
			n, _ := strconv.Atoi("0" + part)
			at = at*60 + n
		}
		starts = append(starts, at)
	}
	if len(starts) < 3 || starts[0] != 0 {
		return false
	}
	for i, at := range starts {
		next := end
		if i+1 < len(starts) {
			next = starts[i+1]
		} else if end <= at {
			continue // the last one's length is not known
		}
		if next-at < 10 {
			return false
		}
	}
	return true
}

// TestChaptersAgreeWithThePlatform: a list without problems is one the platform
// takes, and one with problems is not.
func TestChaptersAgreeWithThePlatform(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var marks []script.Mark
		at := rapid.SampledFrom([]int{0, 0, 0, 4}).Draw(t, "start")
		for range rapid.IntRange(1, 6).Draw(t, "marks") {
			length := rapid.SampledFrom([]int{0, 5, 9, 10, 11, 60, 700, 4000}).Draw(t, "length")
			title := rapid.StringMatching(`[a-zA-Z<> ]{0,12}[a-z]`).Draw(t, "title")
			marks = append(marks, script.Mark{At: at, Title: title, Planned: length})
			at += length
		}
		chapters, problems := script.Chapters(marks)
		var lines []string
		for _, c := range chapters {
			lines = append(lines, c.Line())
		}
		if takes := platformTakes(lines, script.Length(marks)); takes != (len(problems) == 0) {
			t.Fatalf("the platform takes it: %v; problems %q in\n%s", takes, problems, strings.Join(lines, "\n"))
		}
	})
}

// srt and vtt write cues the way the formats ask, to be read back.
func srt(starts []int, words []string) string {
	var b strings.Builder
	for i, at := range starts {
		fmt.Fprintf(&b, "%d\r\n%s --> %s\r\n%s\r\n\r\n", i+1, clock(at, ","), clock(at+500, ","), words[i])
	}
	return b.String()
}

func vtt(starts []int, words []string) string {
	var b strings.Builder
	b.WriteString("WEBVTT\n\n")
	for i, at := range starts {
		fmt.Fprintf(&b, "%s --> %s align:start\n%s\n\n", clock(at, "."), clock(at+500, "."), words[i])
	}
	return b.String()
}

// clock writes milliseconds as hh:mm:ss with the mark before the thousandths.
func clock(ms int, mark string) string {
	return fmt.Sprintf("%02d:%02d:%02d%s%03d", ms/3600000, ms/60000%60, ms/1000%60, mark, ms%1000)
}

// TestCaptionsReadBack: what is written in either format is read as it was.
func TestCaptionsReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var starts []int
		var words []string
		at := 0
		for range rapid.IntRange(1, 30).Draw(t, "cues") {
			at += rapid.IntRange(0, 400000).Draw(t, "gap")
			starts = append(starts, at)
			words = append(words, rapid.StringMatching(`[A-Za-z½°é,'][A-Za-z0-9½°é,. '\-]{0,40}[a-z]`).Draw(t, "words"))
		}
		for name, text := range map[string]string{"SRT": srt(starts, words), "WebVTT": vtt(starts, words)} {
			got, err := script.ReadCaptions(text)
			if err != nil || string(got.Format) != name || len(got.Cues) != len(starts) {
				t.Fatalf("%s: %d of %d cues, %v", name, len(got.Cues), len(starts), err)
			}
			for i, cue := range got.Cues {
				start := time.Duration(starts[i]) * time.Millisecond
				if cue.Start != start || cue.End != start+500*time.Millisecond || cue.Text != words[i] {
					t.Fatalf("%s: cue %d is %+v, want %v %q", name, i+1, cue, start, words[i])
				}
			}
		}
	})
}

// BenchmarkReadCaptions bounds drawing the cut of a long video: 2,000 cues are
// about an hour and a half of speech.
func BenchmarkReadCaptions(b *testing.B) {
	for _, n := range []int{200, 2000} {
		var starts []int
		var words []string
		for i := range n {
			starts = append(starts, i*2700)
			words = append(words, "Fold the dough over itself, <i>gently</i>, and wait ten minutes.")
		}
		for name, text := range map[string]string{"SRT": srt(starts, words), "WebVTT": vtt(starts, words)} {
			b.Run(fmt.Sprintf("%s/cues=%d", name, n), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if got, err := script.ReadCaptions(text); err != nil || len(got.Cues) != n {
						b.Fatal(len(got.Cues), err)
					}
				}
			})
		}
	}
}

// BenchmarkWords bounds saving a segment: 2,200 words are a whole script.
func BenchmarkWords(b *testing.B) {
	text := strings.Repeat("Don’t knead it; fold it 3 times, then wait 12.5 minutes. ", 200)
	b.ReportAllocs()
	for b.Loop() {
		if script.Words(text) != 2200 {
			b.Fatal(script.Words(text))
		}
	}
}
