package web

import (
	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shop"
)

// addsText says what an option's swap-outs add to the shopping and to its cost.
func addsText(t trolley, d *desk, p *shootPlan, o shoot.Option) string {
	if len(o.Cuts) == 0 {
		return ""
	}
	items, cost := t.adds(swapNeeds(d, p, o))
	return joined("; ", "adds to the shopping: "+items, cost)
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
