package web_test

import (
	"net/http"
	"testing"
)

// cutOfThree says three segments' narration, with an ad-lib between them.
const cutOfThree = `WEBVTT

00:00:00.500 --> 00:00:06.000
Good morning from the quay, today we bake scones for the whole ferry.

00:00:06.000 --> 00:00:15.000
The captain says hello, and so does his dog, who has opinions.

00:00:15.000 --> 00:00:24.000
Rub the cold butter into the flour with your fingertips until it looks like sand.

00:00:24.000 --> 00:00:40.000
Now they go into a hot oven, and nobody opens the door until they have risen.
`

// threeSegments makes an episode with the narration of cutOfThree.
func threeSegments(s *site) (episode string) {
	episode = s.start("Scones", scones)
	s.post(episode+"/segments", "title", "Hello", "narration", "Good morning from the quay. Today we bake scones for the whole ferry.", "planned", "0:20")
	s.post(episode+"/segments", "title", "The rub", "narration", "Rub the cold butter into the flour with your fingertips until it looks like sand.", "planned", "0:20")
	s.post(episode+"/segments", "title", "The oven", "narration", "Now they go into a hot oven, and nobody opens the door until they have risen.", "planned", "0:20")
	return episode
}

func TestChaptersStandWhereTheCutSaysThem(t *testing.T) {
	s := newSite(t)
	episode := threeSegments(s)
	s.shows(episode+"/release", "0:20 The rub", "0:40 The oven") // as planned, before there is a cut
	s.saveCaptions(episode, cutOfThree)
	s.shows(episode+"/release", "0:00 Hello", "0:15 The rub", "0:24 The oven")
	s.shows(episode+"/cut", "0:15", "begins at", "The rub")
}

func TestAChapterSetByHandStaysWithItsWords(t *testing.T) {
	s := newSite(t)
	episode := threeSegments(s)
	s.saveCaptions(episode, cutOfThree)
	if got := s.post(episode+"/chapters", "segment", "3", "at", "0:26"); got.status != http.StatusSeeOther {
		t.Fatalf("set = %d\n%s", got.status, words(got.body))
	}
	s.shows(episode+"/cut", "set by hand")
	s.shows(episode+"/release", "0:26 The oven")

	s.saveCaptions(episode, longerCut)
	s.shows(episode+"/release", "0:36 The oven")

	s.post(episode+"/chapters", "segment", "3", "at", "0:36", "find", "yes")
	s.shows(episode+"/release", "0:34 The oven")
}

func TestASegmentThatIsNotInTheCutIsAskedAbout(t *testing.T) {
	s := newSite(t)
	episode := threeSegments(s)
	s.post(episode+"/segments", "title", "Washing up", "narration", "Scrub every whisk, basin and rolling pin with scalding water.")
	s.saveCaptions(episode, cutOfThree)
	s.shows(episode+"/cut", "not found in the cut")
	s.shows(episode+"/release", "0:15 The rub", "was not found in the cut")
}

func TestBadChaptersAreRefused(t *testing.T) {
	s := newSite(t)
	episode := threeSegments(s)
	other := s.start("Other", scones)
	for _, c := range []struct {
		path   string
		pairs  []string
		status int
	}{
		{episode, []string{"segment", "1", "at", "soon"}, http.StatusUnprocessableEntity},
		{episode, []string{"segment", "99", "at", "1:00"}, http.StatusNotFound},
		{other, []string{"segment", "1", "at", "1:00"}, http.StatusNotFound},
	} {
		if got := s.post(c.path+"/chapters", c.pairs...); got.status != c.status {
			t.Errorf("%s %q = %d, want %d", c.path, c.pairs, got.status, c.status)
		}
	}
}
