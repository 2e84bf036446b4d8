package web_test

import (
	"net/http"
	"strings"
	"testing"
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
