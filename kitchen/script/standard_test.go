package script_test

import (
	"strings"
	"testing"

	"benchproof/kitchen/script"
)

// The cases of the web platform's public test suite, folder
// webvtt/parsing/file-parsing, and the steps of W3C WebVTT, section 6, that they
// try, stated as facts in our own words. A case is named by its file there where
// the suite has one; names and contents are from memory, since no copy of the
// suite is kept here.

const (
	times = "00:00:00.000 --> 00:00:01.000"
	after = "00:00:02.000 --> 00:00:03.000"
)

var (
	one = []string{" | 0s–1s | text"}
	two = []string{" | 0s–1s | text", " | 2s–3s | next"}
)

func runVTT(t *testing.T, tests []captionCase) {
	t.Helper()
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) { test.run(t, script.WebVTT) })
	}
}

// untimed is the fault of words that the standard drops for want of times.
func untimed(line, words string) string {
	return "Line " + line + ": “" + words + "” stands without times above it; captions need a line such as 00:01.000 --> 00:03.000."
}

func noStart(line, time string) string {
	return "Line " + line + ": “" + time + "” is no start time; write it as 00:01.000."
}

func noEnd(line, time string) string {
	return "Line " + line + ": “" + time + "” is no end time; write it as 00:01.000."
}

// Section 6.1: a file is WebVTT by its first six characters and what follows.
func TestStandardSignatures(t *testing.T) {
	runVTT(t, []captionCase{
		{name: "signature-bom", text: "\ufeffWEBVTT\n\n" + times + "\ntext", want: one},
		{name: "signature-no-newline", text: "WEBVTT"},
		{name: "signature-space", text: "WEBVTT \n\n" + times + "\ntext", want: one},
		{name: "signature-space-no-newline", text: "WEBVTT "},
		{name: "signature-tab", text: "WEBVTT\t\n\n" + times + "\ntext", want: one},
		{name: "signature-tab-no-newline", text: "WEBVTT\t"},
		{name: "signature-timings", text: "WEBVTT " + times + "\ntext\n\n" + after + "\nnext", want: []string{" | 2s–3s | next"}},
		{name: "signature with words behind a space", text: "WEBVTT is what this is\n\n" + times + "\ntext", want: one},
	})
	for name, text := range map[string]string{
		"signature-invalid":                  "WEBVTT-\n\n",
		"signature-two-boms":                 "\ufeff\ufeffWEBVTT\n\n",
		"signature-websrt":                   "WEBSRT\n\n",
		"signature in small letters":         "webvtt\n\n",
		"signature with a blank before it":   " WEBVTT\n\n",
		"signature on the second line":       "\nWEBVTT\n\n",
		"signature-no-space-before-words":    "WEBVTTwords\n\n",
		"signature with a form feed behind":  "WEBVTT\f\n\n",
		"signature with U+0000 in it":        "WEB\x00VTT\n\n",
		"signature of five characters":       "WEBVT",
		"signature with a colon, as headers": "WEBVTT: captions\n\n",
	} {
		t.Run(name, func(t *testing.T) {
			for _, body := range []string{"", times + "\ntext"} {
				if got, _ := script.ReadCaptions(text + body); got.Format == script.WebVTT {
					t.Errorf("%q is read as WebVTT", text+body)
				}
			}
		})
	}
}

