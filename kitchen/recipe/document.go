package recipe

import (
	"encoding/json"
	"strings"

	"benchproof/kitchen/measure"
)

// Document is a recipe as the command line prints it in JSON. Amounts are exact
// text ("3/2"), minutes and degrees decimal numbers. What was not said is left
// out.
type Document struct {
	Title      string              `json:"title"`
	By         *measure.Number     `json:"by,omitempty"` // the factor, of a scaled recipe
	Yield      DocumentYield       `json:"yield"`
	System     measure.System      `json:"system,omitempty"`
	Intro      []string            `json:"intro,omitempty"`
	Components []DocumentComponent `json:"components"`
	Equipment  []string            `json:"equipment,omitempty"`
	Remarks    []string            `json:"remarks,omitempty"` // the recipe's own notes
	Credits    []string            `json:"credits,omitempty"`
	Unread     []DocumentUnread    `json:"unread,omitempty"`
	Notes      []string            `json:"notes,omitempty"` // what does not scale
}

// DocumentYield is what the recipe makes.
type DocumentYield struct {
	Text   string         `json:"text"`
	Amount *measure.Range `json:"amount,omitempty"`
	Unit   measure.Unit   `json:"unit,omitempty"`
	Of     string         `json:"of,omitempty"`
}

// DocumentComponent is one component.
type DocumentComponent struct {
	Name  string         `json:"name"`
	Lines []DocumentLine `json:"lines"`
	Steps []DocumentStep `json:"steps"`
}

// DocumentLine is one ingredient line. Exact, Shown and ErrorPercent stand in a
// scaled recipe only.
type DocumentLine struct {
	Text         string           `json:"text"`
	Amount       *measure.Range   `json:"amount,omitempty"`
	Unit         measure.Unit     `json:"unit"`
	Food         string           `json:"food"`
	Note         string           `json:"note"`
	Read         bool             `json:"read"`
	Reason       string           `json:"reason,omitempty"`
	About        bool             `json:"about,omitempty"`
	Plus         []measure.Amount `json:"plus,omitempty"`
	Equals       []measure.Amount `json:"equals,omitempty"`
	Packs        *DocumentPacks   `json:"packs,omitempty"`
	Size         string           `json:"size,omitempty"`
	FoodID       string           `json:"foodId,omitempty"`
	Choices      []string         `json:"choices,omitempty"`
	Preparation  string           `json:"preparation,omitempty"`
	Optional     bool             `json:"optional,omitempty"`
	ToTaste      bool             `json:"toTaste,omitempty"`
	Divided      bool             `json:"divided,omitempty"`
	System       measure.System   `json:"system,omitempty"`
	Exact        *string          `json:"exact,omitempty"`
	Shown        *string          `json:"shown,omitempty"`
	ErrorPercent *float64         `json:"errorPercent,omitempty"`
}

// DocumentPacks is "2 × 400 g tins".
type DocumentPacks struct {
	Count measure.Range  `json:"count"`
	Size  measure.Amount `json:"size"`
	Unit  measure.Unit   `json:"unit"`
}

// DocumentStep is one step.
type DocumentStep struct {
	Text         string         `json:"text"`
	Minutes      *DocumentRange `json:"minutes,omitempty"`
	HandsOn      bool           `json:"handsOn"`
	Station      string         `json:"station"`
	Temperatures []DocumentHeat `json:"temperatures"`
	Cue          string         `json:"cue"`
	Reason       string         `json:"reason,omitempty"`
	Uses         []DocumentUse  `json:"uses,omitempty"`
	Finishes     string         `json:"finishes,omitempty"`
}

// DocumentRange is a range of decimal numbers.
type DocumentRange struct {
	From json.Number `json:"from"`
	To   json.Number `json:"to"`
}

// DocumentHeat is one temperature: scale C, F or gas, "" if not said.
type DocumentHeat struct {
	DocumentRange
	Scale string `json:"scale"`
	Oven  string `json:"oven,omitempty"`
	Text  string `json:"text"`
}

