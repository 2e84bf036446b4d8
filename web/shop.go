package web

import (
	"context"
	"net/http"
	"slices"

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
	batches, all, err := s.needsOf(r.Context(), d)
	if err != nil {
		return err
	}
	ticked, err := s.ticked(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	shelf, err := s.shelf(r.Context(), d.show)
	if err != nil {
		return err
	}
	bought := shelf.List(all, s.config.Larder)
	sheet := views.ShopSheet{
		Page: page, EpisodeFrame: s.frame(d, views.SheetShop), Form: form, Total: makesTotal(d, batches),
		List: s.shopList(bought, ticked, episodePath(d.episode.ID)+"/ticks", d.path(views.SheetRecipe)),
	}
	if len(batches) == 0 {
		sheet.List.Empty = "Nothing is planned to be made yet. Add a batch above."
	} else if bought.Items() == 0 {
		sheet.List.Empty = nothingToBuy(bought)
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

// needsOf gives the episode's batches and what they need, by the day: a trial
// may be made any day, all else on the shoot day.
func (s *Server) needsOf(ctx context.Context, d *desk) ([]episode.Batch, []shop.Need, error) {
	batches, err := s.store.Batches(ctx, d.episode.ID)
	if err != nil {
		return nil, nil, err
	}
	day, err := s.store.ShootDay(ctx, d.episode.ID)
	all := needs(d, batches)
	for i := range all {
		if all[i].Batch != string(episode.TrialBatch) {
			all[i].On = day.On
		}
	}
	return batches, all, err
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
	show, err := s.store.Show(r.Context())
	if err != nil {
		return err
	}
	shelf, err := s.shelf(r.Context(), show)
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
		_, its, err := s.needsOf(r.Context(), d)
		if err != nil {
			return err
		}
		for _, need := range its {
			need.Batch = joined(" ", numberWord(d.episode.Number), need.Batch)
			all = append(all, need)
		}
	}
	ticked, err := s.tickedAll(r.Context(), coming)
	if err != nil {
		return err
	}
	bought := shelf.List(all, s.config.Larder)
	view.List = s.shopList(bought, ticked, "/shopping/ticks", "/recipes")
	switch {
	case len(bought.Held) > 0 && bought.Items() == 0:
		view.List.Empty = nothingToBuy(bought)
	case bought.Items() == 0:
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
