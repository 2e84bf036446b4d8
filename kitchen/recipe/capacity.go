package recipe

import (
	"fmt"

	"benchproof/kitchen/measure"
)

// Capacity is what a kitchen takes at once. A zero number is not said, and
// splits nothing.
type Capacity struct {
	MixerGrams measure.Number // dough in one mix
	TrayPieces measure.Number // pieces on one tray
	OvenTrays  measure.Number // trays in the oven at once
}

// Split says in sentences into how many lots a recipe, already at its scale,
// goes in this kitchen: each part that is mixed by what the mixer takes, what is
// baked by trays and oven loads. It is empty where all fits at once.
func (c Capacity) Split(r Recipe, w Writer) []string {
	var notes []string
	for _, part := range r.Components {
		if note, ok := c.mixes(r, part, w); ok {
			notes = append(notes, note)
		}
	}
	if note, ok := c.loads(r); ok {
		notes = append(notes, note)
	}
	return notes
}

// mixes splits what a mixer kneads or beats. A part whose weight is not wholly
// known is left alone: the creator weighs it.
func (c Capacity) mixes(r Recipe, part Component, w Writer) (string, bool) {
	if c.MixerGrams.Sign() <= 0 || !usesStation(part, "mixer") {
		return "", false
	}
	mass, err := MassOf(Recipe{System: r.System, Components: []Component{part}}, "", w)
	if err != nil || len(mass.Missing) > 0 {
		return "", false
	}
	lots, share, err := Makes(mass.Grams.To, c.MixerGrams)
	if err != nil || lots < 2 {
		return "", false
	}
	name := part.Name
	if name == "" {
		name = "The mixture"
	}
	return fmt.Sprintf("%s weighs %s and the mixer takes %s: mix it in %d lots of %s.",
		name, wholeGrams(mass.Grams.To), wholeGrams(c.MixerGrams), lots, wholeGrams(mass.Grams.To.Mul(share))), true
}

// loads splits the pieces of what is baked.
func (c Capacity) loads(r Recipe) (string, bool) {
	pieces := r.Yield.Amount
	if c.TrayPieces.Sign() <= 0 || pieces.To.Sign() <= 0 || pieces.Unit.Kind() != measure.Count || !isBaked(r) {
		return "", false
	}
	trays, _, err := Makes(pieces.To, c.TrayPieces)
	if err != nil || trays < 2 {
		return "", false
	}
	note := fmt.Sprintf("%s at %s a tray are %d trays", measure.FormatNumber(pieces.To), measure.FormatNumber(c.TrayPieces), trays)
	if c.OvenTrays.Sign() <= 0 {
		return note + ".", true
	}
	loads, _, err := Makes(measure.Whole(int64(trays)), c.OvenTrays)
	if err != nil || loads < 2 {
		return note + "; they fit the oven at once.", true
	}
	return fmt.Sprintf("%s; the oven takes %s at once: bake in %d loads, and keep the rest cool until then.",
		note, measure.FormatNumber(c.OvenTrays), loads), true
}

func usesStation(c Component, station string) bool {
	for _, step := range c.Steps {
		if step.Station == station {
			return true
		}
	}
	return false
}

func isBaked(r Recipe) bool {
	for _, c := range r.Components {
		if usesStation(c, "oven") {
			return true
		}
	}
	return false
}

func wholeGrams(grams measure.Number) string {
	return measure.FormatDecimal(grams.Round(measure.Whole(1)), 0) + "\u00a0g"
}
