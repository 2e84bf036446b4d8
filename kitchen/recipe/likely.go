package recipe

import (
	"slices"
	"strings"

	"benchproof/kitchen/measure"
)

// americanWords are names that US recipes use and others do not; common
// practice, no source.
var americanWords = []string{
	"all-purpose", "all purpose", "confectioners", "powdered sugar", "heavy cream", "half-and-half", "half and half", "kosher salt",
	"cilantro", "scallion", "eggplant", "zucchini", "ground beef", "ground pork", "ground turkey", "cornstarch", "molasses", "skillet",
	"broiler", "stick of butter", "sticks of butter", "graham cracker", "bell pepper", "arugula", "cookie sheet", "saran",
}

// LikelySystem tells which measures a recipe that states none was probably
// written in, and what points to it: "a stick of butter", "oven in °F only". It
// gives "" unless at least two things point to US customary measures, or one of
// them is a stick, and nothing in the text is metric.
func (r Recipe) LikelySystem() (system measure.System, because []string) {
	if r.System != "" {
		return "", nil
	}
	e := evidence{}
	for _, c := range r.Components {
		for _, line := range c.Lines {
			e.line(line)
		}
		for _, step := range c.Steps {
			e.words(step.Text)
			e.heats(step.Temperatures)
		}
	}
	if e.metric || len(e.because) == 0 || (len(e.because) == 1 && !e.stick) {
		return "", nil
	}
	return measure.US, e.because
}

// MeasuredIn is the measures the recipe is to be read in: those it states, else
// those its words point to; "" leaves it to the show.
func (r Recipe) MeasuredIn() measure.System {
	likely, _ := r.LikelySystem()
	return r.System.Or(likely)
}

// evidence gathers what points to US measures, each thing once.
type evidence struct {
	because       []string
	stick, metric bool
}

func (e *evidence) say(what string) {
	if !slices.Contains(e.because, what) {
		e.because = append(e.because, what)
	}
}

func (e *evidence) line(l Line) {
	e.words(l.Text)
	e.amount(l.Amount)
	e.amount(l.Packs.Size)
	for _, other := range append(slices.Clone(l.Equals), l.Plus...) {
		e.amount(other)
	}
}

func (e *evidence) amount(a measure.Amount) {
	switch a.Unit {
	case measure.Stick:
		e.stick = true
		e.say("butter in sticks")
	case measure.Ounce, measure.Pound:
		e.say("weights in ounces and pounds")
	case measure.Gram, measure.Kilogram, measure.Millilitre, measure.Centilitre, measure.Decilitre, measure.Litre:
		e.metric = true
	}
}

func (e *evidence) words(text string) {
	folded := strings.ToLower(text)
	for _, word := range americanWords {
		if strings.Contains(folded, word) {
			e.say("American names such as “" + word + "”")
			return
		}
	}
}

func (e *evidence) heats(heats []measure.Heat) {
	for _, heat := range heats {
		switch heat.Scale {
		case "F":
			e.say("temperatures in °F")
		case "C", "gas":
			e.metric = true
		}
	}
}
