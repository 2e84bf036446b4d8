package web

import (
	"fmt"
	"net/http"
	"strings"

	"github.com/go-chi/chi/v5"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/views"
)

func foodPath(id string) string { return "/larder/" + id }

func (s *Server) showLarder(w http.ResponseWriter, r *http.Request) error {
	page, err := s.page(r, "Larder", views.SectionLarder)
	if err != nil {
		return err
	}
	query, aisle := strings.TrimSpace(r.URL.Query().Get("q")), aisleOf(r)
	foods := foundFoods(s.config.Larder, query, aisle)
	view := views.LarderPage{
		Page: page, Groups: larderGroups(foods), Found: count(len(foods), "food", "foods"), Aisles: aisleChoices(aisle),
		Search: views.Form{ID: "search", Get: true, Action: "/larder", Submit: "Search", Fields: []views.Field{{Name: "q", Label: "Food", Value: query}}},
	}
	if query != "" {
		view.Found += " for “" + query + "”"
	}
	if len(foods) == 0 {
		view.Empty = "The larder has no food of this name. Try its plainest name, such as “flour”."
	}
	return s.draw(w, r, http.StatusOK, views.Larder(view))
}

// everyAisle stands for all of them in an address.
const everyAisle = "all"

// aisleOf is the aisle an address asks for; without one a search looks in every
// aisle, and the page begins with the first: the larder has over a thousand
// foods.
func aisleOf(r *http.Request) string {
	aisle, query := r.URL.Query().Get("aisle"), r.URL.Query().Get("q")
	switch {
	case aisle != "":
		return aisle
	case strings.TrimSpace(query) != "":
		return everyAisle
	}
	return food.Aisles[0]
}

// foundFoods are the foods whose names hold the words searched, in an aisle.
func foundFoods(larder *food.Larder, query, aisle string) []*food.Food {
	var found []*food.Food
	words := strings.Fields(strings.ToLower(query))
	for _, f := range larder.Foods() {
		names := strings.ToLower(f.Name + "\n" + strings.Join(f.Names, "\n"))
		if (aisle == everyAisle || f.Aisle == aisle) && containsAll(names, words) {
			found = append(found, f)
		}
	}
	return found
}

func containsAll(text string, words []string) bool {
	for _, w := range words {
		if !strings.Contains(text, w) {
			return false
		}
	}
	return true
}

func aisleChoices(current string) []views.Choice {
	choices := []views.Choice{{Text: "all aisles", Path: "/larder?aisle=" + everyAisle, Current: current == everyAisle}}
	for _, aisle := range food.Aisles {
		choices = append(choices, views.Choice{Text: aisle, Path: "/larder?aisle=" + urlText(aisle), Current: aisle == current})
	}
	return choices
}

func larderGroups(foods []*food.Food) []views.LarderGroup {
	var groups []views.LarderGroup
	for _, aisle := range food.Aisles {
		group := views.LarderGroup{Aisle: aisle}
		for _, f := range foods {
			if f.Aisle == aisle {
				group.Foods = append(group.Foods, foodRow(f))
			}
		}
		if len(group.Foods) > 0 {
			groups = append(groups, group)
		}
	}
	return groups
}

// otherNames is how many of a food's names its row shows.
const otherNames = 3

func foodRow(f *food.Food) views.FoodRow {
	row := views.FoodRow{Name: f.Name, Path: foodPath(f.ID), Names: strings.Join(f.Names[:min(otherNames, len(f.Names))], ", ")}
	if len(f.Weights) > 0 {
		row.Measure, row.Of = grams(f.Weights[0].Grams), weightOf(f.Weights[0])
	}
	return row
}

func grams(n measure.Number) string {
	return measure.FormatDecimal(n.Round(measure.Ratio(1, 10)), 1) + "\u00a0g"
}

// weightOf words the measure that a weight is of: "1 cup, sifted".
func weightOf(w food.Weight) string {
	unit := w.Unit.Name(false)
	if w.Unit == measure.Each {
		unit = "piece"
		if w.Form != "" {
			return "1 " + w.Form
		}
	}
	return joined(", ", "1 "+unit, w.Form)
}

func (s *Server) showFood(w http.ResponseWriter, r *http.Request) error {
	f, ok := s.config.Larder.Food(chi.URLParam(r, "food"))
	if !ok {
		return fault.NotFoundf("The larder has no such food.")
	}
	page, err := s.page(r, f.Name, views.SectionLarder)
	if err != nil {
		return err
	}
	return s.draw(w, r, http.StatusOK, views.Food(newFoodPage(page, f)))
}

func newFoodPage(page views.Page, f *food.Food) views.FoodPage {
	view := views.FoodPage{
		Page: page, Name: f.Name, Aisle: f.Aisle, Path: "/larder", Names: f.Names,
		Allergens: allergenText(f), Source: sourceText(f.Source),
		AliasForm: views.Form{
			ID: "alias", Title: "Teach it another name", Action: foodPath(f.ID) + "/names", Submit: "Remember this name",
			Fields: []views.Field{{Name: "name", Label: "Name", Required: true, Hint: "As your recipes write it."}},
		},
	}
	for _, weight := range f.Weights {
		view.Weights = append(view.Weights, views.WeightRow{Grams: grams(weight.Grams), Of: weightOf(weight), Source: sourceText(weight.Source)})
	}
	for _, n := range food.AllNutrients() {
		if figure := f.Per100.Get(n); figure != nil {
			view.Nutrients = append(view.Nutrients, views.Figure{Value: measure.FormatDecimal(*figure, 1) + "\u00a0" + n.Unit(), Label: n.String()})
		}
	}
	for _, pack := range f.Packs {
		view.Packs = append(view.Packs, joined(" ", pack.Amount.String(), pack.Name))
	}
	return view
}

func allergenText(f *food.Food) string {
	text := strings.Join(f.Allergens, ", ")
	if text == "" {
		text = "none known"
	}
	if len(f.MayHold) > 0 {
		text += "; some makers' hold " + strings.Join(f.MayHold, ", ") + ": read the pack"
	}
	return text
}

func sourceText(source string) string {
	if food.IsEstimate(source) {
		return "an estimate: no table names it"
	}
	return source
}

// learnName keeps another name for a food, for every recipe from now on.
func (s *Server) learnName(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	f, ok := s.config.Larder.Food(chi.URLParam(r, "food"))
	if !ok {
		return fault.NotFoundf("The larder has no such food.")
	}
	name := form.needed("name", "Write the name to remember.")
	if err := form.err(); err != nil {
		page, pageErr := s.page(r, f.Name, views.SectionLarder)
		if pageErr != nil {
			return pageErr
		}
		view := newFoodPage(page, f)
		view.AliasForm.Fields = filled(view.AliasForm.Fields, form.values.Get, err)
		return s.draw(w, r, http.StatusUnprocessableEntity, views.Food(view))
	}
	if err := s.store.LearnFood(r.Context(), name, f.ID); err != nil {
		return err
	}
	s.flash(r, fmt.Sprintf("“%s” now means %s.", name, f.Name), "")
	return seeOther(w, r, foodPath(f.ID))
}
