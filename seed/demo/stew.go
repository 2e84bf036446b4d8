package demo

import (
	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
)

// stew is episode 23: in development, tried once, and not yet at the size of
// the shoot.
func (m *maker) stew() Episode {
	release := m.saturday(2)
	return Episode{
		Brief: episode.Episode{
			Number:        23,
			Title:         "Wether Landing stew",
			Stage:         episode.InDevelopment,
			ReleaseOn:     release,
			Dish:          "Lamb and barley stew for a stop with no roof",
			InspiredBy:    "the stew pot on the tailgate at Wether Landing",
			Look:          "Thick and dark with whole pieces; barley visible; steam and parsley.",
			Hook:          "It rains at Wether Landing on three days out of four. On the fourth they are out of stew.",
			TargetMinutes: 6,
			Notes:         m.text("notes/23-wether-landing-stew.md"),
			Scale:         measure.Ratio(3, 2),
		},
		Recipe:  "stew",
		Version: 1,
		Batches: []episode.Batch{
			{Kind: episode.TrialBatch, Makes: whole(1), Note: "at one and a half, in the big pot"},
			{Kind: episode.ShootBatch, Makes: whole(1)},
		},
		Trials: []Trial{{Version: 1, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -29), Scale: whole(1), Pieces: whole(7), Minutes: whole(125),
			Setting: "lowest gas, lid on", Verdict: "nearly",
			Note: "Seven good bowls. Lamb needed 10 minutes more than written before the barley went in. 1.4 l of stock used.",
		}}},
		Segments: m.segments("narration/23-wether-landing-stew.txt", 40, 70, 60, 0),
		Shots: inOrder([]episode.Shot{
			{Title: "Rain on the tailgate", Kind: "cutaway", Setup: onQuay, Status: episode.Got},
			{Title: "Lamb browning in three lots", Kind: "close-up", Setup: atHob, Step: 1, Status: episode.Missing},
			{Title: "A spoon cuts the lamb", Kind: "hero", Setup: atTable, Step: 8, Status: episode.Missing},
		}),
	}
}
