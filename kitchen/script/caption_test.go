package script_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/asticode/go-astisub"
	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/script"
)

// written shows a reading in one line a cue: "id | start–end | text".
func written(c script.Captions) []string {
	var lines []string
	for _, cue := range c.Cues {
		lines = append(lines, fmt.Sprintf("%s | %v–%v | %s", cue.ID, cue.Start, cue.End, strings.ReplaceAll(cue.Text, "\n", "/")))
	}
	return lines
}

func says(err error) []string {
	var sentences []string
	for _, f := range fault.All(err) {
		sentences = append(sentences, f.Say)
	}
	return sentences
}

type captionCase struct {
	name   string
	text   string
	want   []string
	faults []string
}

func (c captionCase) run(t *testing.T, format script.CaptionFormat) {
	t.Helper()
	got, err := script.ReadCaptions(c.text)
	if got.Format != format {
		t.Errorf("format = %q, want %q", got.Format, format)
	}
	if diff := cmp.Diff(c.want, written(got)); diff != "" {
		t.Errorf("cues (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff(c.faults, says(err)); diff != "" {
		t.Errorf("faults (-want +got):\n%s", diff)
	}
	for _, f := range fault.All(err) {
		if f.Kind != fault.Invalid || f.Field != "captions" {
			t.Errorf("fault %v is of kind %v about %q, want Invalid about captions", f, f.Kind, f.Field)
		}
	}
}

// TestReadWebVTT holds the reader against W3C WebVTT: section 4.1 (signature,
// times, identifiers, NOTE, STYLE, REGION), 6.1 (blocks) and 6.4 (tags).
func TestReadWebVTT(t *testing.T) {
	const noTimes = "stands without times above it; captions need a line such as 00:01.000 --> 00:03.000."
	for _, test := range []captionCase{
		{"signature alone", "WEBVTT", nil, nil},
		{"byte-order mark, header text, CRLF", "\ufeffWEBVTT - ferry stop 3\r\n\r\n00:01.000 --> 00:02.500\r\nHello.\r\n",
			[]string{" | 1s–2.5s | Hello."}, nil},
		{"CR line ends and a tab behind the signature", "WEBVTT\tx\r\r00:01.000 --> 00:02.000\rHello\ragain\r",
			[]string{" | 1s–2s | Hello/again"}, nil},
		{"header lines", "WEBVTT\nKind: captions\nLanguage: en\n\n00:01.000 --> 00:02.000\nHello",
			[]string{" | 1s–2s | Hello"}, nil},
		{"hours of two digits and more", "WEBVTT\n\n01:02:03.004 --> 100:00:00.000\nLong",
			[]string{" | 1h2m3.004s–100h0m0s | Long"}, nil},
		{"identifiers, numbered and named", "WEBVTT\n\n1\n00:01.000 --> 00:02.000\nA\n\nthe dough\n00:02.000 --> 00:03.000\nB",
			[]string{"1 | 1s–2s | A", "the dough | 2s–3s | B"}, nil},
		{"settings, with and without a colon", "WEBVTT\n\n00:01.000 --> 00:02.000 align:start position:10%,line-left nonsense\nA",
			[]string{" | 1s–2s | A"}, nil},
		{"tabs about the arrow", "WEBVTT\n\n00:01.000\t-->\t00:02.000\talign:end\nA", []string{" | 1s–2s | A"}, nil},
		{"notes, style and region", "WEBVTT\n\nSTYLE\n::cue { color: lime }\n\nREGION\nid:fred\n\nNOTE\nto self\n\nNOTE one line\n\n00:01.000 --> 00:02.000\nA\n\nNOTE\nend",
			[]string{" | 1s–2s | A"}, nil},
		{"words that look like blocks", "WEBVTT\n\n00:01.000 --> 00:02.000\nNOTE this down\nSTYLE matters",
			[]string{" | 1s–2s | NOTE this down/STYLE matters"}, nil},
		{"tags, voices, classes, inner times", "WEBVTT\n\n00:01.000 --> 00:05.000\n<v Host>Add <b>200 g</b> of <c.loud>flour</c>, <00:02.000>then <i>wait</i>.",
			[]string{" | 1s–5s | Add 200 g of flour, then wait."}, nil},
		{"character references", "WEBVTT\n\n00:01.000 --> 00:05.000\nsalt &amp; pepper, &lt; 5&nbsp;g&lrm;, cr&egrave;me",
			[]string{" | 1s–5s | salt & pepper, < 5\u00a0g, crème"}, nil},
		{"a tag left open runs to the end", "WEBVTT\n\n00:01.000 --> 00:05.000\nstir <until thick", []string{" | 1s–5s | stir"}, nil},
		{"cues may overlap and be empty", "WEBVTT\n\n00:01.000 --> 00:05.000\nA\n\n00:01.000 --> 00:03.000\n\n00:02.000 --> 00:03.000\nC",
			[]string{" | 1s–5s | A", " | 1s–3s | ", " | 2s–3s | C"}, nil},
		{"an arrow below the words begins a cue", "WEBVTT\n\n00:01.000 --> 00:02.000\nA\n00:02.000 --> 00:03.000\nB",
			[]string{" | 1s–2s | A", " | 2s–3s | B"}, nil},
		{"U+0000 is replaced", "WEBVTT\n\n00:01.000 --> 00:02.000\nA\x00B", []string{" | 1s–2s | A\ufffdB"}, nil},

		{"a comma for the full stop", "WEBVTT\n\n00:01,000 --> 00:02,000\nA\n\n00:03.000 --> 00:04.000\nB",
			[]string{" | 3s–4s | B"}, []string{"Line 3: “00:01,000” is no start time; write it as 00:01.000."}},
		{"one digit of hours, which only writers may not use", "WEBVTT\n\n1:00:01.000 --> 1:00:02.000\nA", []string{" | 1h0m1s–1h0m2s | A"}, nil},
		{"sixty seconds", "WEBVTT\n\n00:01.000 --> 00:60.000\nA", nil,
			[]string{"Line 3: “00:60.000” is no end time; write it as 00:01.000."}},
		{"no end", "WEBVTT\n\n00:01.000 -->\nA", nil, []string{"Line 3: “” is no end time; write it as 00:01.000."}},
		{"ends at its start", "WEBVTT\n\nx\n00:02.000 --> 00:02.000\nA", []string{"x | 2s–2s | A"}, nil},
		{"ends before its start", "WEBVTT\n\n00:02.000 --> 00:01.000\nA", []string{" | 2s–1s | A"}, nil},
		{"starts go back", "WEBVTT\n\n00:05.000 --> 00:06.000\nA\n\n00:04.000 --> 00:07.000\nB",
			[]string{" | 4s–7s | B", " | 5s–6s | A"}, nil},
		{"words without times", "WEBVTT\n\nHello there, all of you aboard the ferry\n\n00:01.000 --> 00:02.000\nA",
			[]string{" | 1s–2s | A"}, []string{"Line 3: “Hello there, all of you aboar…” " + noTimes}},
		{"style behind the first cue", "WEBVTT\n\n00:01.000 --> 00:02.000\nA\n\nSTYLE\n::cue {}",
			[]string{" | 1s–2s | A"}, nil},
	} {
		t.Run(test.name, func(t *testing.T) { test.run(t, script.WebVTT) })
	}
}

// TestReadSRT: SRT has no specification; the shape is number,
// hh:mm:ss,mmm --> hh:mm:ss,mmm, words, blank line ("SRT File Format").
func TestReadSRT(t *testing.T) {
	for _, test := range []captionCase{
		{"two captions", "1\n00:00:01,000 --> 00:00:02,500\nHello.\n\n2\n00:00:03,000 --> 00:00:04,000\nFirst line\nsecond line\n",
			[]string{"1 | 1s–2.5s | Hello.", "2 | 3s–4s | First line/second line"}, nil},
		{"byte-order mark and CRLF", "\ufeff1\r\n00:00:01,000 --> 00:00:02,000\r\nHello.\r\n\r\n",
			[]string{"1 | 1s–2s | Hello."}, nil},
		{"full stops, places, tags", "1\n00:00:01.000 --> 00:00:02.000 X1:10 X2:20\n{\\an8}<i>Stir</i> <font color=\"#fff\">well</font>, 3 < 5\n",
			[]string{"1 | 1s–2s | Stir well, 3 < 5"}, nil},
		{"no numbers", "00:00:01,000 --> 00:00:02,000\nA\n\n00:00:02,000 --> 00:00:03,000\nB",
			[]string{" | 1s–2s | A", " | 2s–3s | B"}, nil},
		{"no blank line between", "1\n00:00:01,000 --> 00:00:02,000\nA\n2\n00:00:02,000 --> 00:00:03,000\nB",
			[]string{"1 | 1s–2s | A", "2 | 2s–3s | B"}, nil},
		{"a blank line in the words", "1\n00:00:01,000 --> 00:00:02,000\nA\n\nmore of it\n\n2\n00:00:02,000 --> 00:00:03,000\nB",
			[]string{"1 | 1s–2s | A/more of it", "2 | 2s–3s | B"}, nil},
		{"words that are a number", "1\n00:00:01,000 --> 00:00:02,000\n200\n\n2\n00:00:02,000 --> 00:00:03,000\nB",
			[]string{"1 | 1s–2s | 200", "2 | 2s–3s | B"}, nil},
		{"out of order is put in order", "1\n00:00:05,000 --> 00:00:06,000\nlater\n\n2\n00:00:01,000 --> 00:00:02,000\nsooner",
			[]string{"2 | 1s–2s | sooner", "1 | 5s–6s | later"}, nil},

		{"a broken time loses no other caption", "1\n00:00:01 --> 00:00:02\nA\n\n2\n00:00:02,000 --> 00:00:03,000\nB",
			[]string{"2 | 2s–3s | B"}, []string{"Line 2: “00:00:01” is no start time; write it as 00:00:01,000."}},
		{"ends before it starts", "1\n00:00:03,000 --> 00:00:02,000\nA", []string{"1 | 3s–2s | A"}, nil},
		{"a number without times", "1\n00:00:01,000 --> 00:00:02,000\nA\n\n2\nB\n\n3\n00:00:05,000 --> 00:00:06,000\nC",
			[]string{"1 | 1s–2s | A", "3 | 5s–6s | C"},
			[]string{"Line 5: caption 2 has no times; a line such as 00:00:01,000 --> 00:00:03,000 must follow its number."}},
		{"words before the first times", "Ferry stop\n\n1\n00:00:01,000 --> 00:00:02,000\nA",
			[]string{"1 | 1s–2s | A"}, []string{"Line 1: “Ferry stop” stands before the first times."}},
	} {
		t.Run(test.name, func(t *testing.T) { test.run(t, script.SRT) })
	}
}

func TestReadCaptionsRefusesOtherText(t *testing.T) {
	for _, text := range []string{"", "\ufeff", " \r\n\t\n"} {
		if got, err := script.ReadCaptions(text); err != nil || len(got.Cues) != 0 || got.Format != "" {
			t.Errorf("ReadCaptions(%q) = %v, %v; want nothing", text, got, err)
		}
	}
	for _, text := range []string{"Hello", "WEBVTTX\n\nhello", "webvtt\n"} {
		got, err := script.ReadCaptions(text)
		if fault.KindOf(err) != fault.Invalid || !strings.HasPrefix(fault.Say(err), "These are no captions") || len(got.Cues) != 0 {
			t.Errorf("ReadCaptions(%q) = %v, %v; want it refused", text, got, err)
		}
	}
}

func TestReadCaptionsListsAFewFaults(t *testing.T) {
	text := "WEBVTT\n\n" + strings.Repeat("00:02.00 --> 00:03.000\nA\n\n", 25)
	_, err := script.ReadCaptions(text)
	all := says(err)
	if len(all) != 11 || all[10] != "… and 15 more lines like these." {
		t.Errorf("ReadCaptions lists %d faults, the last %q", len(all), all[len(all)-1])
	}
}

// What is read, but looks wrong, is told and refuses nothing.
func TestNotices(t *testing.T) {
	const never = "so that players never show it."
	tests := []struct {
		name, text string
		want       []string
	}{
		{"nothing", "WEBVTT\n\n00:01.000 --> 00:02.000\nA", nil},
		{"ends at its start", "WEBVTT\n\nx\n00:02.000 --> 00:02.000\nA",
			[]string{"Line 4: the caption ends at 00:00:02.000, which is not after its start at 00:00:02.000, " + never}},
		{"ends before its start, in SRT", "1\n00:00:03,000 --> 00:00:02,000\nA",
			[]string{"Line 2: the caption ends at 00:00:02.000, which is not after its start at 00:00:03.000, " + never}},
		{"a style sheet below a caption", "WEBVTT\n\n00:01.000 --> 00:02.000\nA\n\nSTYLE\n::cue {}",
			[]string{"Line 6: “STYLE” stands below the first caption, where players pass over it."}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got, err := script.ReadCaptions(test.text)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(test.want, got.Notices); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
	many, err := script.ReadCaptions("WEBVTT\n\n" + strings.Repeat("00:02.000 --> 00:01.000\nA\n\n", 25))
	if n := len(many.Notices); err != nil || n != 11 || many.Notices[10] != "… and 15 more lines like these." {
		t.Errorf("%d notices, %v", n, err)
	}
}

func TestCaptionsEndAndWords(t *testing.T) {
	got, err := script.ReadCaptions("WEBVTT\n\n00:01.000 --> 00:09.000\nFold the <b>dough</b>,\ndon't knead it.\n\n00:02.000 --> 00:03.000\nB")
	if err != nil {
		t.Fatal(err)
	}
	if got.End() != 9*time.Second {
		t.Errorf("End = %v, want 9s", got.End())
	}
	if words := got.Cues[0].Words(); !slices.Equal(words, []string{"Fold", "the", "dough", "don't", "knead", "it"}) {
		t.Errorf("Words = %q", words)
	}
	if got.Cues[0].Line != 3 || got.Cues[1].Line != 7 {
		t.Errorf("lines = %d, %d, want 3, 7", got.Cues[0].Line, got.Cues[1].Line)
	}
}

const ferryVTT = `WEBVTT - Ferry Stop Kitchen

NOTE first cut

STYLE
::cue { color: white }

1
00:00:00.000 --> 00:00:03.200 align:middle
Good morning from the landing stage.

2
00:00:03.200 --> 00:00:07.000
<i>Today</i>: two and a half cups
of bread flour.

3
00:01:59.990 --> 01:00:00.010
Bake at 180 &amp; wait.
`

const ferrySRT = `1
00:00:00,000 --> 00:00:03,200
Good morning from the landing stage.

2
00:00:03,200 --> 00:00:07,000
<i>Today</i>: two and a half cups
of bread flour.

3
00:01:59,990 --> 01:00:00,010
Bake at 180 and wait.
`

// TestCaptionsAgreeWithAnotherReader compares sound files with what the
// go-astisub library reads in them. It cannot be the reader itself: it panics
// on an arrow without an end, lets ends stand before starts, and takes the
// words "NOTE this" and "STYLE" inside a cue for blocks.
func TestCaptionsAgreeWithAnotherReader(t *testing.T) {
	webVTT, err := astisub.ReadFromWebVTT(strings.NewReader(ferryVTT))
	if err != nil {
		t.Fatal(err)
	}
	srt, err := astisub.ReadFromSRT(strings.NewReader(ferrySRT))
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		name, text string
		other      *astisub.Subtitles
	}{{"WebVTT", ferryVTT, webVTT}, {"SRT", ferrySRT, srt}} {
		t.Run(test.name, func(t *testing.T) {
			ours, err := script.ReadCaptions(test.text)
			if err != nil {
				t.Fatal(err)
			}
			var theirs script.Captions
			for _, item := range test.other.Items {
				var lines []string
				for _, line := range item.Lines {
					lines = append(lines, line.String())
				}
				theirs.Cues = append(theirs.Cues, script.Cue{ID: fmt.Sprint(item.Index), Start: item.StartAt, End: item.EndAt, Text: strings.Join(lines, "\n")})
			}
			if diff := cmp.Diff(written(theirs), written(ours)); diff != "" {
				t.Errorf("go-astisub and we differ (-theirs +ours):\n%s", diff)
			}
		})
	}
}
