package views

import "strconv"

// ConflictPage is shown when somebody saved in between: nothing is lost, and
// the person decides. Its form posts every row's field with Revision, which is
// the revision saved now, so that a third save is noticed too.
type ConflictPage struct {
	Page
	What     string // "the brief of “Rye knots”"
	Action   string // saves what stands in the fields over what is saved now
	Revision int
	Fields   []ConflictField
	Back     string // goes back, keeping what is saved now
}

// ConflictField is one field: what you typed, and what is saved now.
type ConflictField struct {
	Field          // Value is what you typed
	Saved   string // as it is saved now, in words
	Differs bool
}

// ErrorPage is any other refusal.
type ErrorPage struct {
	Page
	Status    int      // 403, 413, 429, 500 …
	Heading   string   // "That did not work"
	Say       []string // sentences: what is wrong and what to do
	Reference string   // stands in the log too; only with 500
	Back      Link
}

// NotFoundPage is for an address that leads to nothing.
type NotFoundPage struct {
	Page
	Say  string // "There is no episode here. It may have been deleted."
	Back Link
}

// statusText is the status in the gutter, "" if there is none.
func statusText(status int) string {
	if status == 0 {
		return ""
	}
	return strconv.Itoa(status)
}
