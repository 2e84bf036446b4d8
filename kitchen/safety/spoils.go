package safety

import (
	"regexp"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/recipe"
)

// Heat is what has been done to an ingredient before it stands.
type Heat int

// What is baked and then heated otherwise is still Baked.
const (
	Unheated Heat = iota
	Cooked        // on the hob, in the fryer, under the grill
	Baked         // in the oven
)

// These foods need the cold. Eggs, meat, poultry and fish have words of their
// own in the rules of Cautions.
var (
	dairy      = regexp.MustCompile(`\b(milk|buttermilk|cream|crème|creme|yogh?urts?|custard)\b`)
	freshFoods = regexp.MustCompile(`\b(ricotta|mascarpone|cottage cheese|cream cheese|tofu|ham|bacon|pancetta|liver|offal|(boiled|cooked) eggs?|hard-boiled eggs?|smoked (salmon|trout|mackerel))\b`)
	// What is called so and keeps: dried, boiled down, sealed, no milk at all.
	keeps = regexp.MustCompile(`\bcream of tartar\b|\bmilk (powder|chocolate)\b|\b(powdered|dried|condensed|evaporated) milk\b|\bcream crackers?\b|\bcustard powder\b`)
	// Food from plants that needs the cold once it is cooked: FDA Food Code,
	// section 1-201.10, "time/temperature control for safety food" (from memory);
	// stock likewise.
	cookedFoods = regexp.MustCompile(`\b(pasta|spaghetti|macaroni|penne|tagliatelle|noodles|beans|lentils|chickpeas|potato(es)?|stock|broth|gravy|coconut milk|tofu)\b`)
	// Dough and batter whose eggs and milk keep once they are baked in: bread and
	// cake. Common practice, no source.
	doughs   = regexp.MustCompile(`\b(doughs?|batters?|pastry|knead\w*|crumble|cakes?|biscuits?|cookies?|bread|loaf|loaves|buns?|rolls?|scones?|muffins?|sponge|choux|brioche|brownies?|shortbread|crackers?|crust)\b`)
	softBake = regexp.MustCompile(`cheesecake|clafoutis|frittata|\bpudding|\bstrata\b|\bpot pie\b|\bsoufflé|\bsouffle`)
)

// Spoils tells whether an ingredient line must not stand long between cold and
// hot: eggs, milk and cream, meat, poultry, fish; cooked rice, beans and the
// like; but not the eggs and milk of a dough that is baked. It goes by names and
// can miss one. The larder may be nil.
func Spoils(r recipe.Recipe, component, line int, heat Heat, larder *food.Larder) bool {
	if component < 0 || component >= len(r.Components) || line < 0 || line >= len(r.Components[component].Lines) {
		return false
	}
	d := dish{ingredients: []ingredient{newIngredient(r.Components[component].Lines[line], larder)}}
	has := d.hasUntinned
	switch {
	case has(poultry, notMeat), has(meat, notMeat), has(mince, cookedMince), has(fish, notFish), has(freshFoods, nil):
		return true
	case heat == Baked && isDough(r, component, larder):
		return false
	case has(egg, notEgg), has(dairy, keeps):
		return true
	}
	return heat != Unheated && (d.has(rice, notRice) || d.has(cookedFoods, nil))
}

// IsDough tells whether a component is a dough or a batter that becomes bread or
// cake when it is baked: with flour in it, and called so.
func IsDough(r recipe.Recipe, component int, larder *food.Larder) bool {
	return component >= 0 && component < len(r.Components) && isDough(r, component, larder)
}

func isDough(r recipe.Recipe, component int, larder *food.Larder) bool {
	only := r.Components[component]
	if len(only.Steps) == 0 { // the method stands by itself
		for _, c := range r.Components {
			if len(c.Lines) == 0 {
				only.Steps = append(only.Steps, c.Steps...)
			}
		}
	}
	d := newDish(recipe.Recipe{Title: r.Title, Components: []recipe.Component{only}}, larder)
	words := strings.Join([]string{d.names, d.method}, "\n")
	return d.has(flour, notFlour) && doughs.MatchString(words) && !custard.MatchString(words) && !softBake.MatchString(words)
}
