package verify

import (
	"fmt"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// suggest words the correction.
func (j *judge) suggest(i int, f Finding) string {
	at := episode.Timecode(int(f.At.Seconds()))
	switch f.Kind {
	case NotWritten:
		if j.Ties[i].Foreign == "" {
			return fmt.Sprintf("At %s the cut says “%s”, and the recipe does not: write it in, or take it out of the cut.", at, f.Said)
		}
		return fmt.Sprintf("At %s the cut says “%s %s”, and the recipe has none: write it in, or take it out of the cut.", at, f.Said, j.Ties[i].Foreign)
	case Pair:
		if f.Suggest != "" {
			return fmt.Sprintf("At %s: %s", at, f.Suggest)
		}
	}
	of := ""
	if n := j.Ties[i].Item; n >= 0 {
		of = " " + j.Book.Items[n].Line.Food
	}
	why := ""
	switch f.Slip {
	case UnitSlip:
		why = " The number is right; the unit is not."
	case Tenfold:
		why = " That is tenfold, or a tenth."
	}
	return fmt.Sprintf("Correction at %s: I say “%s”; the right measure is %s%s.%s", at, f.Said, f.Written, of, why)
}

// measureOf is the measure of a line as written: "2½ cups" of "2½ cups bread
// flour", "1 (28-ounce) can" of a line in packs.
func measureOf(l recipe.Line) string {
	if l.Packs.Unit != "" {
		if i := strings.Index(l.Text, l.Food); l.Food != "" && i > 0 {
			return strings.TrimSpace(l.Text[:i])
		}
	}
	r, _, ok := measure.ReadAmount(l.Text)
	if !ok || r.Text == "" {
		return l.Text
	}
	return r.Text
}
