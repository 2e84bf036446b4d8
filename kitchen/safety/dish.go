package safety

import (
	"regexp"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// dish is a recipe as the rules look at it. All words are lower case.
type dish struct {
	ingredients []ingredient
	names       string   // of the recipe and its components
	steps       []string // the method
	method      string   // the steps in one
	remarks     string   // intro and notes
	heated      int      // index of the first step with heat; −1 if none has
	fryer       bool
}

type ingredient struct {
	name   string // as written, and as the larder calls it
	aisle  string // "" if the larder does not know it
	tinned bool
}

func newDish(r recipe.Recipe, larder *food.Larder) dish {
	d := dish{heated: -1, remarks: strings.ToLower(strings.Join(append(append([]string(nil), r.Intro...), r.Notes...), "\n"))}
	names := []string{r.Title}
	for _, component := range r.Components {
		names = append(names, component.Name)
		for _, line := range component.Lines {
			d.ingredients = append(d.ingredients, newIngredient(line, larder))
		}
		for _, step := range component.Steps {
			if d.heated < 0 && heats(step) {
				d.heated = len(d.steps)
			}
			d.steps = append(d.steps, strings.ToLower(step.Text))
			d.fryer = d.fryer || step.Station == "fryer"
		}
	}
	d.names = strings.ToLower(strings.Join(names, "\n"))
	d.method = strings.Join(d.steps, "\n")
	return d
}

func newIngredient(line recipe.Line, larder *food.Larder) ingredient {
	i := ingredient{name: line.Food, tinned: line.Packs.Unit == measure.Tin || line.Amount.Unit == measure.Tin}
	if !line.Read || line.Food == "" {
		i.name = line.Text
	}
	if f := foodOf(line, larder); f != nil {
		i.name += "\n" + f.Name
		i.aisle = f.Aisle
	}
	i.name = strings.ToLower(i.name)
	i.tinned = i.tinned || tinnedWords.MatchString(i.name) || i.aisle == "Tins and jars"
	return i
}

var (
	tinnedWords = regexp.MustCompile(`\b(tinned|canned|tins?|cans?|jarred)\b`)
	heatWords   = regexp.MustCompile(`\b(boil|simmer|bak(e|ing)|roast|fry|fried|deep-fry|sear|brown|grill|broil|poach|steam|toast|cook|melt|scald|stew|braise|sauté|saute|caramelis|carameliz|microwave)`)
)

// heats tells whether a step cooks: by its station, its temperature or its verb.
func heats(step recipe.Step) bool {
	switch step.Station {
	case "oven", "hob", "fryer", "grill":
		return true
	}
	return heatWords.MatchString(strings.ToLower(step.Text))
}

// isHot tells whether anything in the recipe is cooked.
func (d dish) isHot() bool { return d.heated >= 0 }

// has tells whether some ingredient's name matches and none of not does.
func (d dish) has(want, not *regexp.Regexp) bool {
	for _, i := range d.ingredients {
		if want.MatchString(i.name) && (not == nil || !not.MatchString(i.name)) {
			return true
		}
	}
	return false
}

// afterHeat tells whether a step behind the first with heat matches, or a note.
func (d dish) afterHeat(want *regexp.Regexp) bool {
	if !d.isHot() {
		return false
	}
	return want.MatchString(strings.Join(d.steps[d.heated:], "\n")) || want.MatchString(d.remarks)
}
