package main

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/nutrition"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/safety"
)

// nutritionCommand reckons what a recipe holds.
type nutritionCommand struct {
	File     string `arg:"" help:"The recipe as you would paste it; - reads standard input."`
	Finished string `help:"What it all weighs when it is done, as a trial measured it: 1.2kg."`
	System   string `help:"The measuring system of cups and spoons, where the recipe says none." default:"metric"`
	JSON     bool   `help:"Print JSON."`
}

// Run prints the figures.
func (c *nutritionCommand) Run(std streams) error {
	system, err := systemFlag(c.System)
	if err != nil {
		return err
	}
	finished, err := finishedFlag(c.Finished)
	if err != nil {
		return err
	}
	reading, reader, err := readRecipe(c.File, std)
	if err != nil {
		return err
	}
	if !slices.ContainsFunc(reading.Components, func(c recipe.Component) bool { return len(c.Lines) > 0 }) {
		return fault.Invalidf("file", "No ingredient was found in the recipe. Write one on a line, such as “200 g flour”.")
	}
	facts := nutrition.Of(reading, recipe.Writer{Larder: reader.Larder, House: system})
	if finished.Sign() > 0 {
		facts = facts.WithFinished(finished)
	}
	report := safety.Allergens(reading, reader.Larder)
	if c.JSON {
		return printJSON(std.out, newNutritionDocument(facts, report))
	}
	fmt.Fprint(std.out, nutritionText(reading.Title, facts, report))
	return nil
}

// finishedFlag reads the value of --finished in grams; "" is 0.
func finishedFlag(value string) (measure.Number, error) {
	if value == "" {
		return measure.Number{}, nil
	}
	got, rest, ok := measure.ReadAmount(value)
	per, isMass := measure.Grams(got.Amount.Unit)
	if !ok || rest != "" || !isMass || !got.Amount.IsSingle() || got.Amount.From.Sign() <= 0 {
		return measure.Number{}, usageError{fmt.Errorf("--finished: %q is not a weight above 0 such as 900g or 1.2kg", value)}
	}
	return got.Amount.From.Mul(per), nil
}

// nutritionDocument is what the command prints as JSON.
type nutritionDocument struct {
	Recipe    nutrition.Figures  `json:"recipe"`
	PerPiece  *nutrition.Figures `json:"perPiece"` // null if the recipe does not say what it makes
	Per100g   nutrition.Figures  `json:"per100g"`
	Covered   float64            `json:"covered"`
	Allergens allergenDocument   `json:"allergens"`
	Makes     *nutritionMakes    `json:"makes"`
	Per100gOf string             `json:"per100gOf"` // "100 g of the raw mixture"
	Labels    nutritionLabels    `json:"labels"`
	Missing   []missingDocument  `json:"missing"`
	Notes     []string           `json:"notes"`
}

// nutritionMakes is what the recipe makes; perPiece goes by from.
type nutritionMakes struct {
	From float64 `json:"from"`
	To   float64 `json:"to"`
	Of   string  `json:"of"`
}

type allergenDocument struct {
	EU      []string        `json:"eu"`
	US      []string        `json:"us"`
	ANZ     []string        `json:"anz"`
	MayHold mayHoldDocument `json:"mayHold"` // in some makers' versions
	Unsure  []string        `json:"unsure"`
}

type mayHoldDocument struct {
	EU  []string `json:"eu"`
	US  []string `json:"us"`
	ANZ []string `json:"anz"`
}

// nutritionLabels are the worded figures; us is null without pieces.
type nutritionLabels struct {
	US *labelDocument `json:"us"`
	EU labelDocument  `json:"eu"`
}

type labelDocument struct {
	Rule     string             `json:"rule"`
	Servings string             `json:"servings,omitempty"`
	Per      string             `json:"per"`
	Rows     []labelRowDocument `json:"rows"`
	Note     string             `json:"note,omitempty"`
}

type labelRowDocument struct {
	Name    string `json:"name"`
	Amount  string `json:"amount"`
	Part    bool   `json:"part,omitempty"`    // of the row above
	Partial bool   `json:"partial,omitempty"` // a least value
}

type missingDocument struct {
	Line   string           `json:"line"`
	Food   string           `json:"food"`
	Reason nutrition.Reason `json:"reason"`
	Say    string           `json:"say"`
}

