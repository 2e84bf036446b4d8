package web_test

import (
	"net/http"
	"testing"
)

// longCut says 45 words in 30 seconds of speech, with a silence of ten.
const longCut = `WEBVTT

00:00:00.000 --> 00:00:10.000
one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen

00:00:10.000 --> 00:00:20.000
one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen

00:00:30.000 --> 00:00:40.000
one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen
`

func TestThePaceIsMeasuredFromTheCutAndUsed(t *testing.T) {
	s := newSite(t)
	if got := s.post("/show/pace"); got.status != http.StatusUnprocessableEntity {
		t.Errorf("using a pace nobody measured = %d, want 422", got.status)
	}
	episode := s.start("Scones", scones)
	form := s.get(episode + "/brief").body
	s.post(episode+"/brief", "revision", value(t, form, "revision"), "title", "Scones", "stage", "in the edit")
	s.saveCaptions(episode, longCut)
	s.shows("/show", "Measured from 1 cut: 90 words a minute") // 45 words in 30 s of speech, the silence left out
	if got := s.post("/show/pace"); got.to != "/show" {
		t.Fatalf("using it = %d", got.status)
	}
	s.post(episode+"/segments", "title", "Hello", "narration", "one two three")
	s.shows(episode+"/script", "at 90 words a minute", "spoken 0:02")
}
