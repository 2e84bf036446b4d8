package release

import (
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// lineWriter writes one ingredient line.
type lineWriter func(recipe.Line) string

// amounts writes each line in metric and in US measures, the house's first.
type amounts struct{ first, second recipe.Writer }

func newAmounts(in Input) amounts {
	writer := func(style recipe.Style) recipe.Writer {
		return recipe.Writer{Larder: in.Larder, House: in.Show.System, Source: in.Recipe.System, Style: style}
	}
	if in.Show.System == measure.US || in.Show.System == measure.USLabel {
		return amounts{writer(recipe.USStyle), writer(recipe.MetricStyle)}
	}
	return amounts{writer(recipe.MetricStyle), writer(recipe.USStyle)}
}

// both writes a line as "200 g (1⅔ cups) bread flour"; a line that was not read
// stands as written.
func (a amounts) both(line recipe.Line) string {
	if !line.Read {
		return strings.TrimSpace(line.Text)
	}
	first, second := a.first.Line(line), a.second.Line(line)
	measures := first.Measure
	if second.Measure != "" && second.Measure != first.Measure {
		measures = strings.TrimSpace(measures + " (" + second.Measure + ")")
	}
	return strings.TrimSpace(measures + " " + first.Words)
}

// one writes a line in the house's measures alone: "200 g bread flour".
func (a amounts) one(line recipe.Line) string {
	if !line.Read {
		return strings.TrimSpace(line.Text)
	}
	written := a.first.Line(line)
	return strings.TrimSpace(written.Measure + " " + written.Words)
}