// DocumentUse is one ingredient, or one component made before, that a step names.
type DocumentUse struct {
	Component string          `json:"component"`
	Food      string          `json:"food,omitempty"` // "" for the component as made
	Amount    *measure.Amount `json:"amount,omitempty"`
	Words     string          `json:"words"`
}

// DocumentUnread is a line that found no place.
type DocumentUnread struct {
	Line   int    `json:"line"`
	Text   string `json:"text"`
	Reason string `json:"reason"`
}

// Document gives r in the shape that is printed as JSON.
func (r Recipe) Document() Document {
	d := Document{
		Title: r.Title, System: r.System, Intro: r.Intro, Equipment: r.Equipment, Remarks: r.Notes, Credits: r.Credits,
		Yield:      DocumentYield{Text: r.Yield.Text, Unit: r.Yield.Amount.Unit, Of: r.Yield.Of},
		Components: []DocumentComponent{},
	}
	if !r.Yield.Amount.IsZero() {
		d.Yield.Amount = &r.Yield.Amount.Range
	}
	for _, u := range r.Unread {
		d.Unread = append(d.Unread, DocumentUnread{Line: u.Number, Text: u.Text, Reason: u.Reason})
	}
	for _, c := range r.Components {
		component := DocumentComponent{Name: c.Name, Lines: []DocumentLine{}, Steps: []DocumentStep{}}
		for _, l := range c.Lines {
			component.Lines = append(component.Lines, documentLine(l))
		}
		for _, s := range c.Steps {
			component.Steps = append(component.Steps, documentStep(r, s))
		}
		d.Components = append(d.Components, component)
	}
	return d
}

// Document gives the scaled recipe in the same shape, each line with its exact
// and its shown amount.
func (s Scaled) Document() Document {
	d := s.Recipe.Document()
	d.By, d.Notes = &s.By, s.Notes
	d.Yield.Text = spaced(s.Yield)
	for _, l := range s.Lines {
		line := &d.Components[l.Component].Lines[l.Line]
		shown := strings.TrimSpace(spaced(l.Measure))
		exact := l.Exact
		off := float64(int(l.ErrorPercent*100+0.5)) / 100
		line.Exact, line.Shown, line.ErrorPercent = &exact, &shown, &off
	}
	return d
}

func documentLine(l Line) DocumentLine {
	d := DocumentLine{
		Text: l.Text, Unit: l.Amount.Unit, Food: l.Food, Note: l.Note, Read: l.Read, Reason: l.Reason, About: l.About,
		Plus: l.Plus, Equals: l.Equals, Size: l.Size, FoodID: l.FoodID, Choices: l.Choices, Preparation: l.Preparation,
		Optional: l.Optional, ToTaste: l.ToTaste, Divided: l.Divided, System: l.System,
	}
	if l.HasAmount {
		d.Amount = &l.Amount.Range
	}
	if !l.Packs.Count.IsZero() {
		d.Packs = &DocumentPacks{Count: l.Packs.Count, Size: l.Packs.Size, Unit: l.Packs.Unit}
	}
	return d
}

func documentStep(r Recipe, s Step) DocumentStep {
	d := DocumentStep{Text: s.Text, HandsOn: s.HandsOn, Station: s.Station, Cue: s.Cue, Reason: s.Reason, Finishes: s.Finishes,
		Temperatures: []DocumentHeat{}}
	if s.HasMinutes {
		minutes := documentRange(s.Minutes)
		d.Minutes = &minutes
	}
	for _, h := range s.Temperatures {
		d.Temperatures = append(d.Temperatures, DocumentHeat{DocumentRange: documentRange(h.Degrees), Scale: h.Scale, Oven: h.Oven, Text: h.Text})
	}
	for _, u := range s.Uses {
		use := DocumentUse{Component: r.Components[u.Component].Name, Words: u.Words}
		if u.Line >= 0 {
			use.Food = r.Components[u.Component].Lines[u.Line].Food
		}
		if u.HasAmount {
			use.Amount = &u.Amount
		}
		d.Uses = append(d.Uses, use)
	}
	return d
}

func documentRange(r measure.Range) DocumentRange {
	return DocumentRange{From: plainDecimal(r.From), To: plainDecimal(r.To)}
}