// Section 6.1, "collect a WebVTT block" in the header: up to a blank line or an
// arrow.
func TestStandardHeaders(t *testing.T) {
	runVTT(t, []captionCase{
		{name: "header-garbage", text: "WEBVTT\nfoo\nbar: baz\n\n" + times + "\ntext", want: one},
		{name: "header-space", text: "WEBVTT\n \n\n" + times + "\ntext", want: one},
		{name: "header-tab", text: "WEBVTT\n\t\n\n" + times + "\ntext", want: one},
		{name: "header-timings", text: "WEBVTT\n" + times + "\ntext\n\n" + after + "\nnext", want: two},
		{name: "header with times below other lines", text: "WEBVTT\nKind: captions\n" + times + "\ntext", want: one},
		{name: "regions-old: header lines of an older draft", text: "WEBVTT\nRegion: id=r width=40%\n\n" + times + " region:r\ntext", want: one},
		{name: "stylesheets: one in the header is header", text: "WEBVTT\nSTYLE\n::cue {}\n\n" + times + "\ntext", want: one},
		{name: "header alone", text: "WEBVTT\nfoo"},
		{name: "many blank lines below", text: "WEBVTT\n\n\n\n\n" + times + "\ntext", want: one},
	})
}

// Section 6.1: carriage returns, and both together, are line ends; U+0000 is
// U+FFFD.
func TestStandardCharacters(t *testing.T) {
	lines := "WEBVTT||" + times + "|text||" + after + "|next"
	runVTT(t, []captionCase{
		{name: "newlines, LF", text: strings.ReplaceAll(lines, "|", "\n"), want: two},
		{name: "newlines, CR", text: strings.ReplaceAll(lines, "|", "\r"), want: two},
		{name: "newlines, CR LF", text: strings.ReplaceAll(lines, "|", "\r\n"), want: two},
		{name: "newlines, mixed", text: "WEBVTT\r\n\n" + times + "\rtext\r\r" + after + "\nnext\r\n", want: two},
		{name: "newlines: LF CR are two", text: "WEBVTT\n\r" + times + "\ntext\n\r" + after + "\nnext", want: two},
		{name: "newlines: none at the end", text: "WEBVTT\n\n" + times + "\ntext", want: one},
		{name: "newlines: a line separator is none", text: "WEBVTT\n\n" + times + "\nte\u2028xt", want: []string{" | 0s–1s | te\u2028xt"}},
		{name: "nulls, in the words", text: "WEBVTT\n\n" + times + "\nte\x00xt", want: []string{" | 0s–1s | te\ufffdxt"}},
		{name: "nulls, in an identifier", text: "WEBVTT\n\ni\x00d\n" + times + "\ntext", want: []string{"i\ufffdd | 0s–1s | text"}},
		{name: "nulls, in the header", text: "WEBVTT\x20\x00\n\n" + times + "\ntext", want: one},
		{name: "nulls, in the settings", text: "WEBVTT\n\n" + times + " align:\x00start\ntext", want: one},
		{name: "nulls, in a time", text: "WEBVTT\n\n00:00:00.0\x0000 --> 00:00:01.000\ntext", faults: []string{noStart("3", "00:00:00.0\ufffd00")}},
		{name: "utf8: broken bytes", text: "WEBVTT\n\n" + times + "\nte\xffxt", want: []string{" | 0s–1s | te\ufffdxt"}},
		{name: "utf8: other scripts", text: "WEBVTT\n\n" + times + "\n小麦粉 ½ œuf", want: []string{" | 0s–1s | 小麦粉 ½ œuf"}},
		{name: "spaces: a line of them is no blank line", text: "WEBVTT\n\n" + times + "\ntext\n \n\t\nmore", want: []string{" | 0s–1s | text/more"}},
	})
}

