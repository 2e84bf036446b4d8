package web_test

import (
	"net/http"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
	"benchproof/kitchen/verify"
	"benchproof/views"
	"benchproof/web"
)

// saidCaptions bakes the scones at a wrong fan figure; all else is as written.
const saidCaptions = `WEBVTT

00:00:01.000 --> 00:00:04.000
Two hundred and fifty grams of self-raising flour

00:00:04.000 --> 00:00:07.000
and fifty grams of cold butter, rubbed in for five minutes.

00:00:07.000 --> 00:00:10.000
A hundred and fifty mil of milk and two knobs of lard.

00:00:10.000 --> 00:00:14.000
Bake at 220 degrees, 190 fan, for 12 minutes.
`

func (s *site) saveCaptions(episode, captions string) {
	s.t.Helper()
	form := s.get(episode + "/cut").body
	pairs := []string{"name", "first cut", "length", "", "captions", captions}
	if strings.Contains(form, `name="revision"`) {
		pairs = append(pairs, "revision", value(s.t, form, "revision"))
	}
	if got := s.post(episode+"/cut", pairs...); got.status != http.StatusSeeOther {
		s.t.Fatalf("saving the cut = %d\n%s", got.status, words(got.body))
	}
}

func TestAWrongTemperatureOnAirIsFoundAndSettled(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	s.saveCaptions(episode, saidCaptions)
	page := s.shows(episode+"/cut", "Bake at 220 °C / 200 °C fan", "0:10.0", "re-record", "4 cues")
	s.shows("/", "said otherwise than written")
	key := value(t, page, "key")

	if got := s.post(episode+"/findings", "key", key, "at", "10", "said", "190 fan", "right", "200 °C fan", "how", "correction"); got.to != episode+"/cut" {
		t.Fatalf("settling = %d to %q\n%s", got.status, got.to, words(got.body))
	}
	const pair = "pair|Bake at 220 °C / 200 °C fan for 12 minutes until risen.|220 degrees 190 fan" // the same slip, seen as a pair
	s.post(episode+"/findings", "key", pair, "how", "correction", "said", "220, 190 fan", "right", "220, 200 fan")
	s.shows(episode+"/release", "190 fan", "200 °C fan") // the correction is in the description
	s.shows(episode+"/cut", "settled: correction")

	s.saveCaptions(episode, strings.Replace(saidCaptions, "rubbed in", "which I rub in", 1)) // a new cut with the old slip
	s.shows(episode+"/cut", "settled: correction")
	if strings.Contains(words(s.get("/").body), "said otherwise") {
		t.Error("a settled finding counts in the season")
	}
	s.post(episode+"/findings", "key", key, "how", "")
	s.shows("/", "said otherwise than written")
}

func TestACutThatSaysWhatIsWrittenIsClear(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	s.saveCaptions(episode, strings.Replace(saidCaptions, "190 fan", "200 fan", 1))
	s.shows(episode+"/cut", "nothing is open")
	if strings.Contains(words(s.get("/").body), "said otherwise") {
		t.Error("a clear cut counts in the season")
	}
}

func TestBrokenCaptionsSayTheLineAndStay(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	got := s.post(episode+"/cut", "captions", "WEBVTT\n\n00:01 -> 00:02\nbroken\n")
	if got.status != http.StatusUnprocessableEntity || !strings.Contains(got.body, "00:01 -&gt; 00:02") || !strings.Contains(strings.ToLower(words(got.body)), "line 3") {
		t.Errorf("broken captions = %d, want 422 with the line and the text kept\n%s", got.status, words(got.body))
	}
}

func TestWhatLooksWrongInCaptionsIsTold(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	s.saveCaptions(episode, "WEBVTT\n\n00:00:02.000 --> 00:00:01.000\nGood morning.\n")
	s.shows(episode+"/cut", "Captions to look at", "Line 3: the caption ends at 00:00:01.000", "Good morning.")
}

func TestAFindingIsSettledOnlyInAWayThereIs(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	for _, pairs := range [][]string{{"key", "k", "how", "ignore"}, {"how", "re-record"}, {"key", "k", "how", "correction", "said", "", "right", ""}} {
		if got := s.post(episode+"/findings", pairs...); got.status != http.StatusUnprocessableEntity {
			t.Errorf("%q = %d, want 422", pairs, got.status)
		}
	}
}

