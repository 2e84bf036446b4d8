package store_test

import (
	"bytes"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/alexedwards/scs/v2"

	"benchproof/store"
)

var _ scs.CtxStore = (*store.SessionStore)(nil)

func TestSessionsAreKeptUntilTheyExpire(t *testing.T) {
	st, clock := openClocked(t)
	sessions := st.Sessions()
	find := func(token string) string {
		t.Helper()
		data, found, err := sessions.FindCtx(t.Context(), token)
		ok(t, err)
		if !found {
			if data != nil {
				t.Errorf("an absent session has data %q", data)
			}
			return "none"
		}
		return string(data)
	}
	ok(t, sessions.CommitCtx(t.Context(), "token", []byte("one"), clock.at.Add(time.Hour)))
	same(t, "committed", find("token"), "one")
	same(t, "another token", find("Token"), "none")
	same(t, "no token", find(""), "none")

	ok(t, sessions.CommitCtx(t.Context(), "token", []byte("two"), clock.at.Add(2*time.Hour)))
	clock.pass(2*time.Hour - time.Millisecond)
	same(t, "committed again, just before its end", find("token"), "two")
	clock.pass(time.Millisecond)
	same(t, "at its end", find("token"), "none")
}

func TestSessionsEnd(t *testing.T) {
	st, clock := openClocked(t)
	sessions := st.Sessions()
	for _, token := range []string{"a", "b", "c"} {
		ok(t, sessions.Commit(token, []byte(token), clock.at.Add(time.Hour)))
	}
	ok(t, sessions.Delete("a"))
	ok(t, sessions.Delete("a"))
	found := func(token string) bool {
		_, is, err := sessions.Find(token)
		ok(t, err)
		return is
	}
	if found("a") || !found("b") || !found("c") {
		t.Error("ending one session did not end that one alone")
	}
	ok(t, sessions.DeleteAll(t.Context()))
	if found("b") || found("c") {
		t.Error("a session outlived DeleteAll")
	}
}

// A page that was drawn while its visitor signed out commits its session last.
func TestAnEndedSessionStaysEnded(t *testing.T) {
	st, clock := openClocked(t)
	sessions := st.Sessions()
	ok(t, sessions.Commit("token", []byte("signed in"), clock.at.Add(time.Hour)))
	ok(t, sessions.Delete("token"))
	ok(t, sessions.Commit("token", []byte("signed in"), clock.at.Add(2*time.Hour)))
	if _, found, err := sessions.Find("token"); found || err != nil {
		t.Errorf("the ended session: found %v, %v", found, err)
	}
	var data []byte
	ok(t, st.Raw().QueryRowContext(t.Context(), "SELECT data FROM session").Scan(&data))
	if len(data) != 0 {
		t.Errorf("the ended session still holds %q", data)
	}
}

// Visits that only move the expiry a little are not worth a write.
func TestAnExpiryIsMovedInSteps(t *testing.T) {
	tests := []struct {
		name      string
		after     time.Duration // the second visit
		data      string
		isWritten bool
	}{
		{"a minute later", time.Minute, "data", false},
		{"just under a twentieth of the ten hours", 30*time.Minute - time.Second, "data", false},
		{"a twentieth of them", 30 * time.Minute, "data", true},
		{"a minute later, with other data", time.Minute, "changed", true},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			st, clock := openClocked(t)
			sessions := st.Sessions()
			const idle = 10 * time.Hour
			first := clock.at.Add(idle)
			ok(t, sessions.Commit("token", []byte("data"), first))
			clock.pass(test.after)
			ok(t, sessions.Commit("token", []byte(test.data), clock.at.Add(idle)))
			clock.at = first
			data, found, err := sessions.Find("token")
			ok(t, err)
			if found != test.isWritten || found && string(data) != test.data {
				t.Errorf("past the first expiry: found %v with %q, want %v with %q", found, data, test.isWritten, test.data)
			}
		})
	}
}

