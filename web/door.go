package web

import (
	"context"
	"crypto/subtle"
	"net"
	"net/http"
	"strings"
	"sync"

	"github.com/alexedwards/argon2id"

	"benchproof/kitchen/fault"
	"benchproof/views"
)

// shortestPassword follows NIST SP 800-63B § 5.1.1.2: at least 8 characters,
// no rules of composition.
const shortestPassword = 8

// nobody's hash is compared when the name is unknown, so that the time taken
// does not tell which names exist.
var nobodysHash = sync.OnceValue(func() string {
	hash, err := argon2id.CreateHash("nobody", argon2id.DefaultParams)
	if err != nil {
		panic(err) // only without a source of randomness at start-up
	}
	return hash
})

func (s *Server) showSetup(w http.ResponseWriter, r *http.Request) error {
	if path := s.doorPath(r.Context()); path != "/setup" {
		return seeOther(w, r, path)
	}
	return s.drawSetup(w, r, &typed{}, nil)
}

// setUp makes the owner. The one-time code keeps a passer-by from doing it.
func (s *Server) setUp(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	code, name, password := form.text("code"), form.needed("name", "Give the name you will sign in with."), form.values.Get("password")
	if s.config.SetupCode == "" || subtle.ConstantTimeCompare([]byte(strings.ToUpper(code)), []byte(s.config.SetupCode)) != 1 {
		form.fail("code", "That is not the one-time code. It was printed where the program was started.")
	}
	if len([]rune(password)) < shortestPassword {
		form.fail("password", "Take at least %d characters; a short sentence is good.", shortestPassword)
	}
	show := form.needed("show", "Give the show a name; you can change it later.")
	if err := form.err(); err != nil {
		return s.drawSetup(w, r, form, err)
	}
	id, err := s.addOwner(r.Context(), name, password)
	if err != nil {
		return err
	}
	if err := s.nameShow(r.Context(), show); err != nil {
		return err
	}
	return s.enter(w, r, id, name)
}

func (s *Server) addOwner(ctx context.Context, name, password string) (int64, error) {
	hash, err := s.hash(ctx, password)
	if err != nil {
		return 0, err
	}
	return s.store.AddFirstUser(ctx, name, hash)
}

func (s *Server) nameShow(ctx context.Context, name string) error {
	show, err := s.store.Show(ctx)
	if err != nil {
		return err
	}
	show.Name = name
	return s.store.SaveShow(ctx, show)
}

func (s *Server) showSignIn(w http.ResponseWriter, r *http.Request) error {
	if path := s.doorPath(r.Context()); path != "/sign-in" {
		return seeOther(w, r, path)
	}
	return s.drawSignIn(w, r, &typed{}, nil)
}

func (s *Server) signIn(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	id, ok, err := s.checkPassword(r.Context(), form.text("name"), form.values.Get("password"))
	if err != nil {
		return err
	}
	if !ok {
		form.fail("password", "Name and password do not belong together. Try again; a lost password is replaced with “benchproof user password NAME”.")
		return s.drawSignIn(w, r, form, form.err())
	}
	return s.enter(w, r, id, form.text("name"))
}

// checkPassword tells who name is, if the password is theirs.
func (s *Server) checkPassword(ctx context.Context, name, password string) (id int64, ok bool, err error) {
	user, err := s.store.UserByName(ctx, name)
	hash := user.PasswordHash
	switch {
	case fault.KindOf(err) == fault.NotFound && err != nil:
		hash = nobodysHash()
	case err != nil:
		return 0, false, err
	}
	if err := s.waitToHash(ctx); err != nil {
		return 0, false, err
	}
	defer func() { <-s.hashing }()
	match, err := argon2id.ComparePasswordAndHash(password, hash)
	return user.ID, match && user.ID != 0, err
}

func (s *Server) hash(ctx context.Context, password string) (string, error) {
	if err := s.waitToHash(ctx); err != nil {
		return "", err
	}
	defer func() { <-s.hashing }()
	return argon2id.CreateHash(password, argon2id.DefaultParams)
}

func (s *Server) waitToHash(ctx context.Context) error {
	select {
	case s.hashing <- struct{}{}:
		return nil
	case <-ctx.Done():
		return ctx.Err()
	}
}

// enter signs user id in under a fresh session token.
func (s *Server) enter(w http.ResponseWriter, r *http.Request, id int64, name string) error {
	if err := s.sessions.RenewToken(r.Context()); err != nil {
		return err
	}
	s.sessions.Put(r.Context(), sessionUser, id)
	s.sessions.Put(r.Context(), sessionName, name)
	return seeOther(w, r, "/")
}

func (s *Server) signOut(w http.ResponseWriter, r *http.Request) error {
	if err := s.sessions.Destroy(r.Context()); err != nil {
		return err
	}
	return seeOther(w, r, "/sign-in")
}

// isLoopback tells whether a Host header names this machine itself.
func isLoopback(host string) bool {
	if name, _, err := net.SplitHostPort(host); err == nil {
		host = name
	}
	if host == "localhost" {
		return true
	}
	ip := net.ParseIP(strings.Trim(host, "[]"))
	return ip != nil && ip.IsLoopback()
}

func setupFields() []views.Field {
	return []views.Field{
		{Name: "code", Label: "One-time code", Required: true, Hint: "It was printed where the program was started."},
		{Name: "name", Label: "Your name", Required: true, Autocomplete: "username"},
		{Name: "password", Label: "Password", Kind: views.FieldPassword, Required: true, Autocomplete: "new-password", Hint: "At least 8 characters."},
		{Name: "show", Label: "The show's name", Required: true},
	}
}

func (s *Server) drawSetup(w http.ResponseWriter, r *http.Request, form *typed, err error) error {
	fields := filled(setupFields(), form.values.Get, err)
	return s.draw(w, r, formStatus(err), views.Setup(views.SetupPage{
		Page: views.Page{Title: "Set up"},
		Form: views.Form{ID: "setup", Action: "/setup", Fields: fields, Submit: "Open the kitchen", Problem: formError(err, fields)},
	}))
}

func (s *Server) drawSignIn(w http.ResponseWriter, r *http.Request, form *typed, err error) error {
	fields := filled([]views.Field{
		{Name: "name", Label: "Name", Required: true, Autocomplete: "username"},
		{Name: "password", Label: "Password", Kind: views.FieldPassword, Required: true, Autocomplete: "current-password"},
	}, form.values.Get, err)
	return s.draw(w, r, formStatus(err), views.SignIn(views.SignInPage{
		Page: views.Page{Title: "Sign in"},
		Form: views.Form{ID: "sign-in", Action: "/sign-in", Fields: fields, Submit: "Sign in", Problem: formError(err, fields)},
	}))
}

// formStatus is 200 for a form not sent yet, 422 for a refused one.
func formStatus(err error) int {
	if err != nil {
		return http.StatusUnprocessableEntity
	}
	return http.StatusOK
}
