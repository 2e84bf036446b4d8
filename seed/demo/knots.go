package demo

import (
	"time"

	"benchproof/kitchen/episode"
)

// knots is episode 19: released two weeks back, with its captions.
func (m *maker) knots() Episode {
	release := m.saturday(-2)
	return Episode{
		Brief: episode.Episode{
			Number:        19,
			Title:         "Candle Point knots",
			Stage:         episode.Released,
			ReleaseOn:     release,
			Dish:          "Soft milk-dough knots with honey butter and caraway",
			InspiredBy:    "the tray buns sold from a hatch on the Candle Point pier",
			Look:          "Deep gold and shining, one clear knot each, caraway and flakes of salt on top; long strands when torn.",
			Hook:          "The tray comes out of the hatch at ten past seven. The boat leaves at a quarter past.",
			TargetMinutes: 7,
			Notes:         m.text("notes/19-candle-point-knots.md"),
			Scale:         whole(1),
		},
		Recipe:   "knots",
		Version:  3,
		Batches:  knotsBatches(),
		Trials:   knotsTrials(release),
		Segments: m.segments("narration/19-candle-point-knots.txt", 48, 48, 50, 45, 52, 48, 46, 47, 55),
		Shots:    inOrder(knotsShots()),
		Cuts: []episode.Cut{{
			Name: "Final cut", Seconds: 438, Captions: m.text("captions/19-candle-point-knots.vtt"),
		}},
		Release: episode.Release{
			Title:      "Sixteen honey butter knots, five minutes to eat one | Ferry Stop Kitchen 19",
			Opening:    "Soft milk-dough knots with honey butter and caraway, from the hatch on the Candle Point pier.\nOne free morning, one warm corner, no bread-making needed.",
			Equipment:  "Scales that show single grams\nStand mixer with a dough hook\nTwo baking trays\nProbe thermometer",
			Credits:    "The hint about the milk: the night deckhand\nMusic: Low Water, squeezebox played by the host",
			Disclosure: "",
			VideoURL:   "https://video.example/ferry-stop-kitchen/19",
		},
	}
}

func knotsBatches() []episode.Batch {
	return []episode.Batch{
		{Kind: episode.TrialBatch, Makes: whole(3), Note: "one a version"},
		{Kind: episode.ShootBatch, Makes: whole(1)},
		{Kind: episode.SwapOut, Makes: whole(1), Note: "risen, divided and shaped; started 75 minutes ahead"},
		{Kind: episode.Spare, Makes: whole(1), Note: "baked the evening before, for the hero and the hatch"},
	}
}

func knotsTrials(release time.Time) []Trial {
	return []Trial{
		{Version: 1, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -40), Scale: whole(1), DoughGrams: whole(914), BakedGrams: whole(821),
			Pieces: whole(16), Minutes: whole(18), Setting: "150 °C fan", Verdict: "not yet",
			Note: "Pale as a raincoat after the full 18 minutes. The fan figure in my notes is wrong: it should stand twenty under 190, not forty. Dough tight, ropes sprang back.",
		}},
		{Version: 2, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -33), Scale: whole(1), DoughGrams: whole(961), BakedGrams: whole(849),
			Pieces: whole(16), Minutes: whole(16), Setting: "170 °C fan", Verdict: "nearly",
			Note: "Colour right, taste right. Too wet: needed flour on the bench, and the knots sat down during the second rise.",
		}},
		{Version: 3, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -26), Scale: whole(1), DoughGrams: whole(933), BakedGrams: whole(823),
			Pieces: whole(16), Minutes: whole(16), Setting: "170 °C fan", Verdict: "proved",
			Note: "No flour on the bench. 94 °C in the middle at 16 minutes. First rise 68 minutes at 24 °C.",
		}},
		{Version: 3, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -19), Scale: whole(2), DoughGrams: whole(1868), BakedGrams: whole(1652),
			Pieces: whole(32), Minutes: whole(17), Setting: "170 °C fan", Verdict: "proved",
			Note: "Double make, for the shoot. The mixer takes it, just. Four trays means two rounds in the oven; the second two waited in the cold hall.",
		}},
	}
}

func knotsShots() []episode.Shot {
	return []episode.Shot{
		{Title: "The tray comes out of the hatch", Kind: "cutaway", Setup: onQuay, Status: episode.Got},
		{Title: "Host at the bench, tray in hand: the hook", Kind: "piece to camera", Setup: atBench, Status: episode.Got},
		{Title: "Flour, sugar, salt and yeast land in the bowl", Kind: "overhead", Setup: overBench, Step: 1, Status: episode.Got},
		{Title: "Milk poured on the scales, the display readable", Kind: "insert", Setup: overBench, Step: 1, Status: episode.Got},
		{Title: "Butter vanishes into the dough, piece by piece", Kind: "close-up", Setup: atBench, Step: 2, Status: episode.Got, Note: "Keep the sound: the slap is the cue."},
		{Title: "Stretching a piece until fingers show through", Kind: "close-up", Setup: atBench, Step: 2, Status: episode.Got},
		{Title: "Tape on the bowl, before and after the rise", Kind: "overhead", Setup: overBench, Step: 3, Status: episode.Got, Note: "After: the swap-out's bowl."},
		{Title: "Sixteen pieces on the scales and into balls", Kind: "overhead", Setup: overBench, Step: 4, Status: episode.Got},
		{Title: "One rope tied, slowly, twice", Kind: "overhead", Setup: overBench, Step: 6, Status: episode.Got, Note: "Hands from the right only."},
		{Title: "A fingertip's dent springs back slowly", Kind: "close-up", Setup: atBench, Step: 7, Status: episode.Got},
		{Title: "Yolk brushed on thinly", Kind: "close-up", Setup: atBench, Step: 8, Status: episode.Got},
		{Title: "Colour coming through the oven door", Kind: "insert", Setup: atOven, Step: 9, Status: episode.Got},
		{Title: "Honey butter goes on and the crust crackles", Kind: "close-up", Setup: atBench, Step: 10, Status: episode.Got, Note: "Sound!"},
		{Title: "Torn along the knot, strands against the light", Kind: "hero", Setup: atTable, Step: 11, Status: episode.Got},
	}
}
