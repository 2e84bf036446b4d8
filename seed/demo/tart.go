package demo

import (
	"time"

	"benchproof/kitchen/episode"
)

// tart is episode 21: in the edit, out on the coming Saturday. Its cut has one
// slip: the fan temperature of the blind bake is said as 180 °C, while recipe
// and narration have 170 °C.
func (m *maker) tart() Episode {
	release := m.saturday(0)
	return Episode{
		Brief: episode.Episode{
			Number:        21,
			Title:         "Saint Ebble plum tart",
			Stage:         episode.InTheEdit,
			ReleaseOn:     release,
			Dish:          "Tart of sweet pastry, pastry cream and roast plums under apricot glaze",
			InspiredBy:    "the one tart a day in the window on Saint Ebble quay",
			Look:          "Three level layers in the cut, nothing moving; plums dark and glossy in rings.",
			Hook:          "One tart a day, and on the noon boat two slices and a child in front of you.",
			TargetMinutes: 7,
			Notes:         m.text("notes/21-saint-ebble-tart.md"),
			Scale:         whole(1),
		},
		Recipe:  "tart",
		Version: 2,
		Batches: []episode.Batch{
			{Kind: episode.TrialBatch, Makes: whole(2)},
			{Kind: episode.ShootBatch, Makes: whole(1)},
			{Kind: episode.SwapOut, Makes: whole(1), Note: "shell baked and cream set the day before"},
			{Kind: episode.Spare, Makes: whole(1), Note: "finished tart for the cut; the first slice is only for practice"},
		},
		Trials:   tartTrials(release),
		Segments: m.segments("narration/21-saint-ebble-tart.txt", 45, 50, 45, 50, 50, 55, 50, 45),
		Shots:    inOrder(tartShots()),
		Cuts: []episode.Cut{{
			Name: "Second cut", Seconds: 392, Captions: m.text("captions/21-saint-ebble-tart.vtt"),
		}},
		Release: episode.Release{
			Title:     "A plum tart that stands up when you cut it | Ferry Stop Kitchen 21",
			Opening:   "Crisp shell, cold cream, roast plums: the tart in the window at Saint Ebble, asked for thirty-eight times.",
			Equipment: "24 cm loose-bottomed tart tin, 3 cm deep\nBaking beans\nFine sieve\nLong thin knife",
			Credits:   "Asked for by Noon Boat Norah, who has never got a slice\nMusic: Low Water, squeezebox played by the host",
		},
	}
}

func tartTrials(release time.Time) []Trial {
	return []Trial{
		{Version: 1, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -35), Scale: whole(1), DoughGrams: whole(402), Pieces: whole(10), Minutes: whole(30),
			Setting: "170 °C fan", Verdict: "not yet",
			Note: "Shell 338 g raw, 303 g baked, lovely. Raw plums wept 70 ml into the cream within four hours and the slice slid. Cream too soft even without that.",
		}},
		{Version: 2, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -25), Scale: whole(1), DoughGrams: whole(399), Pieces: whole(10), Minutes: whole(29),
			Setting: "170 °C fan", Verdict: "proved",
			Note: "Shell 341 g raw, 305 g baked; trimmings 58 g. Plums 600 g raw, 462 g roast and drained. Stood up at one hour, at five, and the next day.",
		}},
		{Version: 2, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -18), Scale: whole(1), DoughGrams: whole(405), Pieces: whole(10), Minutes: whole(30),
			Setting: "170 °C fan", Verdict: "proved",
			Note: "With 2 tbsp of water, on a dry day. Shrank 2 mm at the rim, no more.",
		}},
	}
}

func tartShots() []episode.Shot {
	return []episode.Shot{
		{Title: "Window on the quay, the tart behind rain", Kind: "cutaway", Setup: onQuay, Status: episode.Got},
		{Title: "The slice that slid, from the first trial", Kind: "insert", Setup: atTable, Status: episode.Got, Note: "Telephone footage of the trial; label it so."},
		{Title: "Host at the bench: the hook", Kind: "piece to camera", Setup: atBench, Status: episode.Got},
		{Title: "Everything laid out, plums in two rows", Kind: "overhead", Setup: overBench, Layout: true, Status: episode.Got},
		{Title: "Butter rubbed in, fingertips", Kind: "close-up", Setup: overBench, Component: "Pastry", Step: 1, Status: episode.Got},
		{Title: "Pastry rolled, lifted and lowered into the tin", Kind: "overhead", Setup: overBench, Component: "Pastry", Step: 4, Status: episode.Got},
		{Title: "Paper and beans out, shell golden to the bottom", Kind: "close-up", Setup: atBench, Component: "Pastry", Step: 6, Status: episode.Got},
		{Title: "Oven dial at 170 °C fan", Kind: "insert", Setup: atOven, Component: "Pastry", Step: 5, Status: episode.Retake, Note: "Out of focus. Needed if the line is spoken again."},
		{Title: "Plums go in raw, come out slumped", Kind: "overhead", Setup: overBench, Component: "Roast plums", Step: 2, Status: episode.Got, Note: "Same frame, dissolve."},
		{Title: "Hot milk into the yolks, a ladle at a time", Kind: "overhead", Setup: overBench, Component: "Pastry cream", Step: 2, Status: episode.Got},
		{Title: "The cream boils: bubbles through the whisk", Kind: "close-up", Setup: atHob, Component: "Pastry cream", Step: 3, Status: episode.Got, Note: "Hold it for the whole minute; the edit decides."},
		{Title: "Glaze through the sieve", Kind: "close-up", Setup: atHob, Component: "Glaze", Step: 1, Status: episode.Got},
		{Title: "Plums laid in rings, outside in", Kind: "overhead", Setup: overBench, Component: "To finish", Step: 1, Status: episode.Got},
		{Title: "Brush of glaze catches the light", Kind: "close-up", Setup: atTable, Component: "To finish", Step: 2, Status: episode.Got},
		{Title: "The cut, and the slice on the plate", Kind: "hero", Setup: atTable, Component: "To finish", Step: 3, Status: episode.Got, Note: "Spare tart, second slice."},
	}
}
