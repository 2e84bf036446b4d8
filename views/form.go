package views

import (
	"strconv"
	"unicode/utf8"

	"github.com/a-h/templ"
)

// Form is a form against the rule: labels in the gutter, fields beside.
// It posts the fields by their names, and "revision" if Revision is not 0.
type Form struct {
	ID       string // prefix of the fields' ids, unique on the page: "brief"
	Title    string // a heading over the form; "" if the page's own serves
	Action   string // where it posts
	Get      bool   // true sends it as a query instead (a search)
	Revision int    // the revision the fields were read at; 0 for a new thing
	Fields   []Field
	Submit   string // the first button: "Save brief"
	Buttons  []Button
	Cancel   string // where "Cancel" leads; "" draws none
	Problem  string // what is wrong with the whole; "" if nothing
	Guard    bool   // true asks before leaving with unsaved changes
}

// Button is a further button of a form.
type Button struct {
	Text   string
	Action string // posts the form there instead; "" keeps the form's
	Name   string // sent with Value if not ""
	Value  string
}

// FieldKind is how a field is drawn.
type FieldKind string

// The kinds of field. FieldWhole and FieldDecimal are drawn as text with a number pad,
// so that "1½" and "3/2" can be typed.
const (
	FieldText     FieldKind = ""
	FieldArea     FieldKind = "area"     // several lines
	FieldPlain    FieldKind = "plain"    // several lines, drawn in the figures' face: captions, lists
	FieldWhole    FieldKind = "whole"    // whole number
	FieldDecimal  FieldKind = "decimal"  // any number, fractions too
	FieldDate     FieldKind = "date"     // value 2026-03-14
	FieldSelect   FieldKind = "select"   // one of Options
	FieldCheck    FieldKind = "check"    // Value "yes" if on; sends "yes"
	FieldURL      FieldKind = "url"      // an address
	FieldPassword FieldKind = "password" // never drawn back
	FieldHidden   FieldKind = "hidden"   // sent, not drawn
)

// Field is one field of a form. Value is what was typed, even if refused.
type Field struct {
	Name         string
	Label        string
	Value        string
	Kind         FieldKind
	Options      []Option // for FieldSelect
	Suggestions  []string // offered while typing; anything else may be typed
	Hint         string   // how to fill it in; "" if the label says it
	Error        string   // why it was refused and what to change; "" if it was not
	Unit         string   // after the field: "minutes", "g"
	Rows         int      // of FieldArea and FieldPlain; 0 is 3
	Limit        int      // characters counted beside the field; 0 counts none. Nothing is cut off.
	Required     bool     // marked as needed; the server decides
	Autocomplete string   // the HTML token: "current-password"; "" is off
	Placeholder  string   // an example, never the only label
}

// Option is one choice of a FieldSelect.
type Option struct {
	Value string
	Label string
}

// Refused tells whether the form came back with something to change.
func (f Form) Refused() bool {
	if f.Problem != "" {
		return true
	}
	for _, each := range f.Fields {
		if each.Error != "" {
			return true
		}
	}
	return false
}

// untitled is the form without its heading.
func (f Form) untitled() Form {
	f.Title = ""
	return f
}

// fieldID is a field's id on the page.
func (f Form) fieldID(each Field) string {
	if f.ID == "" {
		return "f-" + each.Name
	}
	return f.ID + "-" + each.Name
}

// summaryID is the id of the list of what to change.
func (f Form) summaryID() string {
	if f.ID == "" {
		return "f-refused"
	}
	return f.ID + "-refused"
}

// method is the HTML method.
func (f Form) method() string {
	if f.Get {
		return "get"
	}
	return "post"
}

// describedBy names the elements that explain the field, "" if none.
func (f Field) describedBy(id string) string {
	by := ""
	if f.Hint != "" {
		by = id + "-hint"
	}
	if f.Error != "" {
		if by != "" {
			by += " "
		}
		by += id + "-error"
	}
	return by
}

// rows is the field's height in lines.
func (f Field) rows() string {
	if f.Rows == 0 {
		return "3"
	}
	return strconv.Itoa(f.Rows)
}

// inputType is the HTML type of a one-line field.
func (f Field) inputType() string {
	switch f.Kind {
	case FieldDate, FieldURL, FieldPassword:
		return string(f.Kind)
	}
	return "text"
}

// inputMode is the keyboard a phone should show, "" for its usual one.
func (f Field) inputMode() string {
	switch f.Kind {
	case FieldWhole:
		return "numeric"
	case FieldDecimal:
		return "decimal"
	}
	return ""
}

// width is the class that gives a one-line field its width.
func (f Field) width() string {
	switch f.Kind {
	case FieldWhole, FieldDecimal:
		return "short"
	case FieldDate:
		return "dated"
	}
	return "full"
}

// autocomplete is the HTML autocomplete value.
func (f Field) autocomplete() string {
	if f.Autocomplete == "" {
		return "off"
	}
	return f.Autocomplete
}

// shownValue is what stands in a one-line field: never a password.
func (f Field) shownValue() string {
	if f.Kind == FieldPassword {
		return ""
	}
	return f.Value
}

// counted says how many characters stand in the field: "12 of 100 characters".
func (f Field) counted() string {
	return strconv.Itoa(utf8.RuneCountInString(f.Value)) + " of " + strconv.Itoa(f.Limit) + " characters"
}

// described ties a field to its hint and error, and says what is asked of it.
func described(f Field, id string) templ.Attributes {
	attributes := templ.Attributes{}
	if by := f.describedBy(id); by != "" {
		attributes["aria-describedby"] = by
	}
	if f.Error != "" {
		attributes["aria-invalid"] = "true"
	}
	if f.Required {
		attributes["aria-required"] = "true"
	}
	if len(f.Suggestions) > 0 {
		attributes["list"] = id + "-list"
	}
	if f.Placeholder != "" && f.Kind != FieldSelect && f.Kind != FieldCheck {
		attributes["placeholder"] = f.Placeholder
	}
	return attributes
}
