package web_test

import (
	"net/http"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/shop"
	"benchproof/views"
	"benchproof/web"
)

// The day changes at the show's midnight: at nine in the morning of the second
// of March in Greenwich it is the second in Auckland, and a quarter to the third
// there at a quarter to eleven. Auckland is 13 hours ahead in March (from
// memory), Honolulu 10 behind.
func TestTodayIsTheShowsOwnDate(t *testing.T) {
	at := func(day, hour, minute int) time.Time { return time.Date(2027, 3, day, hour, minute, 0, 0, time.UTC) }
	for _, c := range []struct {
		now  time.Time
		zone string
		want int
	}{
		{at(2, 9, 0), "UTC", 2},
		{at(2, 10, 45), "Pacific/Auckland", 2},
		{at(2, 11, 0), "Pacific/Auckland", 3},
		{at(2, 9, 59), "Pacific/Honolulu", 1},
		{at(2, 10, 0), "Pacific/Honolulu", 2},
		{at(2, 23, 59), "Nowhere/Atall", 2}, // an unknown zone: the server's own
	} {
		if got := web.Today(c.now, c.zone); !got.Equal(at(c.want, 0, 0)) {
			t.Errorf("at %s in %s it is %s, want the %d.", c.now, c.zone, got, c.want)
		}
	}
}

func TestStockIsPastItsDateTheDayAfter(t *testing.T) {
	s := newSite(t) // the second of March
	for day, isPast := range map[string]bool{"2027-03-01": true, "2027-03-02": false, "2027-03-03": false, "": false} {
		s.post("/larder/whole-milk/stock", "amount", "1 L", "useby", day)
		page := words(s.shows("/larder/whole-milk", "1 L"))
		if strings.Contains(page, "past its date") != isPast {
			t.Errorf("use by %q: past its date is %v", day, !isPast)
		}
		if got := s.post("/larder/whole-milk/stock/" + lastEntry(t, s, "stock") + "/delete"); got.status != http.StatusSeeOther {
			t.Fatalf("delete = %d", got.status)
		}
	}
}

// lastEntry is the id of the entry whose Edit link is the last on the milk's
// page.
func lastEntry(t *testing.T, s *site, word string) string {
	t.Helper()
	page := s.get("/larder/whole-milk").body
	at := strings.LastIndex(page, "change="+word+"-")
	if at < 0 {
		t.Fatalf("the page has no %s", word)
	}
	id, _, _ := strings.Cut(page[at+len("change="+word+"-"):], "#")
	return id
}

func TestStockRowTellsEveryEntry(t *testing.T) {
	stock := func(n string, unit measure.Unit, day int) shop.Stock {
		k := shop.Stock{FoodID: "whole-milk", Amount: of(n, unit)}
		if day > 0 {
			k.UseBy = time.Date(2027, 3, day, 0, 0, 0, 0, time.UTC)
		}
		return k
	}
	past := views.Mark{Kind: views.MarkLook, Text: "past its date"}
	for _, c := range []struct {
		name  string
		stock []shop.Stock
		want  views.FoodRow
	}{
		{"one without a date", []shop.Stock{stock("1", measure.Litre, 0)}, views.FoodRow{Measure: "1 L", Of: "no use-by date"}},
		{"one with a date", []shop.Stock{stock("500", measure.Millilitre, 9)}, views.FoodRow{Measure: "500 mL", Of: "use by 9 Mar"}},
		{"two", []shop.Stock{stock("500", measure.Millilitre, 9), stock("1", measure.Litre, 0)}, views.FoodRow{Measure: "500 mL", Of: "use by 9 Mar; 1 L, no use-by date"}},
		{"past its date", []shop.Stock{stock("500", measure.Millilitre, 1)}, views.FoodRow{Measure: "500 mL", Of: "use by 1 Mar", Mark: past}},
		{"one of two past its date", []shop.Stock{stock("500", measure.Millilitre, 1), stock("1", measure.Litre, 8)}, views.FoodRow{Measure: "500 mL", Of: "use by 1 Mar; 1 L, use by 8 Mar", Mark: past}},
	} {
		t.Run(c.name, func(t *testing.T) {
			milk, ok := builtIn(t).Food("whole-milk")
			if !ok {
				t.Fatal("the larder has no milk")
			}
			got := web.StockRow(today, milk, c.stock)
			got.Measure, got.Of = strings.ReplaceAll(got.Measure, "\u00a0", " "), strings.ReplaceAll(got.Of, "\u00a0", " ")
			c.want.Name, c.want.Path = "whole milk", "/larder/whole-milk"
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Errorf("StockRow (-want +got):\n%s", diff)
			}
		})
	}
}

// Each form of a food's page is refused by itself: the others stay as they were.
func TestTheFormsOfAFoodDoNotDisturbEachOther(t *testing.T) {
	s := newSite(t)
	for path, wrong := range map[string]string{"packs": "pack-amount-error", "stock": "stock-amount-error", "names": "alias-name-error"} {
		page := s.post("/larder/whole-milk/" + path).body
		for _, id := range []string{"pack-amount-error", "stock-amount-error", "alias-name-error"} {
			if strings.Contains(page, `id="`+id+`"`) != (id == wrong) {
				t.Errorf("an empty form sent to %s: error %s is drawn %v", path, id, id != wrong)
			}
		}
	}
	s.shows("/larder/whole-milk", "None is noted", "No packs are noted")
}

// What was planned before packs and stock were deleted is planned again without
// them, and with them when they are back.
func TestTheListFollowsWhatIsDeletedAndHadBack(t *testing.T) {
	s, at := stocked(t)
	s.post("/larder/self-raising-flour/stock", "amount", "100 g")
	s.shows(at+"/shop", "150 g", "€4.50")
	s.post("/larder/self-raising-flour/stock/1/delete")
	s.shows(at+"/shop", "250 g", "€5.00")
	s.post("/larder/self-raising-flour/packs/2/delete")
	s.shows(at+"/shop", "3 × 100 g, €2.10 · 50 g left over", "€5.20")
	s.post("/deleted/pack/2/restore")
	s.post("/deleted/stock/1/restore")
	s.shows(at+"/shop", "150 g", "€4.50")
}
