package recipe

import (
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// Style is the measures a Writer writes in.
type Style string

// The styles.
const (
	AsWritten     Style = ""         // the line's own unit
	MetricStyle   Style = "metric"   // grams and millilitres; spoons stay spoons
	USStyle       Style = "us"       // US cups and spoons; ounces for what is not measured in cups
	ImperialStyle Style = "imperial" // pounds, ounces, imperial fluid ounces and pints; spoons stay
)

// Writer writes lines for hands. The zero Writer writes them as they are, in US
// cups where nobody says otherwise.
type Writer struct {
	Larder *food.Larder   // for weights; nil leaves cups cups
	House  measure.System // the show's measures
	Source measure.System // the recipe's own, before the show's; "" if it states none
	Style  Style
}

// For gives the writer with the measures that a recipe states itself.
func (w Writer) For(r Recipe) Writer {
	w.Source = r.System
	return w
}

// Written is one line as people read it: Measure for the gutter, Words beside.
type Written struct {
	Measure      string  // "320 g", "1–2 tsp", "3", "2 × 400 g"; "" without an amount
	Words        string  // food, preparation and note: "strong white flour, sifted"
	Other        string  // the same amount in the other system, "1¾ tsp"; "" if there is none
	Exact        string  // the exact amount of the line's own unit, "9/4", "2–3"; "" without an amount
	ErrorPercent float64 // how far Measure is from the exact amount, 0 or more
	Assumed      string  // "cup = 236.588 mL (US customary)"; "" if nothing was assumed
	Source       string  // where a weight comes from: "USDA SR 20081"; "" if none was used
	Question     string  // what the creator should settle; "" if nothing
}

// Line writes one line. A line that is not read is its own text, without a
// measure, and its reason is the question.
func (w Writer) Line(l Line) Written { return w.line(l, l.Amount) }

// line writes l, whose amount was written before scaling: the food's words
// agree in number with that.
func (w Writer) line(l Line, before measure.Amount) Written {
	if !l.Read {
		return Written{Words: l.Text, Question: l.Reason}
	}
	t := w.teller(l)
	out := Written{Question: t.question()}
	if l.HasAmount {
		shown := t.show(w.Style)
		out.Measure, out.ErrorPercent = shown.text, shown.off
		out.Exact = exactText(l.Amount.Range)
		out.Other = t.other(w.Style, shown)
		out.Assumed, out.Source = t.assumed, t.source
		if l.About && out.Measure != "" {
			out.Measure = "about " + out.Measure
		}
	}
	out.Words = words(l, before, t.packed)
	return out
}

// Yield writes what a recipe makes: "makes 24 knots", "serves 8–12"; a yield
// without an amount as it was written.
func (w Writer) Yield(y Yield) string {
	if y.Amount.IsZero() {
		return y.Text
	}
	number := w.hand().Write(y.Amount).Text
	switch y.Of {
	case "servings", "people", "persons":
		return "serves " + number
	}
	of := y.Of
	if of != "" && y.Amount.Unit == measure.Each {
		of = agree(of, y.Amount)
	}
	return strings.TrimSpace("makes " + number + " " + of)
}

func (w Writer) hand() measure.Hand { return measure.Hand{System: w.Source.Or(w.House).Or(measure.US)} }

// teller knows one line, its food and whose measures it means.
type teller struct {
	line   Line
	food   *food.Food   // nil if the larder does not know it
	larder *food.Larder // nil if there is none
	house  measure.System
	system measure.System

	pack    bool // the line stands for one pack, whose size is printed on it
	quiet   bool // only the amount is asked for, not how it came about
	packed  bool // the measure says the packs: "2 × 400 g", and the words "tins"
	assumed string
	source  string
}

func (w Writer) teller(l Line) *teller {
	t := &teller{line: l, system: l.System.Or(w.Source).Or(w.House).Or(measure.US), house: w.House, larder: w.Larder}
	if w.Larder != nil && l.FoodID != "" {
		t.food, _ = w.Larder.Food(l.FoodID)
	}
	return t
}

// question is what the creator should settle about the line.
func (t *teller) question() string {
	l := t.line
	switch {
	case l.Reason != "":
		return l.Reason
	case t.larder == nil:
		return ""
	case len(l.Choices) > 0:
		return "“" + l.Food + "” could be several foods. Which is meant?"
	case t.food == nil && !l.HasAmount && t.severalKnown():
	case t.food == nil:
		return "The larder does not know “" + l.Food + "”. Is it there by another name?"
	case l.HasAmount && l.Amount.Unit.Kind() == measure.Count && l.Amount.Unit != measure.Each:
		if _, err := t.food.Grams(l.Amount, l.form(), t.system); err != nil {
			return "What a " + l.Amount.Unit.Name(false) + " of " + t.food.Name + " weighs is not known. How much is it?"
		}
	}
	return ""
}

// severalKnown tells "salt and pepper": every part of the name is a food that the
// larder knows.
func (t *teller) severalKnown() bool {
	parts := strings.Split(strings.ReplaceAll(t.line.Food, " & ", " and "), " and ")
	for _, p := range parts {
		if m := t.larder.Match(p); m.Food == nil && len(m.Choices) == 0 {
			return false
		}
	}
	return len(parts) > 1
}

// exactText writes a range exactly: "9/4", "2–3".
func exactText(r measure.Range) string {
	if r.IsSingle() {
		return r.From.String()
	}
	return r.From.String() + "–" + r.To.String()
}
