package web_test

import (
	"net/http"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/script"
	"benchproof/views"
	"benchproof/web"
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

// A time set by hand is followed back and forth without slipping, and told of
// where the new cut no longer says its words.
func TestAChapterSetByHandIsFollowedOrToldOf(t *testing.T) {
	s := newSite(t)
	episode := threeSegments(s)
	s.saveCaptions(episode, cutOfThree)
	s.post(episode+"/chapters", "segment", "3", "at", "0:26")
	shifted := strings.NewReplacer("00:00:24.000", "00:00:24.700", "00:00:40.000", "00:00:40.700").Replace(cutOfThree)
	for range 3 {
		s.saveCaptions(episode, shifted)
		s.shows(episode+"/cut", "The cut is saved.", "0:27")
		s.saveCaptions(episode, cutOfThree)
		s.shows(episode+"/cut", "The cut is saved.", "0:26")
	}
	s.saveCaptions(episode, "WEBVTT\n\n00:00:01.000 --> 00:00:04.000\nSomething else altogether, in few words.\n")
	s.shows(episode+"/cut", "What you set for 1 chapter could not be followed", "0:26", "set by hand")
}

func TestStartMark(t *testing.T) {
	for _, c := range []struct {
		name  string
		start script.Start
		isSet bool
		want  views.Mark
		asks  bool
	}{
		{"sure", script.Start{Found: true, Confidence: 1}, false, views.Mark{}, false},
		{"just sure enough", script.Start{Found: true, Confidence: script.LowConfidence}, false, views.Mark{}, false},
		{"a guess", script.Start{Found: true, Confidence: 0.39}, false, views.Mark{Kind: views.MarkLook, Text: "a guess. Is it so?"}, true},
		{"not found", script.Start{}, false, views.Mark{Kind: views.MarkLook, Text: "not found in the cut. Where does it begin?"}, true},
		{"set", script.Start{Found: true, Confidence: 1}, true, views.Mark{Text: "set by hand"}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, asks := web.StartMark(c.start, c.isSet)
			if diff := cmp.Diff(c.want, got); diff != "" || asks != c.asks {
				t.Errorf("asks %v, want %v (-want +got):\n%s", asks, c.asks, diff)
			}
		})
	}
}

// What asks to be looked at is open, the rest folded.
func TestChaptersFoldUnlessTheyAsk(t *testing.T) {
	s := newSite(t)
	episode := threeSegments(s)
	s.saveCaptions(episode, longerCut)
	if body := s.get(episode + "/cut").body; strings.Contains(body, `id="chapters" open`) || !strings.Contains(body, `id="chapters"`) {
		t.Error("chapters that are sure are not folded")
	}
	s.post(episode+"/segments", "title", "Washing up", "narration", "Scrub every whisk, basin and rolling pin with scalding water.")
	body := s.get(episode + "/cut").body
	if !strings.Contains(body, `id="chapters" open`) || strings.Count(body, `<details class="more" open`) != 1 {
		t.Error("a segment that is not found is folded away")
	}
	s.shows(episode+"/cut", "1 to look at")
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
