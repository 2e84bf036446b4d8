package web

import (
	"slices"
	"strconv"
	"time"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/views"
)

// values are a form's fields by name, as the texts a person would type.
type values map[string]string

// filled gives fields with their values and, where err speaks of one, its error.
func filled(fields []views.Field, value func(name string) string, err error) []views.Field {
	fields = slices.Clone(fields)
	for i := range fields {
		f := &fields[i]
		if f.Kind != views.FieldPassword {
			f.Value = value(f.Name)
		}
		f.Error = fieldError(err, f.Name)
	}
	return fields
}

// fieldError joins what err says about one field.
func fieldError(err error, name string) string {
	text := ""
	for _, f := range fault.All(err) {
		if f.Field != name || f.Say == "" {
			continue
		}
		if text != "" {
			text += " "
		}
		text += f.Say
	}
	return text
}

// formError joins what err says about no field of the form.
func formError(err error, fields []views.Field) string {
	text := ""
	for _, f := range fault.All(err) {
		named := slices.ContainsFunc(fields, func(v views.Field) bool { return v.Name == f.Field })
		if !named && f.Say != "" {
			text += f.Say + " "
		}
	}
	return text
}

// options makes a Select's choices from words that are their own labels.
func options[T ~string](words []T) []views.Option {
	var list []views.Option
	for _, w := range words {
		list = append(list, views.Option{Value: string(w), Label: string(w)})
	}
	return list
}

// The texts that typed reads back.

func wholeText(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}

func numberText(n measure.Number) string {
	if n.IsZero() {
		return ""
	}
	return measure.FormatNumber(n)
}

func dateText(day time.Time) string {
	if day.IsZero() {
		return ""
	}
	return day.Format(time.DateOnly)
}
