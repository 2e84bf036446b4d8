package fault

import (
	"errors"
	"fmt"
)

// Kind sorts faults by what the answer to them must be.
type Kind int

// The zero kind is Internal: our own defect, never shown in words.
const (
	Internal  Kind = iota
	Invalid        // what was typed cannot be used; Say tells what to change
	Malformed      // the request itself is broken: not a form we sent
	NotFound       // no such thing, or a bad or foreign id
	Conflict       // somebody saved in between; both texts are kept
	Forbidden      // known, and not allowed
	TooLarge       // more bytes than the limit Say names
	TooMany        // too many tries in a short time
	Busy           // try again in a moment
)

// Error is one fault. Its zero value is an internal fault without a cause.
type Error struct {
	Kind  Kind
	Field string // the form field it is about; "" for the whole
	Say   string // what is wrong and what to change, in the person's words
	Err   error  // cause, logged, never shown; may be nil
}

// Error gives the sentence for the person, then the cause, for logs.
func (e *Error) Error() string {
	switch {
	case e.Err == nil:
		return e.Say
	case e.Say == "":
		return e.Err.Error()
	}
	return e.Say + ": " + e.Err.Error()
}

// Unwrap gives the cause, nil if there is none.
func (e *Error) Unwrap() error { return e.Err }

// Invalidf makes an Invalid fault about one field ("" for the whole).
func Invalidf(field, format string, args ...any) *Error {
	return &Error{Kind: Invalid, Field: field, Say: fmt.Sprintf(format, args...)}
}

// NotFoundf makes a NotFound fault.
func NotFoundf(format string, args ...any) *Error {
	return &Error{Kind: NotFound, Say: fmt.Sprintf(format, args...)}
}

// Conflictf makes a Conflict fault.
func Conflictf(format string, args ...any) *Error {
	return &Error{Kind: Conflict, Say: fmt.Sprintf(format, args...)}
}

// KindOf tells the kind of the first fault in err's chain, Internal if none.
func KindOf(err error) Kind {
	if e := of(err); e != nil {
		return e.Kind
	}
	return Internal
}

// Say gives the sentence of the first fault in err's chain, "" if none.
func Say(err error) string {
	if e := of(err); e != nil {
		return e.Say
	}
	return ""
}

// Field gives the field of the first fault in err's chain, "" if none.
func Field(err error) string {
	if e := of(err); e != nil {
		return e.Field
	}
	return ""
}

// All gives every fault in err's tree, in order: a form can have several.
func All(err error) []*Error {
	if err == nil {
		return nil
	}
	if e, ok := err.(*Error); ok {
		return []*Error{e}
	}
	switch u := err.(type) {
	case interface{ Unwrap() []error }:
		var all []*Error
		for _, each := range u.Unwrap() {
			all = append(all, All(each)...)
		}
		return all
	case interface{ Unwrap() error }:
		return All(u.Unwrap())
	}
	return nil
}

func of(err error) *Error {
	var e *Error
	if errors.As(err, &e) {
		return e
	}
	return nil
}
