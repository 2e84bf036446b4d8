package recipe

import (
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/tin"
)

func readFactor(text string) (measure.Number, bool) {
	word := strings.ToLower(strings.TrimSpace(text))
	switch word {
	case "double":
		return measure.Whole(2), true
	case "triple", "treble":
		return measure.Whole(3), true
	}
	if n, err := measure.ParseNumber(word); err == nil {
		return n, true
	}
	word = strings.TrimSpace(strings.Trim(word, "x×*"))
	n, rest, ok := measure.ReadNumber(word)
	return n, ok && (rest == "" || rest == "times")
}

// FactorForPieces gives the factor by which r makes this many pieces. Of a
// recipe that makes 12 to 14, the 12 counts, so that there are enough. The error
// is fault.Invalid: on "pieces", or the recipe does not say what it makes.
func FactorForPieces(r Recipe, pieces measure.Number) (measure.Number, error) {
	if pieces.Sign() <= 0 || pieces.Cmp(measure.Whole(100000)) > 0 {
		return measure.Number{}, fault.Invalidf("pieces", "The number of pieces must be above 0 and at most 100,000.")
	}
	made := r.Yield.Amount
	if made.From.Sign() <= 0 || made.Unit.Kind() != measure.Count {
		return measure.Number{}, fault.Invalidf("pieces", "The recipe does not say how many pieces it makes. Add a line such as “Makes 16”.")
	}
	return pieces.Quo(made.From), nil
}

// FactorForPieceWeight gives the factor by which a component's mass divides into
// pieces of one weight. component "" takes the whole recipe; pieces 0 keeps the
// number that the recipe makes. Of a range the smaller mass counts. The error is
// fault.Invalid and says what has no weight.
func FactorForPieceWeight(r Recipe, component string, pieces measure.Number, each measure.Amount, w Writer) (measure.Number, error) {
	per, err := measure.Convert(each, measure.Gram, w.House, w.House)
	if err != nil || per.From.Sign() <= 0 {
		return measure.Number{}, fault.Invalidf("piece-weight", "The weight of a piece must be a mass above 0, such as 80 g or 3 oz.")
	}
	if pieces.IsZero() {
		pieces = r.Yield.Amount.From
		if r.Yield.Amount.Unit.Kind() != measure.Count {
			pieces = measure.Number{}
		}
	}
	if pieces.Sign() <= 0 {
		return measure.Number{}, fault.Invalidf("pieces", "The recipe does not say how many pieces it makes. Give their number too.")
	}
	mass, err := MassOf(r, component, w)
	if err != nil {
		return measure.Number{}, err
	}
	if len(mass.Missing) > 0 {
		return measure.Number{}, fault.Invalidf("piece-weight", "The weight of %s is not known, so the pieces cannot be weighed. Give it in grams.", list(mass.Missing))
	}
	if mass.Grams.From.Sign() <= 0 {
		return measure.Number{}, fault.Invalidf("piece-weight", "Nothing in the recipe has a weight.")
	}
	return pieces.Mul(per.From).Quo(mass.Grams.From), nil
}

// Tins is a change from one tin to another.
type Tins struct {
	Factor   measure.Number
	By       string // "area" or "volume"
	From, To tin.Tin
}

// FactorForTins gives the factor from one tin to another, each as cooks name it:
// "20 cm round", "9 x 5 x 3 in loaf". By volume where both say their depth, else
// by area, filled to the same depth. The error is fault.Invalid on "tin".
func FactorForTins(from, to string) (Tins, error) {
	a, err := tin.Parse(from)
	if err != nil {
		return Tins{}, err
	}
	b, err := tin.Parse(to)
	if err != nil {
		return Tins{}, err
	}
	factor, by, err := tin.Ratio(a, b)
	return Tins{Factor: factor, By: by, From: a, To: b}, err
}

// FactorForHave gives the factor by which r uses just what is in hand, "3 eggs",
// "400 g plain flour": have divided by what the recipe takes of that food in all
// its lines. Of a range the larger amount counts, so that it suffices. The
// error is fault.Invalid on "have".
func FactorForHave(r Recipe, have string, w Writer) (measure.Number, error) {
	got := Reader{Larder: w.Larder}.ReadLine(have)
	if !got.Read || !got.HasAmount || got.Amount.From.Sign() <= 0 {
		return measure.Number{}, fault.Invalidf("have", "“%.60s” cannot be read as an amount of a food. Write it as “3 eggs” or “400 g flour”.", have)
	}
	w = w.For(r)
	var need, had measure.Number
	found := false
	for _, c := range r.Components {
		for _, l := range c.Lines {
			if !l.Read || !l.HasAmount || !isSameFood(l, got) {
				continue
			}
			a, b, ok := w.compare(l, got)
			if !ok {
				return measure.Number{}, fault.Invalidf("have", "“%s” and the recipe's “%s” cannot be compared. Give what you have in the recipe's measure.", have, l.Text)
			}
			need, had, found = need.Add(a), b, true
		}
	}
	if !found || need.Sign() <= 0 {
		return measure.Number{}, fault.Invalidf("have", "The recipe has no line of “%s” with an amount.", got.Food)
	}
	return had.Quo(need), nil
}

func isSameFood(l, have Line) bool {
	if l.FoodID != "" && l.FoodID == have.FoodID {
		return true
	}
	a, b := strings.ToLower(agree(l.Food, measure.Amount{})), strings.ToLower(agree(have.Food, measure.Amount{}))
	return a == b || strings.HasSuffix(a, " "+b) && (l.FoodID == "" || have.FoodID == "")
}

// compare gives what a line needs and what is had in one measure: their common
// unit, millilitres or grams.
func (w Writer) compare(l, have Line) (need, had measure.Number, ok bool) {
	if l.Amount.Unit == have.Amount.Unit && len(l.Plus) == 0 && (l.Size == have.Size || have.Size == "") {
		return l.Amount.To, have.Amount.From, true
	}
	a, _, err := w.Grams(l)
	if err != nil {
		t := w.teller(l)
		c, err := measure.Convert(t.sum(l.Amount), have.Amount.Unit, t.system, t.system)
		return c.To, have.Amount.From, err == nil
	}
	if have.Size == "" {
		have.Size = l.Size
	}
	b, _, err := w.Grams(have)
	return a.To, b.From, err == nil
}

func list(words []string) string {
	switch n := len(words); n {
	case 0:
		return ""
	case 1:
		return words[0]
	default:
		return strings.Join(words[:n-1], ", ") + " and " + words[n-1]
	}
}
