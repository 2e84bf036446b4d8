package web

import (
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shop"
)

// addsText says what an option's swap-outs add to the shopping.
func (s *Server) addsText(d *desk, p *shootPlan, o shoot.Option) string {
	if len(o.Cuts) == 0 {
		return ""
	}
	var items []string
	for _, aisle := range shop.List(swapNeeds(d, p, o), s.config.Larder).Aisles {
		for _, item := range aisle.Items {
			items = append(items, joined(" ", item.Measure, item.Name))
		}
	}
	return "adds to the shopping: " + strings.Join(items, ", ")
}

// swapNeeds are what an option's swap-outs need, as the shop asks for them.
func swapNeeds(d *desk, p *shootPlan, o shoot.Option) []shop.Need {
	var batches []episode.Batch
	for _, c := range o.Cuts {
		name := p.nameOf(c.Stage)
		batches = append(batches, episode.Batch{Kind: episode.SwapOut, Makes: measure.Whole(1), Component: name.Component, Step: name.Step})
	}
	return needs(d, batches)
}
