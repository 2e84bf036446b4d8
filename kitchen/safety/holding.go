package safety

import (
	"regexp"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/recipe"
)

// LeastStanding is the shortest time in minutes, between cold and hot, of which
// Holding has anything to say: FSANZ Standard 3.2.2, 2 hours.
const LeastStanding = 2 * 60

// Holding gives what published rules say of food that stands between cold
// (5 °C) and hot (60 °C) for so many minutes, added up; the strictest first,
// none below LeastStanding. Cooked food is one that has been heated before.
func Holding(minutes int, isCooked bool) []Caution {
	stands := func(l Limit) int { return minutes - l.Seconds/60 }
	var all []Caution
	if stands(ANZDiscard) >= 0 {
		all = append(all, Caution{"After 4 hours between 5 °C and 60 °C, added up, throw it away.", ANZDiscard.Source})
		all = append(all, Caution{"Without cold or hot holding, use it within 4 hours or throw it away.", TimeAlone.Source})
	}
	if stands(OutOfFridge) > 0 {
		all = append(all, Caution{"Put it into the refrigerator within 2 hours, 1 hour where it is above " + OutInHeat.Temperature() + ".", OutOfFridge.Source})
	}
	if isCooked && stands(CoolFirst) > 0 {
		all = append(all, Caution{"Cool cooked food to " + CoolFirst.Temperature() + " within 2 hours, and to " + CoolWhole.Temperature() + " within 6 in all: in shallow dishes, or over ice.", CoolFirst.Source})
	}
	if stands(ANZUse) >= 0 && stands(ANZDiscard) < 0 {
		all = append(all, Caution{"Between 2 and 4 hours from 5 °C to 60 °C, added up: use it at once, do not keep it.", ANZUse.Source})
	}
	return all
}

var (
	spoils = regexp.MustCompile(`\b(milk|buttermilk|cream|crème|creme|yogh?urts?|ricotta|mascarpone|cottage cheese|cream cheese|custard|tofu|ham|bacon|liver|offal)\b`)
	// what is called so and keeps: dried, boiled down, sealed
	keeps = regexp.MustCompile(`\bcream of tartar\b|\bmilk (powder|chocolate)\b|\b(powdered|dried|condensed|evaporated) milk\b|\bcream crackers?\b|\bcustard powder\b`)
)

// Spoils tells whether a component of a recipe holds food that must not stand
// warm for long: eggs, milk and cream, meat, poultry, fish, rice that is cooked.
// It goes by names and can miss one. The larder may be nil.
func Spoils(r recipe.Recipe, component int, larder *food.Larder) bool {
	if component < 0 || component >= len(r.Components) {
		return false
	}
	d := newDish(recipe.Recipe{Components: r.Components[component : component+1]}, larder)
	fresh := func(want, not *regexp.Regexp) bool { return d.hasUntinned(want, not) }
	return fresh(spoils, keeps) || fresh(egg, notEgg) || fresh(poultry, notMeat) || fresh(meat, notMeat) || fresh(mince, cookedMince) ||
		fresh(fish, notFish) || d.has(rice, notRice) && strings.TrimSpace(d.method) != "" && hasRice(d)
}