// Section 6.1: an arrow on a block's first line, or on its second below an
// identifier, begins a cue; any later one a block of its own.
func TestStandardBlocks(t *testing.T) {
	runVTT(t, []captionCase{
		{name: "arrows: alone", text: "WEBVTT\n\n-->\n\n" + times + "\ntext", want: one, faults: []string{noStart("3", "")}},
		{name: "arrows: words before it", text: "WEBVTT\n\nfoo-->\n\n" + times + "\ntext", want: one, faults: []string{noStart("3", "foo")}},
		{name: "arrows: words behind it", text: "WEBVTT\n\n-->foo\n" + times + "\ntext", want: one, faults: []string{noStart("3", "")}},
		{name: "arrows: too long", text: "WEBVTT\n\n00:00:00.000 ---> 00:00:01.000\ntext", faults: []string{noStart("3", "00:00:00.000 -")}},
		{name: "arrows: too short", text: "WEBVTT\n\n00:00:00.000 -> 00:00:01.000\ntext", faults: []string{untimed("3", "00:00:00.000 -> 00:00:01.000")}},
		{name: "arrows: parted", text: "WEBVTT\n\n00:00:00.000 -- > 00:00:01.000\ntext", faults: []string{untimed("3", "00:00:00.000 -- > 00:00:01.000")}},
		{name: "arrows: two", text: "WEBVTT\n\n00:00:00.000 -->--> 00:00:01.000\ntext", faults: []string{noEnd("3", "-->")}},
		{name: "arrows: one in an identifier begins no cue", text: "WEBVTT\n\na --> b\n" + times + "\ntext", want: one, faults: []string{noStart("3", "a")}},
		{name: "arrows: one below the words ends them", text: "WEBVTT\n\n" + times + "\ntext\n" + after + "\nnext", want: two},
		{name: "arrows: one in the words ends them too", text: "WEBVTT\n\n" + times + "\ntext\na --> b\nlost", want: one, faults: []string{noStart("5", "a")}},
		{name: "arrows: broken times take the words along", text: "WEBVTT\n\n00:00:00.00 --> 00:00:01.000\nlost\n\n" + after + "\nnext", want: two[1:], faults: []string{noStart("3", "00:00:00.00")}},
		{name: "ids", text: "WEBVTT\n\nan id\n" + times + "\ntext", want: []string{"an id | 0s–1s | text"}},
		{name: "ids: a number, the same twice", text: "WEBVTT\n\n1\n" + times + "\ntext\n\n1\n" + after + "\nnext", want: []string{"1 | 0s–1s | text", "1 | 2s–3s | next"}},
		{name: "ids: with its blanks", text: "WEBVTT\n\n  a  \n" + times + "\ntext", want: []string{"  a   | 0s–1s | text"}},
		{name: "ids: of blanks alone", text: "WEBVTT\n\n \n" + times + "\ntext", want: []string{"  | 0s–1s | text"}},
		{name: "ids: one with a blank line below is none", text: "WEBVTT\n\nan id\n\n" + times + "\ntext", want: one, faults: []string{untimed("3", "an id")}},
		{name: "ids: of two lines are none", text: "WEBVTT\n\nan\nid\n" + times + "\ntext", want: one, faults: []string{untimed("3", "an")}},
		{name: "ids: NOTE above times", text: "WEBVTT\n\nNOTE\n" + times + "\ntext", want: []string{"NOTE | 0s–1s | text"}},
		{name: "ids: STYLE above times", text: "WEBVTT\n\nSTYLE\n" + times + "\ntext", want: []string{"STYLE | 0s–1s | text"}},
		{name: "no blank line between blocks of words and times", text: "WEBVTT\n\nwords\nmore words\n" + times + "\ntext", want: one, faults: []string{untimed("3", "words")}},
		{name: "a cue without words", text: "WEBVTT\n\n" + times + "\n\n" + after + "\nnext", want: []string{" | 0s–1s | ", " | 2s–3s | next"}},
		{name: "overlapping cues", text: "WEBVTT\n\n00:01.000 --> 00:05.000\nA\n\n00:02.000 --> 00:03.000\nB", want: []string{" | 1s–5s | A", " | 2s–3s | B"}},
		{name: "cues out of order, as a track sorts them", text: "WEBVTT\n\n00:04.000 --> 00:05.000\nB\n\n00:01.000 --> 00:02.000\nA", want: []string{" | 1s–2s | A", " | 4s–5s | B"}},
	})
}

