package web

import (
	"errors"
	"math"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"time"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
)

// maxForm is the most a form may carry: four hours of captions fit well.
const maxForm = 4 << 20

// typed is what a person typed into a form, with what is wrong about it. The
// raw text is kept whatever happens, so that a refused form loses nothing.
type typed struct {
	values url.Values
	faults []error
}

// readTyped parses a request's form.
func readTyped(w http.ResponseWriter, r *http.Request) (*typed, error) {
	r.Body = http.MaxBytesReader(w, r.Body, maxForm)
	err := r.ParseForm()
	var tooLarge *http.MaxBytesError
	switch {
	case errors.As(err, &tooLarge):
		return nil, &fault.Error{Kind: fault.TooLarge, Say: "That is more text than one form can carry (4 MB). Go back and send it in parts.", Err: err}
	case err != nil:
		return nil, &fault.Error{Kind: fault.Malformed, Say: "The browser sent a form we cannot read. Go back and send it again.", Err: err}
	}
	return &typed{values: r.PostForm}, nil
}

// err joins everything that is wrong, nil if nothing is.
func (t *typed) err() error { return errors.Join(t.faults...) }

// fail notes a fault about one field.
func (t *typed) fail(field, format string, args ...any) {
	t.faults = append(t.faults, fault.Invalidf(field, format, args...))
}

// text gives a field trimmed, with line ends as \n.
func (t *typed) text(name string) string {
	return strings.TrimSpace(strings.ReplaceAll(t.values.Get(name), "\r\n", "\n"))
}

// needed is text that must not be empty; say tells what to type.
func (t *typed) needed(name, say string) string {
	text := t.text(name)
	if text == "" {
		t.fail(name, "%s", say)
	}
	return text
}

// whole gives a whole number from 0 up, 0 for an empty field.
func (t *typed) whole(name string) int {
	text := t.text(name)
	if text == "" {
		return 0
	}
	n, err := strconv.Atoi(text)
	if err != nil || n < 0 || n > math.MaxInt32 {
		t.fail(name, "“%s” is not a whole number such as 12.", text)
		return 0
	}
	return n
}

// number gives an exact number as a cook writes it (1½, 3/2, 1.5), 0 for an
// empty field.
func (t *typed) number(name string) measure.Number {
	text := t.text(name)
	if text == "" {
		return measure.Number{}
	}
	n, err := parseAmount(text)
	if err != nil {
		t.fail(name, "“%s” is not a number such as 2, 1½ or 0.75.", text)
	}
	return n
}

// date gives a date, the zero time for an empty field.
func (t *typed) date(name string) time.Time {
	text := t.text(name)
	if text == "" {
		return time.Time{}
	}
	day, err := time.Parse(time.DateOnly, text)
	if err != nil {
		t.fail(name, "“%s” is not a date. Write year-month-day, such as 2026-03-14.", text)
	}
	return day
}

// seconds gives a length as "95", "1:35" or "1:02:09", 0 for an empty field.
func (t *typed) seconds(name string) int {
	text := t.text(name)
	if text == "" {
		return 0
	}
	total := 0
	for i, part := range strings.Split(text, ":") {
		n, err := strconv.Atoi(part)
		if err != nil || n < 0 || i > 2 || (i > 0 && n > 59) || n > 24*60*60 {
			t.fail(name, "“%s” is not a length. Write seconds, or minutes and seconds such as 1:35.", text)
			return 0
		}
		total = total*60 + n
	}
	return total
}

// revision gives the revision the form was drawn from.
func (t *typed) revision() int { return t.whole("revision") }

// parseAmount reads a bare number the way cooks write it, and nothing else.
func parseAmount(text string) (measure.Number, error) {
	n, rest, ok := measure.ReadNumber(text)
	if !ok || strings.TrimSpace(rest) != "" {
		return measure.Number{}, fault.Invalidf("", "“%s” is not a number.", text)
	}
	return n, nil
}

// positive is a number that must be given and above 0; say tells what it is.
func (t *typed) positive(name, say string) measure.Number {
	before := len(t.faults)
	n := t.number(name)
	if n.Sign() <= 0 && len(t.faults) == before {
		t.fail(name, "%s", say)
	}
	return n
}

// oneOf is a choice that must be among words.
func (t *typed) oneOf(name string, words []string) string {
	text := t.text(name)
	if !slices.Contains(words, text) {
		t.fail(name, "Choose one of: %s.", strings.Join(words, ", "))
	}
	return text
}

// address is a web address, "" for an empty field.
func (t *typed) address(name string) string {
	text := t.text(name)
	if text == "" {
		return ""
	}
	u, err := url.Parse(text)
	if err != nil || (u.Scheme != "http" && u.Scheme != "https") || u.Host == "" {
		t.fail(name, "“%s” is not a web address. It begins with https:// or http://.", text)
	}
	return text
}
