package nutrition

import (
	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Missing is a line that is not in the figures, or only with its mass.
type Missing struct {
	Text   string // the line as written
	Food   string // the food as written; "" if the line was not read
	Reason Reason
	Say    string // what is wrong, in the person's words
}

// Reason is why a line is missing.
type Reason string

// The reasons.
const (
	NotRead   Reason = "not read"
	ToTaste   Reason = "to taste"     // the cook decides how much
	NoAmount  Reason = "no amount"    // and nothing says that the cook decides
	Unknown   Reason = "unknown food" // its mass counts, if it has one
	Ambiguous Reason = "several foods"
	NoWeight  Reason = "no weight"  // the larder cannot weigh that measure of it
	NoFigures Reason = "no figures" // its energy is not known; its mass counts
)

func notRead(text, reason string) Missing {
	if reason == "" {
		reason = "It could not be read as an ingredient."
	}
	return Missing{Text: text, Reason: NotRead, Say: reason}
}

func unmeasured(l recipe.Line) Missing {
	m := Missing{Text: l.Text, Food: l.Food, Reason: NoAmount, Say: "No amount is written."}
	if l.ToTaste {
		m.Reason, m.Say = ToTaste, "How much is up to the cook."
	}
	return m
}

func unknown(l recipe.Line) Missing {
	m := Missing{Text: l.Text, Food: l.Food, Reason: Unknown, Say: "The larder does not know “" + l.Food + "”."}
	if len(l.Choices) > 0 {
		m.Reason, m.Say = Ambiguous, "“"+l.Food+"” could be several foods. Which is meant?"
	}
	return m
}

func unweighed(l recipe.Line, err error) Missing {
	return Missing{Text: l.Text, Food: l.Food, Reason: NoWeight, Say: fault.Say(err)}
}

func noFigures(l recipe.Line, f *food.Food) Missing {
	return Missing{Text: l.Text, Food: l.Food, Reason: NoFigures, Say: "The larder does not know the energy of " + f.Name + "."}
}

// saltySodium is the sodium, in mg, that only salt and its blends have in 100 g.
var saltySodium = measure.Whole(10_000)

// isSalt tells foods whose sodium matters even by the pinch.
func isSalt(f *food.Food) bool {
	return f != nil && f.Per100.SodiumMilligrams != nil && f.Per100.SodiumMilligrams.Cmp(saltySodium) > 0
}