// Section 6.3, "collect WebVTT cue timings and settings", and 6.1, "collect a
// WebVTT timestamp".
func TestStandardTimings(t *testing.T) {
	line := func(times string) string { return "WEBVTT\n\n" + times + "\ntext" }
	runVTT(t, []captionCase{
		{name: "timings-eof", text: "WEBVTT\n\n" + times, want: []string{" | 0s–1s | "}},
		{name: "timings-no-hours", text: line("00:00.000 --> 00:01.000"), want: one},
		{name: "timings-omitted-hours, of the end alone", text: line("00:00:00.000 --> 00:01.000"), want: one},
		{name: "timings-138h", text: line("138:00:00.000 --> 138:00:01.000"), want: []string{" | 138h0m0s–138h0m1s | text"}},
		{name: "timings-one-digit-hours", text: line("0:00:00.000 --> 0:00:01.000"), want: one},
		{name: "hours with zeros before them", text: line("0001:00:00.000 --> 0001:00:01.000"), want: []string{" | 1h0m0s–1h0m1s | text"}},
		{name: "hours that a clock cannot count", text: line("1234567:00:00.000 --> 1234567:00:01.000"), faults: []string{noStart("3", "1234567:00:00.000")}},
		{name: "59 minutes and seconds", text: line("59:59.999 --> 60:00:00.000"), want: []string{" | 59m59.999s–60h0m0s | text"}},
		{name: "timings-60: minutes", text: line("00:60:00.000 --> 01:00:01.000"), faults: []string{noStart("3", "00:60:00.000")}},
		{name: "timings-60: seconds", text: line("00:00:00.000 --> 00:00:60.000"), faults: []string{noEnd("3", "00:00:60.000")}},
		{name: "timings-60: sixty on their own would be hours", text: line("60:00.000 --> 61:00.000"), faults: []string{noStart("3", "60:00.000")}},
		{name: "timings-too-short: minutes", text: line("0:00.000 --> 00:01.000"), faults: []string{noStart("3", "0:00.000")}},
		{name: "timings-too-short: seconds", text: line("00:0.000 --> 00:01.000"), faults: []string{noStart("3", "00:0.000")}},
		{name: "timings-too-short: thousandths", text: line("00:00:00.00 --> 00:00:01.000"), faults: []string{noStart("3", "00:00:00.00")}},
		{name: "timings-too-short: no thousandths", text: line("00:00:00 --> 00:00:01"), faults: []string{noStart("3", "00:00:00")}},
		{name: "timings-too-short: seconds alone", text: line("00.000 --> 01.000"), faults: []string{noStart("3", "00.000")}},
		{name: "timings-too-long: minutes below hours", text: line("00:000:00.000 --> 00:00:01.000"), faults: []string{noStart("3", "00:000:00.000")}},
		{name: "timings-too-long: seconds", text: line("00:00:000.000 --> 00:00:01.000"), faults: []string{noStart("3", "00:00:000.000")}},
		{name: "timings-too-long: thousandths", text: line("00:00:00.0000 --> 00:00:01.000"), faults: []string{noStart("3", "00:00:00.0000")}},
		{name: "timings-too-long: thousandths of the end", text: line("00:00:00.000 --> 00:00:01.0000"), faults: []string{noEnd("3", "00:00:01.0000")}},
		{name: "timings-too-long: four parts", text: line("00:00:00:00.000 --> 00:00:01.000"), faults: []string{noStart("3", "00:00:00:00.000")}},
		{name: "timings-negative", text: line("-00:00:01.000 --> 00:00:01.000"), faults: []string{noStart("3", "-00:00:01.000")}},
		{name: "timings-garbage: before the start", text: line("x00:00:00.000 --> 00:00:01.000"), faults: []string{noStart("3", "x00:00:00.000")}},
		{name: "timings-garbage: behind the start", text: line("00:00:00.000 x --> 00:00:01.000"), faults: []string{noStart("3", "00:00:00.000 x")}},
		{name: "timings-garbage: before the end", text: line("00:00:00.000 --> x00:00:01.000"), faults: []string{noEnd("3", "x00:00:01.000")}},
		{name: "timings-garbage: behind the end it is settings", text: line("00:00:00.000 --> 00:00:01.000x"), want: one},
		{name: "timings-non-digits", text: line("0a:00:00.000 --> 00:00:01.000"), faults: []string{noStart("3", "0a:00:00.000")}},
		{name: "digits of other scripts", text: line("٠٠:٠٠:٠٠.٠٠٠ --> 00:00:01.000"), faults: []string{noStart("3", "٠٠:٠٠:٠٠.٠٠٠")}},
		{name: "a comma for the full stop", text: line("00:00:00,000 --> 00:00:01,000"), faults: []string{noStart("3", "00:00:00,000")}},
		{name: "no end", text: line("00:00:00.000 -->"), faults: []string{noEnd("3", "")}},
		{name: "the end at the start: kept", text: line("00:00:01.000 --> 00:00:01.000"), want: []string{" | 1s–1s | text"}},
		{name: "the end before the start: kept", text: line("00:00:01.000 --> 00:00:00.000"), want: []string{" | 1s–0s | text"}},
		{name: "whitespace-chars: none about the arrow", text: line("00:00:00.000-->00:00:01.000"), want: one},
		{name: "whitespace-chars: spaces, tabs, form feeds", text: line(" \t\f00:00:00.000 \t\f--> \t\f00:00:01.000 \t\f"), want: one},
		{name: "whitespace-chars: a vertical tab is none", text: line("00:00:00.000 \v--> 00:00:01.000"), faults: []string{noStart("3", "00:00:00.000")}},
		{name: "whitespace-chars: nor is a space that does not break", text: line("00:00:00.000 -->\u00a000:00:01.000"), faults: []string{noEnd("3", "00:00:01.000")}},
	})
}

