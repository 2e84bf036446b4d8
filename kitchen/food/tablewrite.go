package food

import (
	"bufio"
	"io"
	"strings"

	"benchproof/kitchen/measure"
)

// WriteTable writes foods in the form that ReadTable reads, in their order,
// with an aisle line wherever the aisle changes. Figures are written as
// decimals of up to four places.
func WriteTable(w io.Writer, foods []Food) error {
	out := bufio.NewWriter(w)
	aisle := ""
	for _, f := range foods {
		if f.Aisle != aisle {
			aisle = f.Aisle
			_, _ = out.WriteString("aisle: " + aisle + "\n")
		}
		_, _ = out.WriteString("\n" + f.Name + "\n")
		for _, field := range f.fields() {
			if field[1] != "" {
				_, _ = out.WriteString("    " + field[0] + ": " + field[1] + "\n")
			}
		}
	}
	return out.Flush()
}

// fields gives the lines about f, in the table's order.
func (f Food) fields() [][2]string {
	fields := [][2]string{
		{"id", f.ID}, {"also", strings.Join(f.Names, ", ")}, {"plural", f.Plural}, {"source", f.Source},
	}
	for _, source := range f.weightSources() {
		key := "weighs"
		if source != f.Source {
			key = "weighs (" + source + ")"
		}
		var texts []string
		for _, w := range f.Weights {
			if w.Source == source {
				texts = append(texts, w.text())
			}
		}
		fields = append(fields, [2]string{key, strings.Join(texts, ", ")})
	}
	var held []string
	for _, n := range AllNutrients() {
		if figure := f.Per100.Get(n); figure != nil {
			held = append(held, n.String()+" "+decimal(*figure))
		}
	}
	var packs []string
	for _, p := range f.Packs {
		unit := string(p.Amount.Unit)
		if p.Amount.Unit == measure.Each {
			unit = "each"
		}
		packs = append(packs, strings.TrimSpace(decimal(p.Amount.From)+" "+unit+" "+p.Name))
	}
	return append(fields, [2]string{"holds", strings.Join(held, ", ")},
		[2]string{"allergens", strings.Join(f.Allergens, ", ")}, [2]string{"may hold", strings.Join(f.MayHold, ", ")},
		[2]string{"packs", strings.Join(packs, ", ")})
}

// weightSources gives the sources of f's weights, in the order they come up.
func (f Food) weightSources() []string {
	var sources []string
	seen := map[string]bool{}
	for _, w := range f.Weights {
		if !seen[w.Source] {
			seen[w.Source] = true
			sources = append(sources, w.Source)
		}
	}
	return sources
}

func (w Weight) text() string {
	unit := string(w.Unit)
	if w.Unit == measure.Each {
		unit = "each"
	}
	text := strings.TrimSpace(unit + " " + w.Form)
	if w.System != "" {
		text += " [" + string(w.System) + "]"
	}
	return text + " " + decimal(w.Grams)
}

// decimal writes a figure of the table.
func decimal(n measure.Number) string { return measure.FormatDecimal(n, 4) }
