package main

import (
	"context"
	"fmt"
	"strconv"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/seed"
	"benchproof/store"
	"benchproof/web"
)

// describeCommand prints what goes under an episode's video.
type describeCommand struct {
	Episode string `arg:"" help:"The episode: its number, or its working title."`
	Data    string `help:"The data folder." default:"data" type:"path"`
	Demo    bool   `help:"Take the demo show instead of a data folder."`
	JSON    bool   `help:"Print JSON."`
}

// Run prints the description block as plain text.
func (c *describeCommand) Run(ctx context.Context, std streams) error {
	st, done, err := c.open(ctx)
	if err != nil {
		return err
	}
	defer done()
	episodes, err := st.Episodes(ctx)
	if err != nil {
		return err
	}
	chosen, err := chooseEpisode(episodes, c.Episode)
	if err != nil {
		return err
	}
	larder, err := seed.Larder()
	if err != nil {
		return err
	}
	site, err := web.New(st, web.Config{PublicURL: "http://localhost", Larder: larder})
	if err != nil {
		return err
	}
	description, err := site.Description(ctx, chosen.ID)
	if err != nil {
		return err
	}
	if c.JSON {
		return printJSON(std.out, map[string]any{
			"description": description.Text, "characters": description.Characters, "limit": description.Limit,
		})
	}
	fmt.Fprintln(std.out, description.Text)
	return nil
}

func (c *describeCommand) open(ctx context.Context) (st *store.Store, done func(), err error) {
	if c.Demo {
		return openDemo(ctx, "http://127.0.0.1:8080")
	}
	if st, err = openData(ctx, c.Data); err != nil {
		return nil, nil, err
	}
	return st, func() { st.Close() }, nil
}

// chooseEpisode finds an episode by its number or its title.
func chooseEpisode(episodes []episode.Episode, asked string) (episode.Episode, error) {
	for _, e := range episodes {
		if strconv.Itoa(e.Number) == asked && e.Number != 0 || strings.EqualFold(e.Title, strings.TrimSpace(asked)) {
			return e, nil
		}
	}
	var known []string
	for _, e := range episodes {
		if e.Number != 0 {
			known = append(known, strconv.Itoa(e.Number))
		}
	}
	if known == nil {
		return episode.Episode{}, fault.NotFoundf("There is no episode “%s”: this data folder has none yet.", asked)
	}
	return episode.Episode{}, fault.NotFoundf("There is no episode “%s”. There are: %s.", asked, strings.Join(known, ", "))
}