// Section 6.3, "parse the WebVTT cue settings": whatever stands behind the
// times, the cue is kept; positions are not.
func TestStandardSettings(t *testing.T) {
	for name, settings := range map[string]string{
		"settings-align": "align:start", "settings-align, unknown": "align:top", "settings-align, empty": "align:",
		"settings-line": "line:-1", "settings-line, percent": "line:50%,end", "settings-line, no number": "line:1.5.5%",
		"settings-position": "position:50%,line-left", "settings-position, over": "position:101%",
		"settings-size": "size:100%", "settings-size, negative": "size:-1%",
		"settings-vertical": "vertical:rl", "settings-vertical, unknown": "vertical:up",
		"settings-region": "region:fred", "settings-region, unknown": "region:nobody",
		"settings-multiple":        "align:start align:end line:0\tline:1 position:10% size:50%",
		"settings without a colon": "align", "settings, a colon alone": ":", "settings, garbage": "%%% <b> &amp; x:y:z",
	} {
		t.Run(name, func(t *testing.T) {
			captionCase{text: "WEBVTT\n\n" + times + " " + settings + "\ntext", want: one}.run(t, script.WebVTT)
		})
	}
}

// Section 6.1: comments, style sheets and regions.
func TestStandardAsides(t *testing.T) {
	runVTT(t, []captionCase{
		{name: "comments", text: "WEBVTT\n\nNOTE\n\nNOTE a comment\nof two lines\n\nNOTE\tanother\n\n" + times + "\ntext\n\nNOTE the end", want: one},
		{name: "comments: NOTES is none", text: "WEBVTT\n\nNOTES\n\n" + times + "\ntext", want: one, faults: []string{untimed("3", "NOTES")}},
		{name: "comments: one with an arrow is dropped to its end", text: "WEBVTT\n\nNOTE a --> b\nof two lines\n\n" + times + "\ntext", want: one},
		{name: "comment-in-cue-text", text: "WEBVTT\n\n" + times + "\ntext\nNOTE this too", want: []string{" | 0s–1s | text/NOTE this too"}},
		{name: "comment-in-cue-text: as the first line", text: "WEBVTT\n\n" + times + "\nNOTE", want: []string{" | 0s–1s | NOTE"}},
		{name: "stylesheets", text: "WEBVTT\n\nSTYLE\n::cue { color: red }\n\nSTYLE \t\n::cue(b) {}\n\n" + times + "\ntext", want: one},
		{name: "stylesheets: one below a cue is dropped", text: "WEBVTT\n\n" + times + "\ntext\n\nSTYLE\n::cue {}", want: one},
		{name: "stylesheets: one below a broken cue is none the less one", text: "WEBVTT\n\n00:00.00 --> 00:01.000\nlost\n\nSTYLE\n::cue {}\n\n" + after + "\nnext", want: two[1:], faults: []string{noStart("3", "00:00.00")}},
		{name: "stylesheets: words behind the name make it none", text: "WEBVTT\n\nSTYLE sheet\n::cue {}\n\n" + times + "\ntext", want: one, faults: []string{untimed("3", "STYLE sheet")}},
		{name: "stylesheets: an arrow ends one", text: "WEBVTT\n\nSTYLE\n::cue {}\n" + times + "\ntext", want: one},
		{name: "regions-id", text: "WEBVTT\n\nREGION\nid:fred width:40%\n\n" + times + " region:fred\ntext", want: one},
		{name: "regions-lines, -width, -regionanchor, -viewportanchor, -scroll", text: "WEBVTT\n\nREGION\nid:r lines:3 width:40%\nregionanchor:0%,100% viewportanchor:10%,90%\nscroll:up\n\n" + times + "\ntext", want: one},
		{name: "regions-edge-case: broken settings", text: "WEBVTT\n\nREGION\nid: lines:x width:400%\n\nREGION\n::\n\n" + times + "\ntext", want: one},
		{name: "regions-edge-case: one below a cue is dropped", text: "WEBVTT\n\n" + times + "\ntext\n\nREGION\nid:r", want: one},
	})
}

