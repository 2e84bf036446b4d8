package web

import (
	"context"
	"fmt"
	"net/http"
	"slices"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
	"benchproof/views"
)

func (s *Server) showShop(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	form, err := s.batches().form(d, r)
	if err != nil {
		return err
	}
	return s.drawShop(w, r, d, http.StatusOK, form)
}

func (s *Server) drawShop(w http.ResponseWriter, r *http.Request, d *desk, status int, form views.Form) error {
	page, err := s.sheetPage(r, d, views.SheetShop)
	if err != nil {
		return err
	}
	batches, err := s.store.Batches(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	ticked, err := s.ticked(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	bought := shop.List(needs(d, batches), s.config.Larder)
	sheet := views.ShopSheet{
		Page: page, EpisodeFrame: s.frame(d, views.SheetShop), Form: form, Total: makesTotal(d, batches),
		List: shopList(bought, ticked, episodePath(d.episode.ID)+"/ticks", d.path(views.SheetRecipe)),
	}
	if len(batches) == 0 {
		sheet.List.Empty = "Nothing is planned to be made yet. Add a batch above."
	} else if bought.Items() == 0 {
		sheet.List.Empty = "The recipe asks for nothing to buy."
	}
	for _, b := range batches {
		sheet.Batches = append(sheet.Batches, batchRow(s.batches(), b))
	}
	return s.draw(w, r, status, views.Shop(sheet))
}

// needs are the episode's batches at its scale, as the shop asks for them.
func needs(d *desk, batches []episode.Batch) []shop.Need {
	if !d.hasRecipe() {
		return nil
	}
	reading := d.version.Reading
	if reading.Title == "" {
		reading.Title = d.version.Name
	}
	var list []shop.Need
	for _, b := range batches {
		list = append(list, shop.Need{
			Batch: string(b.Kind), Makes: b.Makes.Mul(d.episode.Scale), Recipe: madeOf(reading, b), System: d.show.System,
		})
	}
	return list
}

// madeOf is what a batch makes of a recipe: all of it, or what is needed up to
// the step that a swap-out reaches.
func madeOf(r recipe.Recipe, b episode.Batch) recipe.Recipe {
	if at, ok := stepAt(r, b.Component, b.Step); ok {
		return r.UpTo(at)
	}
	return r
}

// makesTotal words what all batches come to: "3 makes, 48 knots".
func makesTotal(d *desk, batches []episode.Batch) string {
	var makes measure.Number
	for _, b := range batches {
		makes = makes.Add(b.Makes)
	}
	if makes.IsZero() {
		return ""
	}
	text := measure.FormatNumber(makes) + " makes"
	if makes.Equal(measure.Whole(1)) {
		text = "1 make"
	}
	if label, pieces, ok := yieldPieces(d.version.Reading); ok {
		text += ", " + measure.FormatNumber(pieces.Mul(makes).Mul(d.episode.Scale)) + " " + label
	}
	return text
}

// ticked is the set of item keys that are ticked off.
func (s *Server) ticked(ctx context.Context, episodeID int64) (map[string]bool, error) {
	keys, err := s.store.Ticks(ctx, episodeID)
	set := make(map[string]bool, len(keys))
	for _, key := range keys {
		set[key] = true
	}
	return set, err
}

// shopList words a shopping list; its questions lead to recipePath.
func shopList(bought shop.Sheet, ticked map[string]bool, tickAction, recipePath string) views.ShopList {
	list := views.ShopList{TickAction: tickAction}
	left := 0
	for _, aisle := range bought.Aisles {
		block := views.AisleBlock{Name: aisle.Name}
		for _, item := range aisle.Items {
			if !ticked[item.Key] {
				left++
			}
			block.Items = append(block.Items, shopItem(item, ticked[item.Key]))
		}
		list.Aisles = append(list.Aisles, block)
	}
	if all := bought.Items(); all > 0 {
		list.Left = fmt.Sprintf("%d of %d still to get", left, all)
	}
	for _, q := range bought.Questions {
		list.Questions = append(list.Questions, views.OpenLink{Text: "“" + q.Text + "”: " + q.Reason, Path: recipePath})
	}
	return list
}

func shopItem(item shop.Item, ticked bool) views.ShopItem {
	row := views.ShopItem{Key: item.Key, Measure: item.Measure, Food: item.Name, Small: item.Small, Question: item.Question, Ticked: ticked}
	var asides []string
	if item.Optional {
		asides = append(asides, "optional")
	}
	if item.ToTaste {
		asides = append(asides, "to taste")
	}
	if item.Estimate {
		asides = append(asides, "weight estimated")
	}
	row.Small = joined(" · ", append([]string{row.Small}, asides...)...)
	if len(item.Uses) > 1 {
		var uses []string
		for _, use := range item.Uses {
			uses = append(uses, joined(" ", use.Batch, use.Measure))
		}
		row.Detail = strings.Join(uses, " · ")
	}
	return row
}

// tick ticks an item off, or takes the tick away.
func (s *Server) tick(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	id, err := pathID(r, "episode")
	if err != nil {
		return err
	}
	item := form.needed("item", "Say which item is ticked.")
	state := form.oneOf("ticked", []string{"yes", "no"})
	if err := form.err(); err != nil {
		return err
	}
	if err := s.store.SetTick(r.Context(), id, item, state == "yes"); err != nil {
		return err
	}
	return seeOther(w, r, episodePath(id)+"/shop")
}

// showShopping lists what to buy for every episode on its way to the shoot.
func (s *Server) showShopping(w http.ResponseWriter, r *http.Request) error {
	page, err := s.page(r, "Shopping", views.SectionShopping)
	if err != nil {
		return err
	}
	coming, err := s.comingToShoot(r.Context())
	if err != nil {
		return err
	}
	view := views.ShoppingPage{Page: page}
	var all []shop.Need
	for _, d := range coming {
		view.Covers = append(view.Covers, views.EpisodeRow{
			Date: s.dateWord(d.episode.ReleaseOn), Number: numberWord(d.episode.Number), Title: d.episode.Title,
			Path: d.path(views.SheetShop), Stage: string(d.episode.Stage),
		})
		batches, err := s.store.Batches(r.Context(), d.episode.ID)
		if err != nil {
			return err
		}
		for _, need := range needs(d, batches) {
			need.Batch = joined(" ", numberWord(d.episode.Number), need.Batch)
			all = append(all, need)
		}
	}
	ticked, err := s.tickedAll(r.Context(), coming)
	if err != nil {
		return err
	}
	view.List = shopList(shop.List(all, s.config.Larder), ticked, "/shopping/ticks", "/recipes")
	if len(view.List.Aisles) == 0 {
		view.List.Empty = "No coming episode has anything to buy. Plan batches on an episode's Shop sheet."
	}
	return s.draw(w, r, http.StatusOK, views.Shopping(view))
}

// comingToShoot are the episodes still to be shot, with their recipes.
func (s *Server) comingToShoot(ctx context.Context) ([]*desk, error) {
	episodes, err := s.store.Episodes(ctx)
	if err != nil {
		return nil, err
	}
	var coming []*desk
	for _, e := range episodes {
		if e.Stage != episode.InDevelopment && e.Stage != episode.ReadyToShoot || e.VersionID == 0 {
			continue
		}
		d, err := s.deskOf(ctx, e.ID)
		if err != nil {
			return nil, err
		}
		coming = append(coming, d)
	}
	return coming, nil
}

// tickedAll is the set of items ticked off in every one of the episodes that
// has it on its list.
func (s *Server) tickedAll(ctx context.Context, coming []*desk) (map[string]bool, error) {
	open := map[string]bool{}
	all := map[string]bool{}
	for _, d := range coming {
		ticked, err := s.ticked(ctx, d.episode.ID)
		if err != nil {
			return nil, err
		}
		for _, key := range itemKeys(d.version.Reading, s.config) {
			if ticked[key] {
				all[key] = true
			} else {
				open[key] = true
			}
		}
	}
	for key := range open {
		delete(all, key)
	}
	return all, nil
}

// itemKeys are the keys of what a recipe buys.
func itemKeys(r recipe.Recipe, config Config) []string {
	var keys []string
	for _, aisle := range shop.List([]shop.Need{{Makes: measure.Whole(1), Recipe: r}}, config.Larder).Aisles {
		for _, item := range aisle.Items {
			keys = append(keys, item.Key)
		}
	}
	return keys
}

// tickShopping ticks an item off for every coming episode that needs it.
func (s *Server) tickShopping(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	item := form.needed("item", "Say which item is ticked.")
	state := form.oneOf("ticked", []string{"yes", "no"})
	if err := form.err(); err != nil {
		return err
	}
	coming, err := s.comingToShoot(r.Context())
	if err != nil {
		return err
	}
	for _, d := range coming {
		if !slices.Contains(itemKeys(d.version.Reading, s.config), item) {
			continue
		}
		if err := s.store.SetTick(r.Context(), d.episode.ID, item, state == "yes"); err != nil {
			return err
		}
	}
	return seeOther(w, r, "/shopping")
}
