package demo

import (
	"slices"

	"benchproof/kitchen/episode"
)

// The camera setups, shared by the shots of an episode.
const (
	overBench = "overhead"
	atBench   = "bench, front"
	atHob     = "hob, from the side"
	atOven    = "oven door"
	atTable   = "hero table"
	onQuay    = "quay, hand-held"
)

// setups describes them.
var setups = []episode.Setup{
	{Name: overBench, Camera: "arm over the bench, straight down", Lens: "35 mm, f/5.6", Light: "window left, white card right"},
	{Name: atBench, Camera: "tripod at chest height, across the bench", Lens: "35 mm, f/2.8", Light: "window left, lamp right"},
	{Name: atHob, Camera: "tripod level with the pan's rim", Lens: "50 mm macro, f/4", Light: "lamp behind, so that colour and steam read"},
	{Name: atOven, Camera: "on the floor, looking up through the door", Lens: "50 mm macro, f/2.8", Light: "the oven's own"},
	{Name: atTable, Camera: "tripod, a little above the plate", Lens: "50 mm macro, f/4", Light: "window behind, white card left"},
	{Name: onQuay, Camera: "hand-held", Lens: "35 mm", Light: "daylight"},
}

// setupsOf are those that shots are filmed with.
func setupsOf(shots []episode.Shot) []episode.Setup {
	var used []episode.Setup
	for _, u := range setups {
		if slices.ContainsFunc(shots, func(h episode.Shot) bool { return h.Setup == u.Name }) {
			used = append(used, u)
		}
	}
	return used
}