// Section 6.4, the tokenizer of cue text.
func TestStandardCueText(t *testing.T) {
	cue := func(text string) string { return "WEBVTT\n\n" + times + "\n" + text }
	says := func(text string) []string { return []string{" | 0s–1s | " + text} }
	runVTT(t, []captionCase{
		{name: "tags: bold, italic, underlined, class, language", text: cue("<b>a</b> <i.x>b</i> <u>c</u> <c.y.z>d</c> <lang en>e</lang>"), want: says("a b c d e")},
		{name: "tags: voice", text: cue("<v Dee>text</v>"), want: one},
		{name: "tags: ruby", text: cue("<ruby>text<rt></rt></ruby>"), want: one},
		{name: "tags: unknown ones go too", text: cue("<x>te</y>xt"), want: one},
		{name: "timestamps", text: cue("te<00:00:00.500>xt<00:00:99.500>"), want: one},
		{name: "tags: one left open runs to the end", text: cue("text<b more\nand more"), want: one},
		{name: "tags: one over two lines", text: cue("te<v\nDee>xt"), want: one},
		{name: "tags: empty", text: cue("te<>xt</>"), want: one},
		{name: "tags: a less-than before a blank is one", text: cue("text< 3 > "), want: one},
		{name: "entities", text: cue("a &amp; b &lt;b&gt; &nbsp;c&lrm;&rlm;"), want: says("a & b <b> \u00a0c")},
		{name: "entities: by number", text: cue("&#189; cup &#xbd;"), want: says("½ cup ½")},
		{name: "entities: none", text: cue("a & b &unknown; c&"), want: says("a & b &unknown; c&")},
		{name: "entities: an arrow made of them is words", text: cue("a --&gt; b"), want: says("a --> b")},
		{name: "a greater-than stays", text: cue("a > b"), want: says("a > b")},
	})
}
