package main

import (
	"os"
	"path/filepath"
	"testing"

	"benchproof/cmd/check/browser"
)

// TestTheShootDay is the shoot of a plum tart on a phone, from an empty data
// folder: the plan is made, a step is pinned, guests come, a swap-out is picked
// so that the shop buys for it, and the day runs late.
func TestTheShootDay(t *testing.T) {
	tab := browser.Start(t, browser.Phone)
	up := start(t, 2, "serve", "--data", t.TempDir(), "--addr", "127.0.0.1:0")
	c := &cook{t: t, tab: tab, at: up.address}
	c.setUp(up.code)
	text, err := os.ReadFile(filepath.Join("testdata", "typed", "plum-tart.txt"))
	if err != nil {
		t.Fatal(err)
	}
	day := c.makeEpisode("Plum tart", string(text)) + "/shoot-day"
	c.sees(day, "09:00 begins", "wraps", "the plan")

	c.presses(".day-plan .fix")
	c.types("step-pin", "9.30")
	c.presses("#step button")
	c.sees(day, "pinned to 09:30", "What changed")

	c.opens("Fixed times")
	c.opens("Add a moment")
	c.types("moment-name", "Neighbours taste")
	c.types("moment-at", "23:00")
	c.presses("#moment button")
	c.sees(day, "23:00", "Neighbours taste")

	c.open(day + "?swapouts=1")
	c.presses("#swap-outs form button")
	c.sees(day+"?swapouts=1", "as planned", "made ahead to the end of")
	shop := day[:len(day)-len("/shoot-day")] + "/shop"
	c.sees(shop, "swap-out up to")

	c.open(day + "?late=1")
	c.clears("late-now")
	c.types("late-now", "10:15")
	c.presses("#late .buttons button")
	c.sees(day, "Replanned at 10:15")
	c.presses("form[action$='/anew'] button")
	c.sees(day, "09:00 begins", "nothing can wrap earlier")
	for _, wrong := range tab.Complaints() {
		t.Error(wrong)
	}
}
