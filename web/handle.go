package web

import (
	"bytes"
	"context"
	"crypto/rand"
	"errors"
	"log/slog"
	"net/http"

	"github.com/a-h/templ"

	"benchproof/kitchen/fault"
)

// handler answers one request, or says why it cannot.
type handler func(w http.ResponseWriter, r *http.Request) error

// do makes an http.Handler of h: one place answers every error.
func (s *Server) do(h handler) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		if err := h(w, r); err != nil {
			s.answerError(w, r, err)
		}
	}
}

// draw renders view into memory first, so that half a page is never sent.
func (s *Server) draw(w http.ResponseWriter, r *http.Request, status int, view templ.Component) error {
	var page bytes.Buffer
	if err := view.Render(r.Context(), &page); err != nil {
		return err
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.WriteHeader(status)
	_, err := page.WriteTo(w)
	if err != nil {
		slog.DebugContext(r.Context(), "the visitor left before the page was sent", "err", err)
	}
	return nil
}

// answerError draws the page for err. Our own defects show a reference that
// the log has too; every other fault says what to change.
func (s *Server) answerError(w http.ResponseWriter, r *http.Request, err error) {
	if errors.Is(err, context.Canceled) && r.Context().Err() != nil {
		return // nobody is there to read it
	}
	kind := fault.KindOf(err)
	status := statusOf(kind)
	say, reference := fault.Say(err), ""
	if kind == fault.Internal {
		reference = rand.Text()[:8]
		say = "Something went wrong on our side. What you typed is still in your browser: go back and try again."
		slog.ErrorContext(r.Context(), "request failed", "reference", reference, "method", r.Method, "path", r.URL.Path, "err", err)
	} else {
		slog.InfoContext(r.Context(), "request refused", "status", status, "method", r.Method, "path", r.URL.Path, "err", err)
	}
	if status == http.StatusServiceUnavailable {
		w.Header().Set("Retry-After", "5")
	}
	if drawErr := s.drawError(w, r, status, say, reference); drawErr != nil {
		slog.ErrorContext(r.Context(), "error page failed", "err", drawErr)
		http.Error(w, say, status)
	}
}

// seeOther sends the browser to path after a form was taken.
func seeOther(w http.ResponseWriter, r *http.Request, path string) error {
	http.Redirect(w, r, path, http.StatusSeeOther)
	return nil
}
