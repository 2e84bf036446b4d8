package store_test

import (
	"context"
	"testing"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
	"benchproof/store"
)

// Lists are bounded, and what they list is bounded as well: one more is
// refused with a sentence, never kept and left out of the list. What is
// deleted, or saved again, takes no room.
func TestListsHaveRoomAndSayWhenItIsTaken(t *testing.T) {
	tests := []struct {
		name   string
		most   int
		beside int    // how many of them a test has to begin with
		fill   string // adds the rows n
		add    func(ctx context.Context, st *store.Store, c cooking, name string) error
		again  func(ctx context.Context, st *store.Store, c cooking) error // saves what is there; nil for none
		listed func(ctx context.Context, st *store.Store, c cooking) (int, error)
	}{
		{
			name: "pitches", most: 5000,
			fill: "INSERT INTO pitch (dish, who, place, times, note) SELECT 'dish', '', '', 1, '' FROM n",
			add: func(ctx context.Context, st *store.Store, c cooking, name string) error {
				_, err := st.AddPitch(ctx, episode.Pitch{Dish: name, Times: 1})
				return err
			},
			listed: func(ctx context.Context, st *store.Store, c cooking) (int, error) {
				all, err := st.Pitches(ctx)
				return len(all), err
			},
		},
		{
			name: "packs", most: 10_000,
			fill: "INSERT INTO pack (food_id, amount, unit, price) SELECT 'egg', '6', '', 0 FROM n",
			add: func(ctx context.Context, st *store.Store, c cooking, name string) error {
				_, err := st.AddPack(ctx, shop.Pack{FoodID: name})
				return err
			},
			listed: func(ctx context.Context, st *store.Store, c cooking) (int, error) {
				all, err := st.Packs(ctx, "")
				return len(all), err
			},
		},
		{
			name: "stock", most: 10_000,
			fill: "INSERT INTO stock (food_id, amount, unit) SELECT 'egg', '6', '' FROM n",
			add: func(ctx context.Context, st *store.Store, c cooking, name string) error {
				_, err := st.AddStock(ctx, shop.Stock{FoodID: name})
				return err
			},
			listed: func(ctx context.Context, st *store.Store, c cooking) (int, error) {
				all, err := st.Stock(ctx, "")
				return len(all), err
			},
		},
		{
			name: "episodes", most: 5000, beside: 1,
			fill: `INSERT INTO episode (number, title, stage, dish, inspired_by, inspired_url, look, hook, target_minutes, notes)
SELECT 0, 'title', 'pitched', '', '', '', '', '', 0, '' FROM n`,
			add: func(ctx context.Context, st *store.Store, c cooking, name string) error {
				_, err := st.StartEpisode(ctx, store.Start{Episode: episode.Episode{Title: name, Stage: episode.Pitched}})
				return err
			},
			listed: func(ctx context.Context, st *store.Store, c cooking) (int, error) {
				all, err := st.Episodes(ctx)
				return len(all), err
			},
		},
		{
			name: "versions", most: 1000, beside: 1,
			fill: `INSERT INTO version (recipe_id, number, text, system, note, created_at, title, yield_text, yield_from, yield_to, yield_unit, yield_of,
                     stated_system, intro, equipment, notes, credits, placed)
SELECT recipe_id, i + 1, '', '', '', created_at, '', '', '0', '0', '', '', '', '', '', '', '', '' FROM version, n`,
			add: func(ctx context.Context, st *store.Store, c cooking, name string) error {
				_, err := st.AddVersion(ctx, store.Version{RecipeID: c.recipeID, Text: name})
				return err
			},
			listed: func(ctx context.Context, st *store.Store, c cooking) (int, error) {
				all, err := st.Versions(ctx, c.recipeID)
				return len(all), err
			},
		},
		{
			name: "ticks", most: 2000,
			fill: "INSERT INTO tick (episode_id, item, ticked_at) SELECT 1, 'item ' || i, '' FROM n",
			add: func(ctx context.Context, st *store.Store, c cooking, name string) error {
				return st.SetTick(ctx, c.episodeID, name, true)
			},
			again: func(ctx context.Context, st *store.Store, c cooking) error {
				return st.SetTick(ctx, c.episodeID, "item 1", true)
			},
			listed: func(ctx context.Context, st *store.Store, c cooking) (int, error) {
				all, err := st.Ticks(ctx, c.episodeID)
				return len(all), err
			},
		},
		{
			name: "share links", most: 500,
			fill: "INSERT INTO share_link (episode_id, token_hash, created_at) SELECT 1, printf('%064d', i), '2026-01-01T00:00:00.000Z' FROM n",
			add: func(ctx context.Context, st *store.Store, c cooking, name string) error {
				_, err := st.AddShareLink(ctx, c.episodeID, name)
				return err
			},
			listed: func(ctx context.Context, st *store.Store, c cooking) (int, error) {
				all, err := st.ShareLinks(ctx, c.episodeID)
				return len(all), err
			},
		},
		{
			name: "line corrections", most: 2000,
			fill: `INSERT INTO line_correction (recipe_id, text, amount_from, amount_to, amount_unit, has_amount, food, food_id, preparation, note, is_to_taste, size, corrected_at)
SELECT 1, 'line ' || i, '0', '0', '', 0, '', '', '', '', 0, '', '' FROM n`,
			add: func(ctx context.Context, st *store.Store, c cooking, name string) error {
				return st.CorrectLine(ctx, c.recipeID, name, recipe.Correction{})
			},
			again: func(ctx context.Context, st *store.Store, c cooking) error {
				return st.CorrectLine(ctx, c.recipeID, "line 1", recipe.Correction{ToTaste: true})
			},
			listed: func(ctx context.Context, st *store.Store, c cooking) (int, error) {
				all, err := st.LineCorrections(ctx, c.recipeID)
				return len(all), err
			},
		},
		{
			name: "learned foods", most: 20_000,
			fill: "INSERT INTO learned_food (name, food_id, learned_at) SELECT 'name ' || i, 'food', '' FROM n",
			add: func(ctx context.Context, st *store.Store, c cooking, name string) error {
				return st.LearnFood(ctx, name, "food")
			},
			again: func(ctx context.Context, st *store.Store, c cooking) error {
				return st.LearnFood(ctx, "name 1", "another food")
			},
			listed: func(ctx context.Context, st *store.Store, c cooking) (int, error) {
				all, err := st.LearnedFoods(ctx)
				return len(all), err
			},
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			st := open(t)
			c := addCooking(t, st, "Eggs")
			execRaw(t, st, "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < ?1) "+test.fill, test.most-test.beside-1)
			ok(t, test.add(t.Context(), st, c, "the last"))
			full := must(test.listed(t.Context(), st, c))(t)
			if full != test.most {
				t.Errorf("%d listed, want %d", full, test.most)
			}
			wantFault(t, test.add(t.Context(), st, c, "one more"), fault.Invalid)
			if test.again != nil {
				ok(t, test.again(t.Context(), st, c))
			}
			if after := must(test.listed(t.Context(), st, c))(t); after != full {
				t.Errorf("%d listed after the refusal, %d before", after, full)
			}
		})
	}
}
