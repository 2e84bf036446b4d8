package web_test

import (
	"net/http"
	"strings"
	"testing"
)

func TestALinkIsWithdrawnOnlyByItsOwnEpisode(t *testing.T) {
	s := newSite(t)
	mine, other := s.start("Scones", scones), s.start("Flan", "Flan\n\n4 eggs\n")
	path := s.share(mine)
	if got := s.post(other + "/shares/1/revoke"); got.status != http.StatusNotFound {
		t.Errorf("withdrawn by another episode = %d, want 404", got.status)
	}
	s.shows(path, "Scones")
	if strings.Contains(words(s.get(other+"/release").body), "live") {
		t.Error("another episode lists the link")
	}
}

func TestWithdrawingTwiceDoesNoHarm(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	path := s.share(at)
	s.post(at + "/shares/1/revoke")
	if got := s.post(at + "/shares/1/revoke"); got.status >= 500 {
		t.Errorf("withdrawn twice = %d", got.status)
	}
	if got := s.get(path); got.status != http.StatusNotFound || strings.Contains(got.body, "Scones") {
		t.Errorf("a withdrawn link = %d", got.status)
	}
	s.shows(at+"/release", "withdrawn")
}

func TestTheDescriptionGivesALinkThatOpens(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	first := s.share(at)
	if page := words(s.get(at + "/release").body); !strings.Contains(page, first) {
		t.Error("the new address is not in the description")
	}
	s.post(at + "/shares/1/revoke")
	if page := words(s.get(at + "/release").body); strings.Contains(page, first) {
		t.Error("the description gives a withdrawn address")
	}
	second := s.share(at)
	if page := words(s.get(at + "/release").body); !strings.Contains(page, second) || strings.Contains(page, first) {
		t.Error("the description does not give the second address")
	}
}

func TestAnAddressOfOnesOwnIsLeftAlone(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	form := s.get(at + "/release").body
	s.post(at+"/release", "revision", value(t, form, "revision"), "page", "https://quay.example/scones")
	s.share(at)
	if got := value(t, s.get(at+"/release").body, "page"); got != "https://quay.example/scones" {
		t.Errorf("the recipe page is now %q", got)
	}
}

func TestAViewersPageFollowsTheEpisodeAndNothingElse(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	path := s.share(at)
	s.post(at+"/brief", "revision", value(t, s.get(at+"/brief").body, "revision"), "title", "Secret working title", "stage", "pitched", "notes", "not for viewers", "hook", "nor this")
	s.post(at+"/scale", "revision", value(t, s.get(at+"/recipe").body, "revision"), "factor", "2")
	viewer := s.newClient()
	s.client = viewer
	page := s.shows(path, "Scones", "500 g")
	for _, private := range []string{"Secret working title", "not for viewers", "nor this", "/episodes/", "revision", "sign-out"} {
		if strings.Contains(page, private) {
			t.Errorf("a viewer sees %q", private)
		}
	}
	s.shows(path+"?factor=4&measure=imperial", "oz")
	for _, query := range []string{"?factor=much", "?factor=-1", "?pieces=99999999", "?measure=troy", "?from=x"} {
		if got := s.get(path + query); got.status != http.StatusOK || !strings.Contains(words(got.body), "500 g") {
			t.Errorf("GET %s = %d, want the recipe as it is kept", query, got.status)
		}
	}
}

func TestALinkToADeletedEpisodeIsGone(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	path := s.share(at)
	s.post(at + "/delete")
	for _, gone := range []string{path, path + "/card", path + "/card.pdf"} {
		got := s.get(gone)
		if got.status != http.StatusNotFound || strings.Contains(got.body, "self-raising") {
			t.Errorf("GET %s of a deleted episode = %d, want 404", gone, got.status)
		}
		if cache := got.header.Get("Cache-Control"); strings.Contains(cache, "max-age") {
			t.Errorf("GET %s: that it is gone may be kept: %q", gone, cache)
		}
	}
}

