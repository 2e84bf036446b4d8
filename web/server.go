package web

import (
	"log/slog"
	"net/http"
	"net/url"
	"strings"
	"time"

	"github.com/alexedwards/scs/v2"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
	"benchproof/store"
)

// Config is what the program decides for the server.
type Config struct {
	PublicURL string // the address viewers use, without a closing slash
	SetupCode string // the one-time code the first visitor must type; "" once an owner exists
	OpenDoor  bool   // the demo: everybody on this machine is the host, nobody signs in
	Now       func() time.Time
	Larder    *food.Larder // the built-in foods
}

// Server answers every request. It is safe for concurrent use.
type Server struct {
	store    *store.Store
	config   Config
	public   *url.URL
	sessions *scs.SessionManager
	hashing  chan struct{} // one slot a hash under way: argon2id takes 64 MiB
	searches searches
}

// New makes a server over an open store. The error is fault.Invalid for a
// public address that is none.
func New(st *store.Store, config Config) (*Server, error) {
	public, err := url.Parse(config.PublicURL)
	if err != nil || public.Host == "" || (public.Scheme != "http" && public.Scheme != "https") {
		return nil, fault.Invalidf("public-url", "The public address %q is not one: write it with http:// or https://, such as https://kitchen.example.org.", config.PublicURL)
	}
	config.PublicURL = strings.TrimRight(config.PublicURL, "/")
	if config.Now == nil {
		config.Now = time.Now
	}
	s := &Server{store: st, config: config, public: public, hashing: make(chan struct{}, 2)}
	s.searches.by = map[int64]*daySearch{}
	s.sessions = newSessions(st, public.Scheme == "https")
	return s, nil
}

// Handler gives the routes with everything around them.
func (s *Server) Handler() http.Handler {
	crossOrigin := http.NewCrossOriginProtection()
	crossOrigin.SetDenyHandler(s.do(func(http.ResponseWriter, *http.Request) error {
		return &fault.Error{Kind: fault.Forbidden, Say: "This form came from another site, so nothing was done. Open the page here and send it again."}
	}))
	return recoverPanic(secureHeaders(crossOrigin.Handler(s.routes())))
}

// recoverPanic turns a panic into a logged 500 instead of a dropped connection.
func recoverPanic(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		defer func() {
			cause := recover()
			if cause == nil {
				return
			}
			if cause == http.ErrAbortHandler {
				panic(cause)
			}
			slog.ErrorContext(r.Context(), "panic", "path", r.URL.Path, "cause", cause)
			http.Error(w, "Something went wrong on our side.", http.StatusInternalServerError)
		}()
		next.ServeHTTP(w, r)
	})
}
