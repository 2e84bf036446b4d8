package views

// SetupPage is the first visit: the one-time code makes the owner. Form's
// fields are code, name, password and show.
type SetupPage struct {
	Page
	Form Form
}

// SignInPage asks for name and password.
type SignInPage struct {
	Page
	Form Form
}
