package web

import (
	"fmt"
	"net/http"
	"strings"

	"github.com/go-chi/chi/v5"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/shop"
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
	if aisle == inStock {
		return s.drawInStock(w, r, page)
	}
	view := views.LarderPage{
		Page: page, Groups: larderGroups(foods, foodRow), Found: count(len(foods), "food", "foods"), Aisles: aisleChoices(aisle),
		Search: larderSearch(query),
	}
	if query != "" {
		view.Found += " for “" + query + "”"
	}
	if len(foods) == 0 {
		view.Empty = "The larder has no food of this name. Try its plainest name, such as “flour”."
	}
	return s.draw(w, r, http.StatusOK, views.Larder(view))
}

func larderSearch(query string) views.Form {
	return views.Form{ID: "search", Get: true, Action: "/larder", Submit: "Search", Fields: []views.Field{{Name: "q", Label: "Food", Value: query}}}
}

// In an address, everyAisle stands for all of them, and inStock for what is in
// the larder now.
const (
	everyAisle = "all"
	inStock    = "stock"
)

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
	choices := []views.Choice{
		{Text: "in stock", Path: "/larder?aisle=" + inStock, Current: current == inStock},
		{Text: "all aisles", Path: "/larder?aisle=" + everyAisle, Current: current == everyAisle},
	}
	for _, aisle := range food.Aisles {
		choices = append(choices, views.Choice{Text: aisle, Path: "/larder?aisle=" + urlText(aisle), Current: aisle == current})
	}
	return choices
}

// larderGroups are the foods by aisle, each worded by row.
func larderGroups(foods []*food.Food, row func(*food.Food) views.FoodRow) []views.LarderGroup {
	var groups []views.LarderGroup
	for _, aisle := range food.Aisles {
		group := views.LarderGroup{Aisle: aisle}
		for _, f := range foods {
			if f.Aisle == aisle {
				group.Foods = append(group.Foods, row(f))
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

// foodDesk is what a food's page is drawn from.
type foodDesk struct {
	food *food.Food
	show episode.Show
}

// openFood finds the food of the address.
func (s *Server) openFood(r *http.Request) (*foodDesk, error) {
	f, ok := s.config.Larder.Food(chi.URLParam(r, "food"))
	if !ok {
		return nil, fault.NotFoundf("The larder has no such food.")
	}
	show, err := s.store.Show(r.Context())
	return &foodDesk{f, show}, err
}

// foodAndForm finds the food of the address and reads the form sent to it.
func (s *Server) foodAndForm(w http.ResponseWriter, r *http.Request) (*foodDesk, *typed, error) {
	form, err := readTyped(w, r)
	if err != nil {
		return nil, nil, err
	}
	d, err := s.openFood(r)
	return d, form, err
}

func (s *Server) showFood(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openFood(r)
	if err != nil {
		return err
	}
	return s.drawFood(w, r, d, http.StatusOK, views.Form{})
}

// redrawFood draws a food's page with a refused form in place of its own.
func (s *Server) redrawFood(w http.ResponseWriter, r *http.Request, d *foodDesk, refused views.Form) error {
	return s.drawFood(w, r, d, http.StatusUnprocessableEntity, refused)
}

func (s *Server) drawFood(w http.ResponseWriter, r *http.Request, d *foodDesk, status int, refused views.Form) error {
	view := newFoodPage(s.pageOf(r, d.show.Name, d.food.Name, views.SectionLarder), d.food)
	if refused.ID == view.AliasForm.ID {
		view.AliasForm = refused
	}
	if err := s.addEntries(&view, r, d, refused); err != nil {
		return err
	}
	return s.draw(w, r, status, views.Food(view))
}

// addEntries adds what the show notes of a food. What is bought as another food
// is noted there.
func (s *Server) addEntries(view *views.FoodPage, r *http.Request, d *foodDesk, refused views.Form) error {
	switch as := shop.BoughtAs(d.food.ID); {
	case as == "":
		return nil
	case as != d.food.ID:
		view.BoughtAs = views.Link{Text: s.foodName(as), Path: foodPath(as)}
		return nil
	}
	packs, err := s.store.Packs(r.Context(), d.food.ID)
	if err != nil {
		return err
	}
	stock, err := s.store.Stock(r.Context(), d.food.ID)
	if err != nil {
		return err
	}
	packForm, err := entryForm(s.packs(), d, r, refused)
	if err != nil {
		return err
	}
	stockForm, err := entryForm(s.stock(), d, r, refused)
	if err != nil {
		return err
	}
	packList, stockList := packEntries(s.packs(), d, packs, packForm), s.stockEntries(d, stock, stockForm)
	view.Packs, view.Stock = &packList, &stockList
	return nil
}

func (s *Server) foodName(id string) string {
	if f, ok := s.config.Larder.Food(id); ok {
		return f.Name
	}
	return id
}

// entryForm is the form of a kind of entry: the refused one, if it is that.
func entryForm[T any](e entry[T], d *foodDesk, r *http.Request, refused views.Form) (views.Form, error) {
	if refused.ID == e.word {
		return refused, nil
	}
	return e.form(d, r)
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
	d, form, err := s.foodAndForm(w, r)
	if err != nil {
		return err
	}
	name := form.needed("name", "Write the name to remember.")
	if err := form.err(); err != nil {
		refused := newFoodPage(views.Page{}, d.food).AliasForm
		refused.Fields = filled(refused.Fields, form.values.Get, err)
		return s.redrawFood(w, r, d, refused)
	}
	if err := s.store.LearnFood(r.Context(), name, d.food.ID); err != nil {
		return err
	}
	s.flash(r, fmt.Sprintf("“%s” now means %s.", name, d.food.Name), "")
	return seeOther(w, r, foodPath(d.food.ID))
}