func TestViewersGetNoCookieOfAnyKind(t *testing.T) {
	s := newSite(t)
	path := s.share(s.start("Scones", scones))
	s.client = s.newClient()
	for _, each := range []string{path, path + "/card", path + "/card.pdf", "/s/NEVERWAS", path + "?factor=much"} {
		got := s.get(each)
		if cookie := got.header.Get("Set-Cookie"); cookie != "" {
			t.Errorf("GET %s sets %s", each, cookie)
		}
	}
}

func TestATokenIsNotFoundByAnotherSpelling(t *testing.T) {
	s := newSite(t)
	path := s.share(s.start("Scones", scones))
	for _, other := range []string{strings.ToLower(path), path[:len(path)-1], path + "A", path + "%00", "/s/%25", "/s/" + strings.Repeat("A", 26), "/s/' OR 1=1 --"} {
		if got := s.get(strings.ReplaceAll(other, " ", "%20")); got.status != http.StatusNotFound {
			t.Errorf("GET %s = %d, want 404", other, got.status)
		}
	}
}

// The file's name goes into a header: what a title holds must not end it.
func TestACardsFileNameIsPlainWhateverTheTitle(t *testing.T) {
	for title, want := range map[string]string{
		`=cmd|' /C calc'!A0`:             "cmd-c-calc-a0-a4.pdf",
		`a"; filename="b.exe`:            "a-filename-b-exe-a4.pdf",
		"@SUM(1+1)":                      "sum-1-1-a4.pdf",
		"Ćevapi à la maison":             "evapi-la-maison-a4.pdf",
		"../../up":                       "up-a4.pdf",
		"Scones\u2028Set-Cookie: mine=1": "scones-a4.pdf", // a separator of lines ends the title
	} {
		t.Run(title, func(t *testing.T) {
			s := newSite(t)
			at := s.start("Card", title+"\n\nMakes 8\n\n250 g flour\n\nBake.\n")
			got := s.get(at + "/card.pdf")
			if header := got.header.Get("Content-Disposition"); header != `inline; filename="`+want+`"` {
				t.Errorf("Content-Disposition = %q, want the file %s", header, want)
			}
			if strings.Contains(got.header.Get("Set-Cookie"), "mine") {
				t.Error("the title set a cookie")
			}
		})
	}
}

// The sizes are those of ISO 216 (A4, A5), ANSI/ASME Y14.1 (letter) and, in
// inches, of the index card; 1 pt is 1/72 in.
func TestEveryCardHasItsSize(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	for paper, box := range map[string]string{"a4": "595.28 841.89", "a5": "419.53 595.28", "letter": "612.00 792.00"} {
		got := s.get(at + "/card.pdf?paper=" + paper)
		if !strings.Contains(got.body, "[0 0 "+box+"]") && !strings.Contains(got.body, "[0 0 "+strings.ReplaceAll(box, ".00", "")+"]") {
			t.Errorf("the card on %s has no page of %s pt", paper, box)
		}
		if kind := got.header.Get("Content-Type"); kind != "application/pdf" {
			t.Errorf("the card on %s is %q", paper, kind)
		}
	}
	for _, paper := range []string{"4x6", "a0"} {
		page := s.get(at + "/card?paper=" + paper)
		if paper == "a0" && page.status != http.StatusNotFound {
			t.Errorf("a page on %s = %d, want 404", paper, page.status)
		}
	}
}

func TestTwoChaptersAreNotPublished(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	for _, title := range []string{"Cold open", "The rub"} {
		s.post(at+"/segments", "title", title, "planned", "1:00")
	}
	if page := s.shows(at+"/release", "at least 3 chapters"); strings.Contains(page, "0:00 Cold open") {
		t.Error("a list that platforms would drop is published")
	}
	s.post(at+"/segments", "title", "The bake", "planned", "1:00")
	s.shows(at+"/release", "0:00 Cold open", "1:00 The rub", "2:00 The bake")
}
