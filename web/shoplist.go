package web

import (
	"context"
	"fmt"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/shop"
	"benchproof/views"
)

// shelf is what the show knows of packs, prices and stock today.
func (s *Server) shelf(ctx context.Context, show episode.Show) (shop.Shelf, error) {
	packs, err := s.store.Packs(ctx, "")
	if err != nil {
		return shop.Shelf{}, err
	}
	stock, err := s.store.Stock(ctx, "")
	return shop.Shelf{Currency: show.Currency, Packs: packs, Stock: stock, Today: s.today(show.TimeZone)}, err
}

// shopList words a shopping list; its questions lead to recipePath.
func (s *Server) shopList(bought shop.Sheet, ticked map[string]bool, tickAction, recipePath string) views.ShopList {
	list := views.ShopList{TickAction: tickAction}
	left := 0
	for _, aisle := range bought.Aisles {
		block := views.AisleBlock{Name: aisle.Name}
		for _, item := range aisle.Items {
			if !ticked[item.Key] {
				left++
			}
			block.Items = append(block.Items, s.shopItem(item, ticked[item.Key]))
		}
		list.Aisles = append(list.Aisles, block)
	}
	if all := bought.Items(); all > 0 {
		list.Left = fmt.Sprintf("%d of %d still to get", left, all)
	}
	list.Sum, list.SumOf = costText(bought.Cost())
	for _, item := range bought.Held {
		list.Held = append(list.Held, views.HeldItem{
			Measure: item.Measure, Food: item.Name, Path: foodPath(item.FoodID), Have: s.heldText(item.Buy.Held),
		})
	}
	for _, q := range bought.Questions {
		list.Questions = append(list.Questions, views.OpenLink{Text: "“" + q.Text + "”: " + q.Reason, Path: recipePath})
	}
	return list
}

// nothingToBuy says why a list is empty.
func nothingToBuy(bought shop.Sheet) string {
	if len(bought.Held) > 0 {
		return "Nothing: all of it is in the larder."
	}
	return "The recipe asks for nothing to buy."
}

func (s *Server) shopItem(item shop.Item, ticked bool) views.ShopItem {
	row := views.ShopItem{
		Key: item.Key, Measure: item.Measure, Food: item.Name, Small: item.Small, Question: item.Question, Ticked: ticked,
		Buy: buyText(item.Buy), Have: haveText(item.Buy.Held), Late: s.lateText(item.Buy.Held),
	}
	if item.FoodID != "" {
		row.Path = foodPath(item.FoodID)
	}
	if row.Question == "" {
		row.Question = item.Buy.Problem
	}
	var asides []string
	if item.Optional {
		asides = append(asides, "optional")
	}
	if item.ToTaste {
		asides = append(asides, "to taste")
	}
	if item.Estimate || item.Buy.Estimate {
		asides = append(asides, "weight estimated")
	}
	row.Small = joined(" · ", append([]string{row.Small}, asides...)...)
	if len(item.Uses) > 1 {
		var uses []string
		for _, use := range item.Uses {
			uses = append(uses, unbroken(joined(" ", use.Batch, use.Measure)))
		}
		row.Detail = strings.Join(uses, " · ")
	}
	return row
}

// buyText words the packs to buy: "2 × 500 g, $4.20 · 240 g left over". Of
// what is sold singly the cost says enough.
func buyText(p shop.Purchase) string {
	var packs []string
	for _, each := range p.Packs {
		packs = append(packs, each.String())
	}
	if len(p.Packs) == 1 && p.Packs[0].Pack.Amount.String() == "1" {
		packs = nil
	}
	text := joined(", ", strings.Join(packs, " + "), priceText(p.Cost))
	if p.Left != "" {
		text = joined(" · ", text, unbroken(p.Left+" left over"))
	}
	return text
}

// unbroken keeps a few words on one line: a phone is narrow.
func unbroken(text string) string { return strings.ReplaceAll(text, " ", "\u00a0") }

// haveText words the stock that is used: "200 g from the larder"; "" for none.
func haveText(all []shop.Held) string {
	var texts []string
	for _, h := range all {
		if h.IsTaken {
			texts = append(texts, h.Stock.Amount.String())
		}
	}
	if len(texts) == 0 {
		return ""
	}
	return strings.Join(texts, " and ") + unbroken(" from the larder")
}

// heldText words what is there: "340 g, use by 9 Mar".
func (s *Server) heldText(all []shop.Held) string {
	var texts []string
	for _, h := range all {
		text := h.Stock.Amount.String()
		if !h.Stock.UseBy.IsZero() {
			text += ", use by " + s.day(h.Stock.UseBy)
		}
		texts = append(texts, text)
	}
	return "there: " + strings.Join(texts, "; ")
}

// lateText words stock that is too old on a day the food is needed, and so is
// not counted for it.
func (s *Server) lateText(all []shop.Held) string {
	var late []string
	for _, h := range all {
		if h.IsLate {
			late = append(late, h.Stock.Amount.String()+", use by "+s.day(h.Stock.UseBy))
		}
	}
	if len(late) == 0 {
		return ""
	}
	return "in the larder and too old on the day: " + strings.Join(late, "; ")
}