func newNutritionDocument(f nutrition.Facts, report safety.Report) nutritionDocument {
	d := nutritionDocument{
		Recipe:    nutrition.FiguresOf(f.Totals),
		Per100g:   nutrition.FiguresOf(f.Per100()),
		Covered:   f.CoveredShare(),
		Per100gOf: f.Hundred(),
		Labels:    nutritionLabels{EU: newLabelDocument(f.EU())},
		Missing:   []missingDocument{},
		Notes:     list(f.Notes),
		Allergens: allergenDocument{
			EU: list(report.EU), US: list(report.US), ANZ: list(report.ANZ), Unsure: list(report.Unsure),
			MayHold: mayHoldDocument{EU: list(report.MayHold.EU), US: list(report.MayHold.US), ANZ: list(report.MayHold.ANZ)},
		},
	}
	if piece, ok := f.PerPiece(); ok {
		figures := nutrition.FiguresOf(piece)
		d.PerPiece = &figures
		d.Makes = &nutritionMakes{From: f.Pieces.From.Float(), To: f.Pieces.To.Float(), Of: f.Of}
	}
	if us, ok := f.US(); ok {
		label := newLabelDocument(us)
		d.Labels.US = &label
	}
	for _, m := range f.Missing {
		d.Missing = append(d.Missing, missingDocument{Line: m.Text, Food: m.Food, Reason: m.Reason, Say: m.Say})
	}
	return d
}

func newLabelDocument(l nutrition.Label) labelDocument {
	d := labelDocument{Rule: l.Rule, Servings: l.Servings, Per: l.Per, Rows: []labelRowDocument{}, Note: l.Note}
	for _, r := range l.Rows {
		d.Rows = append(d.Rows, labelRowDocument{Name: r.Name, Amount: r.Amount, Part: r.Part, Partial: r.Partial})
	}
	return d
}

// list gives words as a JSON list, an empty one where there are none, in plain
// blanks.
func list(words []string) []string {
	all := make([]string, len(words))
	for i, w := range words {
		all[i] = plain(w)
	}
	return all
}

// figureRows are the figures of the whole, as they are named in the text.
var figureRows = []struct {
	name string
	n    food.Nutrient
}{
	{"energy", food.EnergyKcal}, {"protein", food.Protein}, {"fat", food.Fat}, {"of which saturated", food.Saturated},
	{"carbohydrate, with fibre", food.Carbohydrate}, {"of which sugars", food.Sugars}, {"of which fibre", food.Fibre}, {"sodium", food.SodiumMilligrams},
}

// nutritionText shows the figures: the whole, a piece as a US label words it,
// 100 g as an EU one does, the allergens, and what is missing or assumed.
func nutritionText(title string, f nutrition.Facts, report safety.Report) string {
	var s sheet
	s.row("", title)
	s.row(percentText(f.CoveredShare()), "of the weight has figures")
	s.heading("the whole")
	known := f.Totals.Nutrients()
	for _, r := range figureRows {
		figure := "not known"
		if sum := known.Get(r.n); sum != nil {
			figure = measure.FormatDecimal(sum.Round(measure.Ratio(1, 10)), 1) + " " + r.n.Unit()
		}
		s.row(figure, r.name)
	}
	if us, ok := f.US(); ok {
		s.label("US label", us)
	}
	s.label("EU label", f.EU())
	s.allergens(report)
	if len(f.Missing)+len(f.Notes) > 0 {
		s.heading("what the figures leave out, and what they assume")
	}
	for _, m := range f.Missing {
		s.row("? "+string(m.Reason), m.Text+" — "+m.Say)
	}
	for _, note := range f.Notes {
		s.row("note", note)
	}
	return s.String()
}

// percentText rounds a share of three decimals down.
func percentText(share float64) string {
	return fmt.Sprintf("%d %%", int(math.Round(share*1000))/10)
}

func (s *sheet) label(name string, l nutrition.Label) {
	s.heading(name)
	s.row("", l.Per+", rounded by "+l.Rule)
	if l.Servings != "" {
		s.row(l.Servings, "servings")
	}
	for _, r := range l.Rows {
		words := r.Name
		if r.Part {
			words = "– " + words
		}
		if r.Partial {
			words += " (at least)"
		}
		for _, amount := range strings.Split(r.Amount, " / ") { // kJ and kcal
			s.row(amount, words)
		}
	}
}

func (s *sheet) allergens(report safety.Report) {
	s.heading("allergens, as far as the larder knows")
	for _, law := range []struct {
		name           string
		holds, mayHold []string
	}{
		{"EU, UK", report.EU, report.MayHold.EU}, {"US", report.US, report.MayHold.US}, {"AU, NZ", report.ANZ, report.MayHold.ANZ},
	} {
		words := safety.Sentence(law.holds)
		if words == "" {
			words = "None found."
		}
		if len(law.mayHold) > 0 {
			words += " Some makers' versions: " + joined(law.mayHold) + "."
		}
		s.row(law.name, words)
	}
	if len(report.Unsure) > 0 {
		s.row("not known", joined(report.Unsure))
	}
	s.row("", "Read the packs, and follow the rules where you sell or serve food.")
}

func joined(words []string) string { return strings.Join(words, ", ") }
