package script_test

import (
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/asticode/go-astisub"
	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/script"
)

const plainVTT = "WEBVTT\n\n00:01.000 --> 00:02.000\nUn œuf, 200 g\n"

// utf16Bytes writes text as UTF-16.
func utf16Bytes(text string, high int, mark bool) string {
	units := utf16.Encode([]rune(text))
	if mark {
		units = append([]uint16{0xfeff}, units...)
	}
	out := make([]byte, 2*len(units))
	for i, u := range units {
		out[2*i+high], out[2*i+1-high] = byte(u>>8), byte(u)
	}
	return string(out)
}

func TestReadCaptionsInAnyEncoding(t *testing.T) {
	for name, raw := range map[string]string{
		"UTF-8":                       plainVTT,
		"UTF-8 with its mark":         "\ufeff" + plainVTT,
		"UTF-16, low byte first":      utf16Bytes(plainVTT, 1, true),
		"UTF-16, high byte first":     utf16Bytes(plainVTT, 0, true),
		"UTF-16 without mark, low":    utf16Bytes(plainVTT, 1, false),
		"UTF-16 without mark, high":   utf16Bytes(plainVTT, 0, false),
		"UTF-16 with a byte too many": utf16Bytes(plainVTT, 1, true) + "x",
	} {
		t.Run(name, func(t *testing.T) {
			captionCase{text: raw, want: []string{" | 1s–2s | Un œuf, 200 g"}}.run(t, script.WebVTT)
		})
	}
}

func TestRollingCaptions(t *testing.T) {
	tests := []captionCase{
		{name: "two lines that roll, with short ones between", text: "WEBVTT\n\n" +
			"00:00:01.000 --> 00:00:03.000 align:start position:0%\n \nso<00:00:01.300><c> two</c><00:00:01.600><c> cups</c>\n\n" +
			"00:00:03.000 --> 00:00:03.010\nso two cups\n \n\n" +
			"00:00:03.010 --> 00:00:05.000\nso two cups\nof<00:00:03.300><c> flour</c>\n\n" +
			"00:00:05.000 --> 00:00:05.010\nof flour\n \n\n" +
			"00:00:05.010 --> 00:00:07.000\nof flour\nand stir\n",
			want: []string{" | 1s–3s | so two cups", " | 3.01s–5s | of flour", " | 5.01s–7s | and stir"}},
		{name: "growing word by word", text: "WEBVTT\n\n" +
			"00:01.000 --> 00:02.000\nnow the\n\n00:02.000 --> 00:03.000\nnow the flour\n\n00:03.000 --> 00:04.000\nnow the flour goes\n\n00:04.000 --> 00:05.000\nnow the flour goes in\n",
			want: []string{" | 1s–2s | now the", " | 2s–3s | flour", " | 3s–4s | goes", " | 4s–5s | in"}},
		{name: "a line said twice stays", text: "WEBVTT\n\n" +
			"00:01.000 --> 00:02.000\nstir\n\n00:02.000 --> 00:03.000\nstir\n\n00:03.000 --> 00:04.000\nand wait\n\n00:04.000 --> 00:05.000\nfor the bubbles\n",
			want: []string{" | 1s–2s | stir", " | 2s–3s | stir", " | 3s–4s | and wait", " | 4s–5s | for the bubbles"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) { test.run(t, script.WebVTT) })
	}
}

func TestSpeakers(t *testing.T) {
	text := "WEBVTT\n\n00:01.000 --> 00:02.000\n<v Dee>Two cups</v>\n\n00:02.000 --> 00:03.000\n>> Three?\n\n" +
		"00:03.000 --> 00:04.000\nHOST: Yes: three\n\n00:04.000 --> 00:05.000\n&gt;&gt; WALT: Four\n"
	captions, err := script.ReadCaptions(text)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, cue := range captions.Cues {
		got = append(got, cue.Speaker+" | "+cue.Text)
	}
	if diff := cmp.Diff([]string{"Dee | Two cups", " | Three?", "HOST | Yes: three", "WALT | Four"}, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestReadTranscript(t *testing.T) {
	tests := []captionCase{
		{name: "in brackets", text: "[0:01] Two cups of flour\n[00:00:05] and stir\n",
			want: []string{" | 1s–5s | Two cups of flour", " | 5s–6s | and stir"}},
		{name: "at line start, with a dash", text: "1:00 - Two cups\n1:02.5 – and stir", want: []string{" | 1m0s–1m2s | Two cups", " | 1m2.5s–1m3.5s | and stir"}},
		{name: "alone on a line", text: "0:01\nTwo cups\nof flour\n\n0:04\nand stir", want: []string{" | 1s–4s | Two cups/of flour", " | 4s–5s | and stir"}},
		{name: "hours", text: "(1:02:03) a\n(101:00:00) b", want: []string{" | 1h2m3s–1h2m5s | a", " | 101h0m0s–101h0m1s | b"}},
		{name: "a bad time", text: "0:01 a\n0:75 b\n0:09 c", want: []string{" | 1s–3s | a", " | 9s–10s | c"},
			faults: []string{"Line 2: “0:75” is no time; write it as 1:23 or 01:02:03."}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) { test.run(t, script.Transcript) })
	}
}

// What is written is read the same again, by this reader and by another.
func TestWriteCaptions(t *testing.T) {
	captions, err := script.ReadCaptions("WEBVTT\n\nfirst\n00:01.000 --> 00:02.500\nflour & <b>salt</b>\nif 2 &lt; 3\n\n100:00:00.000 --> 100:00:02.000\na --&gt; b\n")
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{"WebVTT": script.WriteVTT(captions), "SRT": script.WriteSRT(captions)} {
		t.Run(name, func(t *testing.T) {
			again, err := script.ReadCaptions(text)
			if err != nil {
				t.Fatalf("%v in\n%s", err, text)
			}
			if string(again.Format) != name || len(again.Cues) != 2 {
				t.Fatalf("read %d cues as %s:\n%s", len(again.Cues), again.Format, text)
			}
			for i, cue := range again.Cues {
				was := captions.Cues[i]
				if cue.Start != was.Start || cue.End != was.End || name == "WebVTT" && cue.Text != was.Text {
					t.Errorf("cue %d is %v, want %v", i, cue, was)
				}
			}
		})
	}
	subtitles, err := astisub.ReadFromSRT(strings.NewReader(script.WriteSRT(captions)))
	if err != nil || len(subtitles.Items) != 2 || subtitles.Items[0].EndAt != captions.Cues[0].End {
		t.Errorf("another reader: %v, %d items", err, len(subtitles.Items))
	}
	web, err := astisub.ReadFromWebVTT(strings.NewReader(script.WriteVTT(captions)))
	if err != nil || len(web.Items) != 2 || web.Items[0].StartAt != captions.Cues[0].Start {
		t.Errorf("another reader: %v, %d items", err, len(web.Items))
	}
}
