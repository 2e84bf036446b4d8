package safety

import (
	"slices"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/recipe"
)

// Report is what a recipe contains by three laws, as far as the larder knows.
// An empty list means that none of that law's allergens was found, which is no
// promise while Unsure or MayHold has anything in it.
type Report struct {
	EU  []string // EU and UK, of 14
	US  []string // of 9
	ANZ []string // Australia and New Zealand, as the "Contains" summary
	// MayHold is what some makers' versions of a food hold and others do not.
	MayHold food.AllergenLists
	// Unsure names the foods the larder cannot answer for, as written, and the
	// lines that were not read.
	Unsure []string
}

// Allergens reports on every line of the recipe, optional ones too. The larder
// may be nil: then every food is unsure.
func Allergens(r recipe.Recipe, larder *food.Larder) Report {
	var report Report
	var foods []*food.Food
	unsure := func(name string) {
		name = strings.Join(strings.Fields(name), " ")
		if name != "" && !slices.Contains(report.Unsure, name) {
			report.Unsure = append(report.Unsure, name)
		}
	}
	for _, component := range r.Components {
		for _, line := range component.Lines {
			switch f := foodOf(line, larder); {
			case f != nil:
				foods = append(foods, f)
			case line.Read && strings.TrimSpace(line.Food) != "":
				unsure(line.Food)
			default:
				unsure(line.Text)
			}
		}
	}
	for _, line := range r.Unread {
		unsure(line.Text)
	}
	holds, mayHold := food.AllergensOf(foods...)
	lists := food.Allergens(holds)
	report.EU, report.US, report.ANZ = lists.EU, lists.US, lists.ANZ
	report.MayHold = food.Allergens(mayHold)
	return report
}

// foodOf is the larder's food of a line that was read; nil if it knows none.
func foodOf(line recipe.Line, larder *food.Larder) *food.Food {
	if larder == nil || !line.Read || line.FoodID == "" {
		return nil
	}
	f, ok := larder.Food(line.FoodID)
	if !ok {
		return nil
	}
	return f
}

// Sentence words a list for viewers: "Contains milk, eggs and cereals
// containing gluten (wheat)."; "" for an empty one.
func Sentence(list []string) string {
	switch n := len(list); n {
	case 0:
		return ""
	case 1:
		return "Contains " + list[0] + "."
	default:
		return "Contains " + strings.Join(list[:n-1], ", ") + " and " + list[n-1] + "."
	}
}
