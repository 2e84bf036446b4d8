package web

import (
	"net/http"
	"slices"
	"strings"
	"time"

	"benchproof/kitchen/food"
	"benchproof/kitchen/shop"
	"benchproof/views"
)

// stock is what the larder has of a food.
func (s *Server) stock() entry[shop.Stock] {
	return entry[shop.Stock]{
		word: "stock", many: "stock", fields: stockFields, values: stockValues, read: readStock,
		get: s.store.StockEntry, add: s.store.AddStock, save: s.store.SaveStock, remove: s.store.DeleteStock,
		blank: func(foodID string) shop.Stock { return shop.Stock{FoodID: foodID} },
		key:   func(k shop.Stock) entryKey { return entryKey{k.ID, k.FoodID, k.Revision} },
		stamp: func(k *shop.Stock, revision int) { k.Revision = revision },
	}
}

func stockFields(*foodDesk) []views.Field {
	return []views.Field{
		{Name: "amount", Label: "Amount", Required: true, Hint: "What is there: 200 g, 1.5 kg, 1 L, 6."},
		{Name: "useby", Label: "Use by", Kind: views.FieldDate, Hint: "The last day it may be used, from the pack. Leave it empty if there is none."},
	}
}

func stockValues(_ *foodDesk, k shop.Stock) values {
	return values{"amount": amountValue(k.Amount), "useby": dateText(k.UseBy)}
}

func readStock(f *typed, _ *foodDesk, k *shop.Stock) {
	k.Amount = f.amount("amount", "Write what is there: 200 g, 1.5 kg, 1 L or 6.")
	k.UseBy = f.date("useby")
}

// stockEntries words what the larder has of a food.
func (s *Server) stockEntries(d *foodDesk, stock []shop.Stock, form views.Form) views.FoodEntries {
	list := views.FoodEntries{Form: form}
	if len(stock) == 0 {
		list.Empty = "None is noted. What is in the larder is taken off the shopping list."
	}
	e := s.stock()
	for _, k := range stock {
		row := views.FoodEntry{
			Measure: k.Amount.String(), Text: s.useBy(k), Of: k.Amount.String() + " in the larder",
			EditPath: e.changePath(k.FoodID, k.ID), DeleteAction: e.path(k.FoodID, k.ID) + "/delete",
		}
		if isPast(k, s.today(d.show.TimeZone)) {
			row.Mark = views.Mark{Kind: views.MarkLook, Text: "past its date: not counted. Throw it out or correct the date"}
		}
		list.Rows = append(list.Rows, row)
	}
	return list
}

// isPast tells whether stock is past its use-by.
func isPast(k shop.Stock, today time.Time) bool { return !k.UseBy.IsZero() && k.UseBy.Before(today) }

// drawInStock lists what is in the larder now, each entry with its date.
func (s *Server) drawInStock(w http.ResponseWriter, r *http.Request, page views.Page) error {
	show, err := s.store.Show(r.Context())
	if err != nil {
		return err
	}
	stock, err := s.store.Stock(r.Context(), "")
	if err != nil {
		return err
	}
	byFood := map[string][]shop.Stock{}
	var foods []*food.Food
	for _, k := range stock {
		if f, ok := s.config.Larder.Food(k.FoodID); ok {
			if byFood[f.ID] == nil {
				foods = append(foods, f)
			}
			byFood[f.ID] = append(byFood[f.ID], k)
		}
	}
	slices.SortFunc(foods, func(a, b *food.Food) int { return strings.Compare(a.Name, b.Name) })
	view := views.LarderPage{
		Page: page, Found: count(len(foods), "food in stock", "foods in stock"), Aisles: aisleChoices(inStock), Search: larderSearch(""),
		Groups: larderGroups(foods, func(f *food.Food) views.FoodRow { return s.stockRow(f, byFood[f.ID], s.today(show.TimeZone)) }),
	}
	if len(foods) == 0 {
		view.Empty = "Nothing is noted yet. A food's page takes what is in the larder, and the shopping list takes it off."
	}
	return s.draw(w, r, http.StatusOK, views.Larder(view))
}

// stockRow words a food that is in stock: the first entry in the gutter, the
// rest beside it.
func (s *Server) stockRow(f *food.Food, stock []shop.Stock, today time.Time) views.FoodRow {
	row := views.FoodRow{Measure: stock[0].Amount.String(), Name: f.Name, Path: foodPath(f.ID), Of: s.useBy(stock[0])}
	for _, k := range stock[1:] {
		row.Of += "; " + k.Amount.String() + ", " + s.useBy(k)
	}
	if slices.ContainsFunc(stock, func(k shop.Stock) bool { return isPast(k, today) }) {
		row.Mark = views.Mark{Kind: views.MarkLook, Text: "past its date"}
	}
	return row
}

// useBy words a use-by date.
func (s *Server) useBy(k shop.Stock) string {
	if k.UseBy.IsZero() {
		return "no use-by date"
	}
	return "use by " + s.day(k.UseBy)
}

// today is the date in the show's time zone, at midnight UTC as dates are kept.
func (s *Server) today(zone string) time.Time {
	now := s.config.Now()
	if place, err := time.LoadLocation(zone); err == nil {
		now = now.In(place)
	}
	return time.Date(now.Year(), now.Month(), now.Day(), 0, 0, 0, 0, time.UTC)
}
