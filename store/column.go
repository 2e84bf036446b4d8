package store

import (
	"encoding"
	"fmt"
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

// exact scans a column that holds the text form of a value, such as an exact
// number.
type exact struct{ to encoding.TextUnmarshaler }

// Scan takes the column's value.
func (e exact) Scan(value any) error {
	text, ok := value.(string)
	if !ok {
		return fmt.Errorf("an exact value is stored as %T", value)
	}
	return e.to.UnmarshalText([]byte(text))
}
