package store_test

import (
	"testing"
	"time"

	"benchproof/kitchen/fault"
	"benchproof/store"
)

func TestShareLinks(t *testing.T) {
	st, clock := openClocked(t)
	episodeID, other := addEpisode(t, st, "one"), addEpisode(t, st, "two")
	first := must(st.AddShareLink(t.Context(), episodeID, "token 1"))(t)
	firstAt := clock.stored()
	clock.pass(time.Hour)
	second := must(st.AddShareLink(t.Context(), episodeID, "token 2"))(t)
	must(st.AddShareLink(t.Context(), other, "token 3"))(t)

	want := store.ShareLink{ID: first, EpisodeID: episodeID, CreatedAt: firstAt}
	same(t, "found", must(st.ShareLink(t.Context(), "token 1"))(t), want)
	same(t, "listed, the newest first", must(st.ShareLinks(t.Context(), episodeID))(t),
		[]store.ShareLink{{ID: second, EpisodeID: episodeID, CreatedAt: clock.stored()}, want})

	clock.pass(time.Hour)
	ok(t, st.RevokeShareLink(t.Context(), first))
	want.RevokedAt = clock.stored()
	clock.pass(time.Hour)
	ok(t, st.RevokeShareLink(t.Context(), first))
	same(t, "revoked twice, listed", must(st.ShareLinks(t.Context(), episodeID))(t)[1], want)
	for _, token := range []string{"token 1", "", "token", "TOKEN 2", "%"} {
		_, err := st.ShareLink(t.Context(), token)
		wantFault(t, err, fault.NotFound)
	}
	must(st.ShareLink(t.Context(), "token 2"))(t)
	wantFault(t, st.RevokeShareLink(t.Context(), 4711), fault.NotFound)
}

func TestShareLinksOfADeletedEpisodeFindNothing(t *testing.T) {
	st := open(t)
	id := addEpisode(t, st, "one")
	must(st.AddShareLink(t.Context(), id, "token"))(t)
	ok(t, st.DeleteEpisode(t.Context(), id))
	_, err := st.ShareLink(t.Context(), "token")
	wantFault(t, err, fault.NotFound)
	if got := must(st.ShareLinks(t.Context(), id))(t); len(got) != 0 {
		t.Errorf("ShareLinks = %+v", got)
	}
	ok(t, st.Restore(t.Context(), store.EpisodeKind, id))
	must(st.ShareLink(t.Context(), "token"))(t)
}

func TestATokenIsGivenOnce(t *testing.T) {
	st := open(t)
	must(st.AddShareLink(t.Context(), addEpisode(t, st, "one"), "token"))(t)
	_, err := st.AddShareLink(t.Context(), addEpisode(t, st, "two"), "token")
	wantFault(t, err, fault.Conflict)
}