func TestASessionCanBeShortened(t *testing.T) {
	st, clock := openClocked(t)
	sessions := st.Sessions()
	ok(t, sessions.Commit("token", []byte("data"), clock.at.Add(10*time.Hour)))
	ok(t, sessions.Commit("token", []byte("data"), clock.at.Add(time.Hour)))
	clock.pass(time.Hour)
	if _, found, err := sessions.Find("token"); found || err != nil {
		t.Errorf("past the shortened expiry: found %v, %v", found, err)
	}
}

func TestDeleteExpiredSessions(t *testing.T) {
	st, clock := openClocked(t)
	sessions := st.Sessions()
	for i, token := range []string{"a", "b", "c"} {
		ok(t, sessions.Commit(token, dataFor(i), clock.at.Add(time.Duration(i+1)*time.Hour)))
	}
	clock.pass(2 * time.Hour)
	if n := must(st.DeleteExpiredSessions(t.Context()))(t); n != 2 {
		t.Errorf("cleared %d, want 2", n)
	}
	if n := must(st.DeleteExpiredSessions(t.Context()))(t); n != 0 {
		t.Errorf("cleared %d more, want 0", n)
	}
	if _, found, err := sessions.Find("c"); !found || err != nil {
		t.Errorf("the live session: found %v, %v", found, err)
	}
}

// dataFor is data for session i, empty but not nil for the first.
func dataFor(i int) []byte { return make([]byte, i) }

// Neither the file nor its log may hold what lets somebody in.
func TestTokensAreNotInTheFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "show.db")
	st := openAt(t, path, nil)
	episodeID := addEpisode(t, st, "one")
	ok(t, st.Sessions().Commit("the-session-token", []byte("data"), time.Now().Add(time.Hour)))
	must(st.AddShareLink(t.Context(), episodeID, "the-share-token"))(t)
	backup := filepath.Join(t.TempDir(), "backup.db")
	ok(t, st.Backup(t.Context(), backup))
	for _, file := range []string{path, path + "-wal", backup} {
		data := must(os.ReadFile(file))(t)
		for _, token := range []string{"the-session-token", "the-share-token"} {
			if bytes.Contains(data, []byte(token)) {
				t.Errorf("%s holds %s", filepath.Base(file), token)
			}
		}
	}
}

// The real session manager, through two requests and a renewed token.
func TestSessionManagerWorksOnTheStore(t *testing.T) {
	manager := scs.New()
	manager.Store = openNow(t).Sessions()
	site := manager.LoadAndSave(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		switch r.URL.Path {
		case "/in":
			ok(t, manager.RenewToken(r.Context()))
			manager.Put(r.Context(), "user", int64(7))
		case "/out":
			ok(t, manager.Destroy(r.Context()))
		}
		if manager.GetInt64(r.Context(), "user") == 7 {
			w.WriteHeader(http.StatusAccepted)
		}
	}))
	visit := func(path string, cookie *http.Cookie) (status int, next *http.Cookie) {
		t.Helper()
		request := httptest.NewRequestWithContext(t.Context(), http.MethodGet, path, nil)
		if cookie != nil {
			request.AddCookie(cookie)
		}
		answer := httptest.NewRecorder()
		site.ServeHTTP(answer, request)
		for _, c := range answer.Result().Cookies() {
			next = c
		}
		return answer.Code, next
	}
	if status, _ := visit("/", nil); status != http.StatusOK {
		t.Errorf("a stranger is let in: %d", status)
	}
	_, cookie := visit("/in", nil)
	if status, _ := visit("/", cookie); status != http.StatusAccepted {
		t.Errorf("the session is lost: %d", status)
	}
	if status, _ := visit("/", &http.Cookie{Name: cookie.Name, Value: cookie.Value + "x"}); status != http.StatusOK {
		t.Errorf("a forged cookie is let in: %d", status)
	}
	visit("/out", cookie)
	if status, _ := visit("/", cookie); status != http.StatusOK {
		t.Errorf("the ended session goes on: %d", status)
	}
}

// openNow opens a store on the machine's clock, which scs goes by.
func openNow(t *testing.T) *store.Store {
	t.Helper()
	return openAt(t, filepath.Join(t.TempDir(), "show.db"), nil)
}
