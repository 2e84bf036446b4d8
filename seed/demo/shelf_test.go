package demo_test

import (
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
)

// comingNeeds are what the episodes on their way to the shoot need.
func comingNeeds(t *testing.T) []shop.Need {
	show := newShow(t)
	reader := recipe.Reader{Larder: larder(t)}
	var needs []shop.Need
	for _, e := range show.Episodes {
		if e.Brief.Stage != episode.InDevelopment && e.Brief.Stage != episode.ReadyToShoot {
			continue
		}
		text := versions(show, e.Recipe)[e.Version-1].Text
		for _, b := range e.Batches {
			needs = append(needs, shop.Need{Batch: string(b.Kind), Makes: b.Makes, Recipe: reader.Read(text), System: show.Show.System})
		}
	}
	return needs
}

func TestPacksAndStockAreOfKnownFoods(t *testing.T) {
	show, kitchen := newShow(t), larder(t)
	for _, p := range show.Packs {
		if _, ok := kitchen.Food(p.FoodID); !ok || shop.BoughtAs(p.FoodID) != p.FoodID || p.Amount.To.Sign() <= 0 || p.Price < 0 {
			t.Errorf("pack %+v is of no food that is bought", p)
		}
	}
	for _, s := range show.Stock {
		if _, ok := kitchen.Food(s.FoodID); !ok || s.Amount.To.Sign() <= 0 {
			t.Errorf("stock %+v is of no known food", s)
		}
	}
}

// The shopping of the coming episodes shows every state there is: priced,
// unpriced, without packs, partly and wholly in the larder, too old.
func TestTheComingShoppingShowsEveryState(t *testing.T) {
	show := newShow(t)
	shelf := shop.Shelf{Currency: show.Show.Currency, Packs: show.Packs, Stock: show.Stock, Today: aWednesday}
	sheet := shelf.List(comingNeeds(t), larder(t))
	states := map[string]int{}
	for _, aisle := range sheet.Aisles {
		for _, item := range aisle.Items {
			switch {
			case item.Buy.Problem != "":
				t.Errorf("%s: %s", item.Name, item.Buy.Problem)
			case item.Buy.IsPriced():
				states["priced"]++
			case len(item.Buy.Packs) > 0:
				states["packs without a price"]++
			default:
				states["no packs"]++
			}
			for _, held := range item.Buy.Held {
				if held.IsTaken {
					states["partly in the larder"]++
				}
				if held.IsLate {
					states["too old"]++
				}
			}
		}
	}
	states["in the larder"] = len(sheet.Held)
	for _, state := range []string{"priced", "packs without a price", "no packs", "partly in the larder", "too old", "in the larder"} {
		if states[state] == 0 {
			t.Errorf("nothing on the list is %s: %v", state, states)
		}
	}
	if c := sheet.Cost(); c.Priced < 10 || c.Sum.IsZero() {
		t.Errorf("the list costs %s for %d things", c.Sum, c.Priced)
	}
	if len(sheet.Questions) > 0 {
		t.Errorf("questions: %v", sheet.Questions)
	}
}