func TestWhatCouldBeReadIsKeptOnlyIfTheCreatorSaysSo(t *testing.T) {
	s := newSite(t)
	episode := s.start("Scones", scones)
	const half = "WEBVTT\n\n00:00:01.000 --> 00:00:02.000\nGood morning.\n\n00:00:03.00 --> 00:00:04.000\nBroken.\n"
	refused := s.post(episode+"/cut", "captions", half)
	if refused.status != http.StatusUnprocessableEntity || !strings.Contains(words(refused.body), "Keep what could be read") {
		t.Fatalf("half a file = %d, want 422 and the offer to keep what could be read", refused.status)
	}
	if got := s.post(episode+"/cut", "captions", half, "partial", "yes"); got.status != http.StatusSeeOther {
		t.Fatalf("keeping it = %d\n%s", got.status, words(got.body))
	}
	s.shows(episode+"/cut", "1 cue", "Good morning.")
	for format, want := range map[string]string{"vtt": "WEBVTT\n\n", "srt": "1\n00:00:01,000 --> 00:00:02,000\nGood morning.\n"} {
		if got := s.get(episode + "/captions." + format); !strings.Contains(strings.ReplaceAll(got.body, "\r\n", "\n"), want) {
			t.Errorf("captions.%s = %d %q", format, got.status, got.body)
		}
	}
	if got := s.get(episode + "/captions.exe"); got.status != http.StatusNotFound {
		t.Errorf("captions.exe = %d, want 404", got.status)
	}
}

func TestFindingMark(t *testing.T) {
	for _, c := range []struct {
		kind verify.Kind
		slip verify.Slip
		want views.Mark
	}{
		{verify.Differs, "", views.Mark{Kind: views.MarkWrong, Text: "differs"}},
		{verify.Differs, verify.UnitSlip, views.Mark{Kind: views.MarkWrong, Text: "differs: the wrong unit?"}},
		{verify.Differs, verify.Tenfold, views.Mark{Kind: views.MarkWrong, Text: "differs: ten times too much or too little?"}},
		{verify.Pair, "", views.Mark{Kind: views.MarkWrong, Text: "the pair disagrees with itself"}},
		{verify.NotSaid, "", views.Mark{Kind: views.MarkLook, Text: "not said"}},
		{verify.NotWritten, "", views.Mark{Kind: views.MarkLook, Text: "not written"}},
	} {
		if diff := cmp.Diff(c.want, web.FindingMark(verify.Finding{Kind: c.kind, Slip: c.slip})); diff != "" {
			t.Errorf("FindingMark(%s %s) (-want +got):\n%s", c.kind, c.slip, diff)
		}
	}
}

func TestCheckedMark(t *testing.T) {
	for _, c := range []struct {
		open, amounts int
		want          views.Mark
	}{
		{0, 1, views.Mark{Kind: views.MarkProved, Text: "1 number tied to the recipe; nothing is open"}},
		{0, 12, views.Mark{Kind: views.MarkProved, Text: "12 numbers tied to the recipe; nothing is open"}},
		{1, 12, views.Mark{Kind: views.MarkLook, Text: "1 thing is said otherwise than written"}},
		{3, 0, views.Mark{Kind: views.MarkLook, Text: "3 things are said otherwise than written"}},
	} {
		if diff := cmp.Diff(c.want, web.CheckedMark(c.open, c.amounts)); diff != "" {
			t.Errorf("CheckedMark(%d, %d) (-want +got):\n%s", c.open, c.amounts, diff)
		}
	}
}

