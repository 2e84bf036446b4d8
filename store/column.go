package store

import (
	"fmt"
	"strconv"
	"strings"
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

// number reads an exact number as its String writes it, however long: what was
// saved must never be unreadable.
func number(text string) (measure.Number, error) {
	above, below, isRatio := strings.Cut(text, "/")
	n, err := whole(above)
	if err != nil || !isRatio {
		return n, err
	}
	m, err := whole(below)
	if err == nil && m.Sign() <= 0 {
		err = fmt.Errorf("%q is not an exact number", text)
	}
	if err != nil {
		return measure.Number{}, err
	}
	return n.Quo(m), nil
}

// whole reads a whole number, which nearly always fits a machine word.
func whole(digits string) (measure.Number, error) {
	if n, err := strconv.ParseInt(digits, 10, 64); err == nil {
		return measure.Whole(n), nil
	}
	rest, isNegative := strings.CutPrefix(digits, "-")
	var n measure.Number
	for len(rest) > 0 {
		part := rest[:min(18, len(rest))]
		rest = rest[len(part):]
		value, err := strconv.ParseUint(part, 10, 63)
		if err != nil {
			return measure.Number{}, fmt.Errorf("%q is not a whole number", digits)
		}
		n = n.Mul(tenTo(len(part))).Add(measure.Whole(int64(value)))
	}
	if isNegative {
		n = measure.Number{}.Sub(n)
	}
	return n, nil
}

// tenTo gives 10 to the power of n, from 1 to 18.
func tenTo(n int) measure.Number {
	power := int64(1)
	for range n {
		power *= 10
	}
	return measure.Whole(power)
}
