package store

import (
	"fmt"
	"strconv"
	"time"

	"benchproof/kitchen/measure"
)

// instantLayout is RFC 3339 in UTC with milliseconds: of one width, so that
// instants sort as text.
const instantLayout = "2006-01-02T15:04:05.000Z"

// instantText writes an instant for its column, cut to the millisecond.
func instantText(t time.Time) string { return t.UTC().Format(instantLayout) }

// dateText writes a date for its column, nil for none.
func dateText(day time.Time) any {
	if day.IsZero() {
		return nil
	}
	return day.Format(time.DateOnly)
}

// idOrNull writes a reference for its column, nil for none.
func idOrNull(id int64) any {
	if id == 0 {
		return nil
	}
	return id
}

// makesText writes a number of makes; 0 means one.
func makesText(n measure.Number) string {
	if n.IsZero() {
		return "1"
	}
	return n.String()
}

// date scans a date column: NULL is the zero time.
type date struct{ to *time.Time }

// Scan takes the column's value.
func (d date) Scan(value any) error { return scanTime(d.to, time.DateOnly, value) }

// instant scans an instant column: NULL is the zero time.
type instant struct{ to *time.Time }

// Scan takes the column's value.
func (i instant) Scan(value any) error { return scanTime(i.to, instantLayout, value) }

func scanTime(to *time.Time, layout string, value any) error {
	if value == nil {
		*to = time.Time{}
		return nil
	}
	text, ok := value.(string)
	if !ok {
		return fmt.Errorf("a time is stored as %T", value)
	}
	t, err := time.Parse(layout, text)
	*to = t
	return err
}

// exact scans a column that holds an exact number.
type exact struct{ to *measure.Number }

// Scan takes the column's value.
func (e exact) Scan(value any) (err error) {
	text, ok := value.(string)
	if !ok {
		return fmt.Errorf("an exact number is stored as %T", value)
	}
	*e.to, err = number(text)
	return err
}

// number reads an exact number; most are short and whole, which is cheap.
func number(text string) (measure.Number, error) {
	if text == "0" {
		return measure.Number{}, nil
	}
	if n, err := strconv.ParseInt(text, 10, 64); err == nil {
		return measure.Whole(n), nil
	}
	return measure.ParseNumber(text)
}