func TestMarkCues(t *testing.T) {
	const text = "fifty grams of butter at 190"
	for _, c := range []struct {
		name    string
		amounts []verify.Amount
		want    string // [] ties, {} is wrong
		wrong   bool
	}{
		{"none", nil, text, false},
		{"one at the start", []verify.Amount{{From: 0, To: 11, Line: "50 g butter", Finding: -1}}, "[fifty grams] of butter at 190", false},
		{"a wrong one at the end", []verify.Amount{{From: 25, To: 28, Line: "Bake at 200.", Finding: 0}}, "fifty grams of butter at {190}", true},
		{"both", []verify.Amount{{From: 0, To: 11, Finding: -1}, {From: 25, To: 28, Finding: 0}}, "[fifty grams] of butter at {190}", true},
		{"overlapping: the first counts", []verify.Amount{{From: 0, To: 11, Finding: -1}, {From: 6, To: 14, Finding: 0}}, "[fifty grams] of butter at 190", false},
		{"past the end", []verify.Amount{{From: 25, To: 99, Finding: 0}}, text, false},
		{"backwards", []verify.Amount{{From: 9, To: 3, Finding: 0}}, text, false},
		{"of a cue that is not there", []verify.Amount{{Cue: 5, From: 0, To: 3, Finding: 0}, {Cue: -1, From: 0, To: 3, Finding: 0}}, text, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			cues := []views.CueRow{{Words: views.Words(text)}}
			web.MarkCues(cues, verify.Report{Amounts: c.amounts})
			got := ""
			for _, run := range cues[0].Words {
				switch {
				case run.New:
					got += "{" + run.Text + "}"
				case run.Heat:
					got += "[" + run.Text + "]"
				default:
					got += run.Text
				}
			}
			if got != c.want || cues[0].Wrong != c.wrong {
				t.Errorf("drawn %q, wrong %v, want %q, %v", got, cues[0].Wrong, c.want, c.wrong)
			}
		})
	}
}

// Where a caption has one number, its line alone is named; where it has several,
// each with its own.
func TestTheTiesOfACaption(t *testing.T) {
	const text = "fifty grams of butter, two eggs, ten minutes"
	for _, c := range []struct {
		name    string
		amounts []verify.Amount
		want    []string
	}{
		{"one", []verify.Amount{{From: 0, To: 11, Line: "50 g butter", Finding: -1}}, []string{"50 g butter"}},
		{"two", []verify.Amount{{From: 0, To: 11, Line: "50 g butter", Finding: -1}, {From: 23, To: 31, Line: "2 eggs", Finding: -1}},
			[]string{"fifty grams → 50 g butter", "two eggs → 2 eggs"}},
		{"two of one line", []verify.Amount{{From: 0, To: 11, Line: "Beat.", Finding: -1}, {From: 33, To: 44, Line: "Beat.", Finding: -1}}, []string{"Beat."}},
		{"one of no line", []verify.Amount{{From: 0, To: 11, Finding: 0}}, nil},
		{"one of two of no line", []verify.Amount{{From: 0, To: 11, Finding: 0}, {From: 23, To: 31, Line: "2 eggs", Finding: -1}}, []string{"2 eggs"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			cues := []views.CueRow{{Words: views.Words(text)}}
			web.MarkCues(cues, verify.Report{Amounts: c.amounts})
			if diff := cmp.Diff(c.want, cues[0].Ties); diff != "" {
				t.Errorf("ties (-want +got):\n%s", diff)
			}
		})
	}
}

func TestCueTime(t *testing.T) {
	for at, want := range map[time.Duration]string{0: "0:00.0", 83450 * time.Millisecond: "1:23.4", 999 * time.Millisecond: "0:00.9", time.Hour + 61*time.Second: "1:01:01.0"} {
		if got := web.CueTime(at); got != want {
			t.Errorf("CueTime(%v) = %q, want %q", at, got, want)
		}
	}
}

func TestTheCutSheetListsEveryCue(t *testing.T) {
	captions, err := script.ReadCaptions(saidCaptions)
	if err != nil {
		t.Fatal(err)
	}
	sheet := web.NewCutSheet(episode.Cut{Captions: saidCaptions, Seconds: 14}, captions, nil)
	if len(sheet.Cues) != 4 || sheet.Summary != "4 cues, 0:14" || sheet.Problems != nil {
		t.Errorf("%d cues, %q, problems %q", len(sheet.Cues), sheet.Summary, sheet.Problems)
	}
	if first := sheet.Cues[0]; first.ID != "cue-1" || first.At != "0:01.0" || first.Secs != "1.00" {
		t.Errorf("the first cue is %+v", first)
	}
	if empty := web.NewCutSheet(episode.Cut{}, script.Captions{}, nil); empty.Summary != "" || empty.Cues != nil {
		t.Errorf("no captions give %+v", empty)
	}
}
