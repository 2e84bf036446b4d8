package web

import (
	"context"
	"log/slog"
	"net/http"
	"time"

	"github.com/alexedwards/scs/v2"

	"benchproof/kitchen/fault"
	"benchproof/store"
)

const (
	sessionUser  = "user"
	sessionName  = "name"
	sessionFlash = "flash"
	sessionUndo  = "undo"
	sessionShare = "share"
)

// newSessions keeps sessions in the store: thirty days, or ten without a visit.
func newSessions(st *store.Store, secure bool) *scs.SessionManager {
	m := scs.New()
	m.Store = st.Sessions()
	m.Lifetime = 30 * 24 * time.Hour
	m.IdleTimeout = 10 * 24 * time.Hour
	m.Cookie.Name = "benchproof"
	m.Cookie.HttpOnly = true
	m.Cookie.SameSite = http.SameSiteLaxMode
	m.Cookie.Secure = secure
	m.ErrorFunc = func(w http.ResponseWriter, r *http.Request, err error) {
		slog.ErrorContext(r.Context(), "session", "err", err)
		http.Error(w, "The session could not be read. Try again in a moment.", http.StatusServiceUnavailable)
	}
	return m
}

// hasSession marks a request that carries a session; share pages carry none.
type hasSession struct{}

// withSession loads the session before, and saves it after.
func (s *Server) withSession(next http.Handler) http.Handler {
	return s.sessions.LoadAndSave(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		next.ServeHTTP(w, r.WithContext(context.WithValue(r.Context(), hasSession{}, true)))
	}))
}

// isSignedIn tells whether the visitor may see the show.
func (s *Server) isSignedIn(r *http.Request) bool {
	switch {
	case r.Context().Value(hasSession{}) == nil:
		return false
	case s.config.OpenDoor:
		return isLoopback(r.Host)
	}
	return s.sessions.GetInt64(r.Context(), sessionUser) != 0
}

// signedIn lets only a signed-in person pass; others are sent to sign in, and
// the very first visitor to set up.
func (s *Server) signedIn(next http.Handler) http.Handler {
	return s.do(func(w http.ResponseWriter, r *http.Request) error {
		switch {
		case s.isSignedIn(r):
			next.ServeHTTP(w, r)
			return nil
		case s.config.OpenDoor:
			return &fault.Error{Kind: fault.Forbidden, Say: "The demo answers only on this machine: open it as 127.0.0.1 or localhost."}
		}
		return seeOther(w, r, s.doorPath(r.Context()))
	})
}

// doorPath is where somebody goes who is not signed in.
func (s *Server) doorPath(ctx context.Context) string {
	if n, err := s.store.CountUsers(ctx); err == nil && n == 0 {
		return "/setup"
	}
	return "/sign-in"
}

// flash keeps a sentence for the next page, with the address that undoes what
// was done ("" for nothing to undo).
func (s *Server) flash(r *http.Request, text, undo string) {
	s.sessions.Put(r.Context(), sessionFlash, text)
	s.sessions.Put(r.Context(), sessionUndo, undo)
}
