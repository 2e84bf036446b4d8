package recipe

import (
	"slices"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/ingredient"
	"benchproof/kitchen/recipe/method"
	"benchproof/kitchen/recipe/page"
)

// Reader reads recipes. The zero Reader works: it knows no foods and no
// corrections. A Reader is never changed by reading; many may read at once.
type Reader struct {
	Larder      *food.Larder          // names the foods; nil leaves every FoodID empty
	Corrections map[string]Correction // by the line's text, outer blanks trimmed
}

// Correction is what a person said an ingredient line means. It replaces the
// whole reading of that line.
type Correction struct {
	Amount      measure.Amount
	HasAmount   bool
	Food        string // the food's name
	FoodID      string // the larder's food; "" leaves it to the name
	Preparation string
	Note        string
	ToTaste     bool
	Size        string
}

// Read reads a whole pasted text. It never fails: what it cannot read is kept
// as written and marked. Every line that is not blank is in Recipe.Placed once.
func (r Reader) Read(text string) Recipe {
	var got Recipe
	sorted := page.Sort(text)
	for _, part := range sorted.Parts {
		got.Components = append(got.Components, Component{Name: part.Name, Number: part.Number})
	}
	rows := sorted.Rows
	for i := 0; i < len(rows); i++ {
		first := i
		words := rows[i].Words
		for i+1 < len(rows) && rows[i+1].Of == rows[first].Number {
			i++
			words += " " + rows[i].Words
		}
		r.put(&got, rows[first], words)
	}
	for _, row := range rows {
		got.Placed = append(got.Placed, Place{Number: row.Number, Text: row.Text, In: Part(row.Role), Component: row.Part, Of: row.Of})
	}
	r.finish(&got)
	return got
}

// put places one row, with the words of those that continue it.
func (r Reader) put(got *Recipe, row page.Row, words string) {
	switch row.Role {
	case page.Title:
		got.Title = words
	case page.Yield:
		got.Yield = readYield(words)
	case page.Intro:
		got.Intro = append(got.Intro, words)
	case page.Ingredient:
		c := &got.Components[row.Part]
		for _, text := range r.split(words) {
			line := r.readLine(text)
			line.Number = row.Number
			c.Lines = append(c.Lines, line)
		}
	case page.Step:
		c := &got.Components[row.Part]
		prose := !row.Numbered && (row.Alone || len(words) > 200)
		c.Steps = append(c.Steps, readSteps(row.Number, words, prose)...)
	case page.Note:
		got.Notes = append(got.Notes, words)
	case page.Credit:
		got.Credits = append(got.Credits, words)
	case page.Equipment:
		got.Equipment = append(got.Equipment, words)
	case page.Unread:
		got.Unread = append(got.Unread, Unread{Number: row.Number, Text: row.Text,
			Reason: "No ingredients and no method were found. Put each ingredient on a line of its own, its amount first."})
	}
}

// split cuts a row that lists several ingredients, unless a person corrected it
// as a whole.
func (r Reader) split(words string) []string {
	if _, corrected := r.Corrections[words]; corrected {
		return []string{words}
	}
	if pair, ok := r.pairOf(words); ok {
		return pair
	}
	return ingredient.Split(words)
}

// finish does what needs the whole recipe.
func (r Reader) finish(got *Recipe) {
	got.System = statedSystem(got)
	for i := range got.Components {
		c := &got.Components[i]
		for k := range c.Lines {
			r.weigh(&c.Lines[k], got.System)
		}
		followHob(c.Steps)
	}
	connect(got)
	if got.Yield.Text == "" {
		got.Yield = yieldAtEnd(got)
	}
	for _, s := range method.Sentences(got.Yield.Text) { // "Serves 8. Adapted from a neighbour's card."
		if page.IsCredit(s) && !slices.Contains(got.Credits, s) {
			got.Credits = append(got.Credits, s)
		}
	}
}

// ReadLine reads one ingredient line: "200 g / 7 oz plain flour, sifted". A
// correction for the line's text wins over what the text says.
func (r Reader) ReadLine(text string) Line {
	line := r.readLine(text)
	r.weigh(&line, "")
	return line
}

// readLine is ReadLine before what only a recipe's own measures can tell.
func (r Reader) readLine(text string) Line {
	text = strings.TrimSpace(strings.ToValidUTF8(text, "\ufffd"))
	got := ingredient.Read(page.Words(text), r.knows())
	line := lineOf(text, got)
	r.correct(&line)
	r.name(&line, got.As)
	return line
}

func lineOf(text string, got ingredient.Reading) Line {
	return Line{
		Text: text, Read: got.Read, Reason: got.Reason,
		Amount: got.Amount, HasAmount: got.HasAmount, About: got.About, Plus: got.Plus, Equals: got.Equals,
		Packs: Packs{Count: got.Count, Size: got.Pack, Unit: got.In}, Size: got.Size,
		Food: got.Food, Preparation: got.Preparation, Note: got.Note,
		Optional: got.Optional, ToTaste: got.ToTaste, Divided: got.Divided, System: got.System,
	}
}

// correct replaces the reading by what a person said, if they said anything
// about this line.
func (r Reader) correct(line *Line) {
	c, ok := r.Corrections[line.Text]
	if !ok {
		return
	}
	*line = Line{Number: line.Number, Text: line.Text, Read: true, Corrected: true, Amount: c.Amount, HasAmount: c.HasAmount,
		Food: c.Food, FoodID: c.FoodID, Preparation: c.Preparation, Note: c.Note, ToTaste: c.ToTaste, Size: c.Size}
}

// knows tells the grammar which names the larder has just as they stand.
func (r Reader) knows() ingredient.Knows {
	if r.Larder == nil {
		return nil
	}
	return func(name string) string {
		switch match := r.Larder.Match(name); match.How {
		case food.Exact, food.Alias, food.Learned:
			return match.Food.ID
		}
		return ""
	}
}

// name finds the line's food in the larder, and the form it was measured in.
func (r Reader) name(line *Line, as string) {
	if r.Larder == nil || !line.Read || line.FoodID != "" {
		return
	}
	match := r.Larder.Match(line.Food)
	if match.Food != nil {
		line.FoodID, line.Form = match.Food.ID, match.Form
	}
	if as != "" { // "1 cup mashed pumpkin" weighs otherwise than pumpkin
		if prepared := r.Larder.Match(as + " " + line.Food); prepared.Food != nil && (prepared.Food == match.Food || match.Food == nil) {
			line.FoodID, line.Form = prepared.Food.ID, prepared.Form
		}
	}
	if line.FoodID != "" {
		return
	}
	if f := onlyMeasured(match.Choices, line); f != nil {
		line.FoodID = f.ID
		return
	}
	for _, f := range match.Choices {
		line.Choices = append(line.Choices, f.ID)
	}
}

// onlyMeasured gives the one of several foods that is measured as the line says:
// a bunch of coriander is the herb, 5 cm of ginger the root. It gives nil if
// several are, or none.
func onlyMeasured(choices []*food.Food, line *Line) *food.Food {
	kind := line.Amount.Unit.Kind()
	if !line.HasAmount || kind != measure.Count && kind != measure.Length {
		return nil
	}
	var only *food.Food
	for _, f := range choices {
		if _, err := f.Grams(line.Amount, line.form(), line.System); err != nil {
			continue
		}
		if only != nil {
			return nil
		}
		only = f
	}
	return only
}
