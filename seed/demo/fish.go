package demo

import (
	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
)

// fish is episode 24: in development, with a trial that failed.
func (m *maker) fish() Episode {
	release := m.saturday(3)
	return Episode{
		Brief: episode.Episode{
			Number:        24,
			Title:         "Lower Gannick fish",
			Stage:         episode.InDevelopment,
			ReleaseOn:     release,
			Dish:          "Cod in ale batter with sharp cream",
			InspiredBy:    "the fryer behind the net shed at Lower Gannick",
			Look:          "Deep gold, blistered, still crackling when it is set down.",
			Hook:          "The boat is ten minutes late. The batter has to last ten minutes.",
			TargetMinutes: 7,
			Notes:         m.text("notes/24-lower-gannick-fish.md"),
			Scale:         whole(1),
		},
		Recipe:  "fish",
		Version: 1,
		Batches: []episode.Batch{
			{Kind: episode.TrialBatch, Makes: measure.Ratio(1, 2), Note: "four pieces, two at a time"},
			{Kind: episode.ShootBatch, Makes: whole(2), Note: "one to fry on camera, one for the close-ups"},
		},
		Trials: []Trial{{Version: 1, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -31), Scale: measure.Ratio(1, 2), Pieces: whole(4), Minutes: whole(6),
			Setting: "oil 180 °C, fell to 158 °C", Verdict: "not yet",
			Note: "All four in at once, although the recipe says two. Oil fell to 158 °C, batter drank it and went soft in three minutes. Fish read 66 °C, so the time was long enough. Next: two at a time, and wait for the oil.",
		}}},
	}
}
