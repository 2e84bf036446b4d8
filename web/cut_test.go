package web_test

import (
	"net/http"
	"strings"
	"testing"

	"benchproof/kitchen/episode"
)

// The length is as typed; else the end of the last caption.
func TestTheLengthOfACut(t *testing.T) {
	const captions = "WEBVTT\n\n00:00:01.000 --> 00:01:35.500\nGood morning.\n"
	for _, c := range []struct {
		name, length, captions string
		want                   int
	}{
		{"from the captions", "", captions, 95},
		{"as typed", "2:10", captions, 130},
		{"in seconds", "140", captions, 140},
		{"without captions", "8:35", "", 515},
		{"not known", "", "", 0},
		{"blanks are no captions", "", " \n\t\n", 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := newSite(t)
			at := s.start("Scones", scones)
			if got := s.post(at+"/cut", "name", "first", "length", c.length, "captions", c.captions); got.status != http.StatusSeeOther {
				t.Fatalf("saving = %d\n%s", got.status, words(got.body))
			}
			cut := must(s.store.CurrentCut(t.Context(), 1))
			if cut.Seconds != c.want || strings.TrimSpace(cut.Captions) != strings.TrimSpace(c.captions) {
				t.Errorf("kept %d s and %q, want %d s", cut.Seconds, cut.Captions, c.want)
			}
		})
	}
}

func TestCaptionsAreSentUnderTheEpisodesName(t *testing.T) {
	s := newSite(t)
	at := s.start("Crème & “scones”", scones)
	if got := s.get(at + "/captions.vtt"); got.status != http.StatusNotFound {
		t.Errorf("captions of no cut = %d, want 404", got.status)
	}
	s.saveCaptions(at, "1\n00:00:01,000 --> 00:00:02,000\nDEE: Good <i>morning</i>.\n")
	for _, c := range []struct{ format, kind, want string }{
		{"vtt", "text/vtt; charset=utf-8", "WEBVTT\n\n1\n00:00:01.000 --> 00:00:02.000\n<v DEE>Good morning.\n"},
		{"srt", "application/x-subrip; charset=utf-8", "1\n00:00:01,000 --> 00:00:02,000\nGood morning.\n\n"},
	} {
		got := s.get(at + "/captions." + c.format)
		if got.body != c.want || got.header.Get("Content-Type") != c.kind {
			t.Errorf("captions.%s is %s:\n%q, want %q", c.format, got.header.Get("Content-Type"), got.body, c.want)
		}
		if name := got.header.Get("Content-Disposition"); !strings.HasSuffix(name, "."+c.format+`"`) || strings.ContainsAny(name, "“&") {
			t.Errorf("captions.%s are named %s", c.format, name)
		}
	}
}

// A cut that somebody saved meanwhile is not overwritten, and the captions typed
// are shown beside it.
func TestACutSavedMeanwhileIsKept(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	s.saveCaptions(at, cutOfThree)
	revision := value(t, s.get(at+"/cut").body, "revision")
	s.saveCaptions(at, longerCut)
	late := s.post(at+"/cut", "revision", revision, "name", "mine", "captions", "WEBVTT\n\n00:00:01.000 --> 00:00:02.000\nMine.\n")
	if late.status != http.StatusConflict || !strings.Contains(words(late.body), "Mine.") {
		t.Errorf("the late save = %d, want 409 with what was typed", late.status)
	}
	if cut := must(s.store.CurrentCut(t.Context(), 1)); cut.Captions != longerCut || cut.Name != "first cut" {
		t.Errorf("kept %q with %q", cut.Name, cut.Captions)
	}
}

// Only cuts that are edited or out tell the pace, the newest five of them.
func TestWhichCutsTellThePace(t *testing.T) {
	s := newSite(t)
	ctx := t.Context()
	fast := strings.NewReplacer("00:00:10", "00:00:05", "00:00:20", "00:00:10", "00:00:30", "00:00:15", "00:00:40", "00:00:20").Replace(longCut)
	for i := range 6 {
		id := must(s.store.AddEpisode(ctx, episode.Episode{Title: "An episode", Number: i + 1, Stage: episode.InTheEdit, ReleaseOn: today.AddDate(0, 0, 7*i)}))
		captions := fast
		if i == 0 { // the oldest
			captions = longCut
		}
		must(s.store.AddCut(ctx, episode.Cut{EpisodeID: id, Captions: captions}))
	}
	pitched := must(s.store.AddEpisode(ctx, episode.Episode{Title: "Only pitched", Number: 9, Stage: episode.Pitched}))
	must(s.store.AddCut(ctx, episode.Cut{EpisodeID: pitched, Captions: longCut}))
	must(s.store.AddEpisode(ctx, episode.Episode{Title: "Without a cut", Number: 10, Stage: episode.Released, ReleaseOn: today.AddDate(1, 0, 0)}))
	s.shows("/show", "Measured from 5 cuts: 180 words a minute") // 45 words in 15 s
}
