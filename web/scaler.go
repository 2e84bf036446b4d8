package web

import (
	"net/http"
	"net/url"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/views"
)

// largestFactor bounds a scale: beyond it nobody cooks from a home recipe.
var largestFactor = measure.Whole(1000)

// wanted is the scale an address or a form asks for: "factor" or "pieces", as
// typed, and what became of them.
type wanted struct {
	by                       measure.Number
	asked                    bool
	factor, pieces           string
	factorError, piecesError string
	typed                    url.Values
	other                    error // what is wrong with one of otherWays
}

// wantedScale reads factor and pieces out of typed values. A form sends both
// fields and the factor it was drawn with: the field that was changed counts.
// Without either, or with a wrong one, the scale is kept.
func wantedScale(typedValues url.Values, r recipe.Recipe, kept measure.Number, w recipe.Writer) wanted {
	want := wanted{by: kept, factor: typedValues.Get("factor"), pieces: typedValues.Get("pieces"), typed: typedValues}
	was := typedValues.Get("was")
	switch by, asked, err := otherWay(typedValues, r, w); {
	case err != nil:
		want.other = err
	case asked:
		want.by, want.asked = by, true
	case want.pieces != "" && (want.factor == "" || want.factor == was && !piecesAre(want.pieces, r, was)):
		by, err := piecesFactor(r, want.pieces)
		if err != nil {
			want.piecesError = fault.Say(err)
			return want
		}
		want.by, want.asked = by, true
	case want.factor != "":
		by, err := recipe.ReadFactor(want.factor)
		if err != nil {
			want.factorError = fault.Say(err)
			return want
		}
		want.by, want.asked = by, true
	}
	return want
}

// piecesAre tells whether pieces, as typed, is what r makes at the factor was.
func piecesAre(pieces string, r recipe.Recipe, was string) bool {
	factor, err := parseAmount(was)
	_, makes, ok := yieldPieces(r)
	return err == nil && ok && pieces == measure.FormatNumber(makes.Mul(factor))
}

func piecesFactor(r recipe.Recipe, text string) (measure.Number, error) {
	pieces, err := parseAmount(text)
	if err != nil || pieces.Sign() <= 0 {
		return measure.Number{}, fault.Invalidf("pieces", "“%s” is not a number of pieces such as 24.", text)
	}
	by, err := recipe.FactorForPieces(r, pieces)
	if err == nil && by.Cmp(largestFactor) > 0 {
		return by, fault.Invalidf("pieces", "That is over %s times the recipe. Ask for less.", largestFactor)
	}
	return by, err
}

// err tells what is wrong with the wish, nil if nothing is.
func (w wanted) err() error {
	switch {
	case w.piecesError != "":
		return fault.Invalidf("pieces", "%s", w.piecesError)
	case w.factorError != "":
		return fault.Invalidf("factor", "%s", w.factorError)
	}
	return w.other
}

// newScaler words the scale controls of the recipe r at path.
func newScaler(path string, r recipe.Recipe, want wanted, style recipe.Style) views.Scaler {
	scaler := views.Scaler{
		TryPath: path, Factor: measure.FormatNumber(want.by), Was: measure.FormatNumber(want.by), FactorError: want.factorError,
		PiecesError: want.piecesError, Measure: string(style),
	}
	scaler.More = otherWaysForm(path, want.typed, want.other)
	if want.factorError != "" {
		scaler.Factor = want.factor
	}
	if label, pieces, ok := yieldPieces(r); ok {
		scaler.PiecesLabel = label
		scaler.Pieces = measure.FormatNumber(pieces.Mul(want.by))
		if want.piecesError != "" {
			scaler.Pieces = want.pieces
		}
	}
	return scaler
}

// yieldPieces tells what a recipe makes a number of; the lower end of a range.
func yieldPieces(r recipe.Recipe) (label string, pieces measure.Number, ok bool) {
	if r.Yield.Amount.From.Sign() <= 0 || r.Yield.Amount.Unit.Kind() != measure.Count {
		return "", measure.Number{}, false
	}
	if label = r.Yield.Of; label == "" {
		label = "pieces"
	}
	return label, r.Yield.Amount.From, true
}

// styleOf is the measure switch's position in an address.
func styleOf(r *http.Request) recipe.Style {
	switch style := recipe.Style(r.URL.Query().Get("measure")); style {
	case recipe.MetricStyle, recipe.USStyle, recipe.ImperialStyle:
		return style
	}
	return recipe.AsWritten
}

// measureChoices are the measure switch's links; each keeps the scale tried.
func measureChoices(path string, want wanted, current recipe.Style) []views.Choice {
	var choices []views.Choice
	for _, c := range []struct {
		style recipe.Style
		text  string
	}{{recipe.AsWritten, "as written"}, {recipe.MetricStyle, "metric"}, {recipe.USStyle, "US cups"}, {recipe.ImperialStyle, "imperial"}} {
		choices = append(choices, views.Choice{Text: c.text, Path: scaledPath(path, want, c.style), Current: c.style == current})
	}
	return choices
}

// scaledPath is path with the scale tried and the measures wanted.
func scaledPath(path string, want wanted, style recipe.Style) string {
	query := url.Values{}
	if want.asked {
		query.Set("factor", want.by.String())
	}
	if style != recipe.AsWritten {
		query.Set("measure", string(style))
	}
	if len(query) == 0 {
		return path
	}
	return path + "?" + query.Encode()
}
