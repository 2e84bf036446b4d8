package main

import (
	"context"
	"fmt"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/food"
	"benchproof/kitchen/recipe"
	"benchproof/seed/demo"
	"benchproof/store"
	"benchproof/web"
)

// filler writes a show whose parts have no ids yet into an empty store.
type filler struct {
	st       *store.Store
	larder   *food.Larder
	site     *web.Server
	show     demo.Show
	address  string             // where viewers come, without a closing slash
	versions map[string][]int64 // by recipe key: the ids of its versions, oldest first
	episodes map[int]int64      // by episode number
}

func (f *filler) fill(ctx context.Context) error {
	f.versions, f.episodes = map[string][]int64{}, map[int]int64{}
	var err error
	if f.site, err = web.New(f.st, web.Config{PublicURL: f.address, Larder: f.larder}); err != nil {
		return err
	}
	if err := f.fillShow(ctx); err != nil {
		return err
	}
	for _, r := range f.show.Recipes {
		if err := f.fillRecipe(ctx, r); err != nil {
			return fmt.Errorf("recipe %s: %w", r.Key, err)
		}
	}
	for _, e := range f.show.Episodes {
		if err := f.fillEpisode(ctx, e); err != nil {
			return fmt.Errorf("episode %d: %w", e.Brief.Number, err)
		}
	}
	if err := f.fillShelf(ctx); err != nil {
		return err
	}
	for _, p := range f.show.Pitches {
		if err := f.fillPitch(ctx, p); err != nil {
			return fmt.Errorf("pitch %s: %w", p.Dish, err)
		}
	}
	return nil
}

func (f *filler) fillShow(ctx context.Context) error {
	empty, err := f.st.Show(ctx)
	if err != nil {
		return err
	}
	f.show.Show.Revision = empty.Revision
	return f.st.SaveShow(ctx, f.show.Show)
}

func (f *filler) fillRecipe(ctx context.Context, r demo.Recipe) error {
	var recipeID int64
	for i, v := range r.Versions {
		reading := recipe.Reader{Larder: f.larder}.Read(v.Text)
		kept := store.Version{RecipeID: recipeID, Text: v.Text, Note: v.Note, System: reading.MeasuredIn(), Reading: reading}
		var id int64
		var err error
		if i == 0 {
			recipeID, id, err = f.st.AddRecipe(ctx, r.Name, kept)
		} else {
			id, err = f.st.AddVersion(ctx, kept)
		}
		if err != nil {
			return err
		}
		f.versions[r.Key] = append(f.versions[r.Key], id)
	}
	return nil
}

// versionID is the id of a recipe's version, counted from 1; 0 for none.
func (f *filler) versionID(key string, number int) (int64, error) {
	if key == "" {
		return 0, nil
	}
	ids := f.versions[key]
	if number < 1 || number > len(ids) {
		return 0, fmt.Errorf("recipe %q has no version %d", key, number)
	}
	return ids[number-1], nil
}

func (f *filler) fillEpisode(ctx context.Context, e demo.Episode) error {
	brief := e.Brief
	var err error
	if brief.VersionID, err = f.versionID(e.Recipe, e.Version); err != nil {
		return err
	}
	id, err := f.st.AddEpisode(ctx, brief)
	if err != nil {
		return err
	}
	f.episodes[brief.Number] = id
	for _, part := range []func(context.Context, int64, demo.Episode) error{f.fillMakes, f.fillShootDay, f.fillFilm, f.fillRelease} {
		if err := part(ctx, id, e); err != nil {
			return err
		}
	}
	return nil
}

// fillMakes writes the batches and the trials.
func (f *filler) fillMakes(ctx context.Context, id int64, e demo.Episode) error {
	for _, b := range e.Batches {
		b.EpisodeID = id
		if _, err := f.st.AddBatch(ctx, b); err != nil {
			return err
		}
	}
	for _, t := range e.Trials {
		version, err := f.versionID(e.Recipe, t.Version)
		if err != nil {
			return err
		}
		t.EpisodeID, t.VersionID = id, version
		if _, err := f.st.AddTrial(ctx, t.Trial); err != nil {
			return err
		}
	}
	return nil
}

// fillShootDay writes what the shoot day is planned with.
func (f *filler) fillShootDay(ctx context.Context, id int64, e demo.Episode) error {
	if day := e.ShootDay; day.Hands > 0 {
		day.EpisodeID = id
		if err := f.st.SaveShootDay(ctx, day); err != nil {
			return err
		}
	}
	for _, m := range e.Moments {
		m.EpisodeID = id
		if _, err := f.st.AddMoment(ctx, m); err != nil {
			return err
		}
	}
	return nil
}

// fillFilm writes the running order, the shots with their setups, and the cuts.
func (f *filler) fillFilm(ctx context.Context, id int64, e demo.Episode) error {
	for _, g := range e.Segments {
		g.EpisodeID = id
		if _, err := f.st.AddSegment(ctx, g); err != nil {
			return err
		}
	}
	for _, shot := range e.Shots {
		shot.EpisodeID = id
		if _, err := f.st.AddShot(ctx, shot); err != nil {
			return err
		}
	}
	for _, u := range e.Setups {
		u.EpisodeID = id
		if err := f.st.SaveSetup(ctx, u.Name, u); err != nil {
			return err
		}
	}
	for _, cut := range e.Cuts {
		cut.EpisodeID = id
		if _, err := f.st.AddCut(ctx, cut); err != nil {
			return err
		}
	}
	return f.site.Recheck(ctx, id)
}

// fillRelease writes what is published, and what was wrong on air.
func (f *filler) fillRelease(ctx context.Context, id int64, e demo.Episode) error {
	empty, err := f.st.Release(ctx, id)
	if err != nil {
		return err
	}
	release := e.Release
	release.EpisodeID, release.Revision = id, empty.Revision
	if e.Brief.Stage == episode.Released {
		if release.PageURL, err = f.share(ctx, id); err != nil {
			return err
		}
	}
	if err := f.st.SaveRelease(ctx, release); err != nil {
		return err
	}
	for _, c := range e.Corrections {
		c.EpisodeID = id
		if _, err := f.st.AddCorrection(ctx, c); err != nil {
			return err
		}
	}
	return nil
}

// share makes a share link, as a released episode has one, and gives its
// address.
func (f *filler) share(ctx context.Context, id int64) (string, error) {
	token := web.NewShareToken()
	_, err := f.st.AddShareLink(ctx, id, token)
	return f.address + web.SharePath(token), err
}

func (f *filler) fillPitch(ctx context.Context, p demo.Pitch) error {
	id, err := f.st.AddPitch(ctx, p.Pitch)
	if err != nil || p.Episode == 0 {
		return err
	}
	episodeID, ok := f.episodes[p.Episode]
	if !ok {
		return fmt.Errorf("there is no episode %d", p.Episode)
	}
	return f.st.LinkPitch(ctx, id, episodeID)
}

// fillShelf writes packs, prices and stock.
func (f *filler) fillShelf(ctx context.Context) error {
	for _, p := range f.show.Packs {
		if _, err := f.st.AddPack(ctx, p); err != nil {
			return fmt.Errorf("pack of %s: %w", p.FoodID, err)
		}
	}
	for _, held := range f.show.Stock {
		if _, err := f.st.AddStock(ctx, held); err != nil {
			return fmt.Errorf("stock of %s: %w", held.FoodID, err)
		}
	}
	return nil
}
