package store

import (
	"fmt"
	"strconv"
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Short lists stand in one text column: an item a line, each ended by a
// newline, so that an empty list and a list of one empty item differ. The
// fields of an item are parted by tabs. A newline, tab or backslash inside a
// field is written \n, \t, \\.

var (
	escape   = strings.NewReplacer(`\`, `\\`, "\n", `\n`, "\t", `\t`)
	unescape = strings.NewReplacer(`\\`, `\`, `\n`, "\n", `\t`, "\t")
)

func itemsText(items []string) string {
	return columnText(items, func(item string) []string { return []string{item} })
}

// items reads what itemsText wrote; nil for none.
func items(text string) []string {
	all, _ := column(text, func(f *fields) string { return f.text() })
	return all
}

func amountsText(amounts []measure.Amount) string {
	return columnText(amounts, func(a measure.Amount) []string {
		return []string{a.From.String(), a.To.String(), string(a.Unit)}
	})
}

func amounts(text string) ([]measure.Amount, error) { return column(text, (*fields).amount) }

func heatsText(heats []measure.Heat) string {
	return columnText(heats, func(h measure.Heat) []string {
		return []string{h.Degrees.From.String(), h.Degrees.To.String(), h.Scale, h.Oven, h.Text, strconv.Itoa(h.At)}
	})
}

func heats(text string) ([]measure.Heat, error) {
	return column(text, func(f *fields) measure.Heat {
		return measure.Heat{Degrees: f.between(), Scale: f.text(), Oven: f.text(), Text: f.text(), At: f.whole()}
	})
}

func usesText(uses []recipe.Use) string {
	return columnText(uses, func(u recipe.Use) []string {
		return []string{strconv.Itoa(u.Component), strconv.Itoa(u.Line),
			u.Amount.From.String(), u.Amount.To.String(), string(u.Amount.Unit), strconv.FormatBool(u.HasAmount), u.Words}
	})
}

func uses(text string) ([]recipe.Use, error) {
	return column(text, func(f *fields) recipe.Use {
		return recipe.Use{Component: f.whole(), Line: f.whole(), Amount: f.amount(), HasAmount: f.flag(), Words: f.text()}
	})
}

func placesText(places []recipe.Place) string {
	return columnText(places, func(p recipe.Place) []string {
		return []string{strconv.Itoa(p.Number), p.Text, string(p.In), strconv.Itoa(p.Component), strconv.Itoa(p.Of)}
	})
}

func places(text string) ([]recipe.Place, error) {
	return column(text, func(f *fields) recipe.Place {
		return recipe.Place{Number: f.whole(), Text: f.text(), In: recipe.Part(f.text()), Component: f.whole(), Of: f.whole()}
	})
}

// columnText writes a list, the fields of each item as given.
func columnText[T any](items []T, fieldsOf func(T) []string) string {
	var b strings.Builder
	for _, item := range items {
		for i, field := range fieldsOf(item) {
			if i > 0 {
				b.WriteByte('\t')
			}
			escape.WriteString(&b, field)
		}
		b.WriteByte('\n')
	}
	return b.String()
}

// column reads a list; nil for none. Read takes an item's fields in the order
// they were written.
func column[T any](text string, read func(*fields) T) ([]T, error) {
	if text == "" {
		return nil, nil
	}
	all := make([]T, 0, strings.Count(text, "\n"))
	for line := range strings.Lines(text) {
		f := &fields{rest: strings.TrimSuffix(line, "\n")}
		all = append(all, read(f))
		if f.err != nil {
			return nil, fmt.Errorf("list item %q: %w", line, f.err)
		}
	}
	return all, nil
}

// fields are what is left of one item; the first error stays. A field that was
// added to a kind of item later is missing in old ones, and reads as zero.
type fields struct {
	rest string
	err  error
}

func (f *fields) text() string {
	field, rest, _ := strings.Cut(f.rest, "\t")
	f.rest = rest
	if !strings.Contains(field, `\`) {
		return field
	}
	return unescape.Replace(field)
}

func (f *fields) whole() int {
	text := f.text()
	if text == "" {
		return 0
	}
	n, err := strconv.Atoi(text)
	f.keep(err)
	return n
}

func (f *fields) flag() bool { return f.text() == "true" }

func (f *fields) number() measure.Number {
	text := f.text()
	if text == "" {
		return measure.Number{}
	}
	n, err := number(text)
	f.keep(err)
	return n
}

func (f *fields) between() measure.Range { return measure.Range{From: f.number(), To: f.number()} }

func (f *fields) amount() measure.Amount {
	return measure.Amount{Range: f.between(), Unit: measure.Unit(f.text())}
}

func (f *fields) keep(err error) {
	if f.err == nil {
		f.err = err
	}
}
