package demo

import (
	"time"

	"benchproof/kitchen/episode"
)

// custards is episode 22: tried, written and ready to shoot.
func (m *maker) custards() Episode {
	release := m.saturday(1)
	return Episode{
		Brief: episode.Episode{
			Number:        22,
			Title:         "Thornholm burnt-sugar custards",
			Stage:         episode.ReadyToShoot,
			ReleaseOn:     release,
			Dish:          "Small bay-leaf custards turned out in their own burnt sugar",
			InspiredBy:    "the café with four tables under the Thornholm lighthouse",
			Look:          "Smooth, no holes, dark cap, red where the light comes through; a pool that moves.",
			Hook:          "They ask you one question: one, or two?",
			TargetMinutes: 6,
			Notes:         m.text("notes/22-thornholm-custards.md"),
			Scale:         whole(1),
		},
		Recipe:  "custards",
		Version: 3,
		Batches: []episode.Batch{
			{Kind: episode.TrialBatch, Makes: whole(4)},
			{Kind: episode.ShootBatch, Makes: whole(1)},
			{
				Kind: episode.SwapOut, Makes: whole(2), Component: "Custard", Step: 7, Overnight: true,
				Note: "made the evening before, for the turning out; the third is always the best",
			},
		},
		ShootDay: custardsDay(release.AddDate(0, 0, -8)),
		Moments: []episode.Moment{
			{Name: "Eggs and cream come with the first boat’s van", At: 10 * 60, Holds: episode.NotBefore, Component: "Custard", Step: 1},
			{Name: "Crew’s pie in the oven", At: 12*60 + 15, Until: 13 * 60, Takes: "oven"},
			{Name: "Four tables’ worth of guests taste", At: 16 * 60, Holds: episode.DoneBefore},
		},
		Trials:   custardsTrials(release),
		Segments: m.segments("narration/22-thornholm-custards.txt", 45, 55, 50, 50, 50, 50, 55),
		Shots:    inOrder(custardsShots()),
	}
}

// custardsDay is the shoot: the light goes from the hero table at half past four.
func custardsDay(on time.Time) episode.ShootDay {
	day := episode.NewShootDay(0)
	day.On, day.HelperUntil, day.LightUntil = on, 14*60, 16*60+30
	day.People = "The host, at the bench\nTamsin Okoro, second pair of hands until two"
	day.Gear = "Camera, with the 35 mm and the 50 mm macro\nOverhead arm\nTwo lamps, one white card\nLapel microphone, and a spare"
	day.Props = "Six 150 ml moulds\nThe white pan\nGloves\nSix plates with a rim\nBlue cloth"
	day.Kitchen.CleanBench, day.Kitchen.CleanHob = 3, 2
	return day
}

func custardsTrials(release time.Time) []Trial {
	return []Trial{
		{Version: 1, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -44), Scale: whole(1), DoughGrams: whole(732), BakedGrams: whole(718), Pieces: whole(6),
			Minutes: whole(33), Setting: "150 °C fan, in water", Verdict: "not yet",
			Note: "Two of six tore on turning out. Thin taste.",
		}},
		{Version: 2, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -36), Scale: whole(1), DoughGrams: whole(765), BakedGrams: whole(751), Pieces: whole(6),
			Minutes: whole(28), Setting: "150 °C fan, in water", Verdict: "nearly",
			Note: "All six stood. Holes all round the side: the water was boiling, and the middle read 88 °C.",
		}},
		{Version: 3, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -28), Scale: whole(1), DoughGrams: whole(762), BakedGrams: whole(751), Pieces: whole(6),
			Minutes: whole(37), Setting: "130 °C fan, in water", Verdict: "proved",
			Note: "Smooth to the rim, 80 °C in the middle at 37 minutes. Turned out at 5 hours and at 20; more sauce at 20.",
		}},
		{Version: 3, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -19), Scale: whole(1), DoughGrams: whole(764), BakedGrams: whole(754), Pieces: whole(6),
			Minutes: whole(39), Setting: "130 °C fan, in water", Verdict: "proved",
			Note: "From a colder kitchen: two minutes more. Trembles like jelly in a lorry, sets like silk.",
		}},
	}
}

func custardsShots() []episode.Shot {
	return []episode.Shot{
		{Title: "Lighthouse, bench, four tables", Kind: "wide", Setup: onQuay, Status: episode.Got, Note: "From the spring trip."},
		{Title: "Host at the bench: one, or two?", Kind: "piece to camera", Setup: atBench, Status: episode.Missing},
		{Title: "Sugar from straw to strong tea, one take", Kind: "close-up", Setup: atHob, Component: "Caramel", Step: 1, Status: episode.Missing, Note: "White pan. Lamp behind, so the colour reads."},
		{Title: "Caramel poured and tipped round a mould", Kind: "close-up", Setup: atHob, Component: "Caramel", Step: 2, Status: episode.Missing, Note: "Gloves in frame: it is honest."},
		{Title: "Bay leaves torn into the milk", Kind: "overhead", Setup: overBench, Component: "Custard", Step: 1, Status: episode.Missing},
		{Title: "Three eggs, two yolks, stirred without froth", Kind: "overhead", Setup: overBench, Component: "Custard", Step: 3, Status: episode.Missing},
		{Title: "Strained, moulds filled, caramel cracks", Kind: "close-up", Setup: overBench, Component: "Custard", Step: 3, Status: episode.Missing, Note: "Sound!"},
		{Title: "Water poured to halfway, cloth under the moulds", Kind: "overhead", Setup: overBench, Component: "Custard", Step: 5, Status: episode.Missing},
		{Title: "Oven dial at 130 °C fan", Kind: "insert", Setup: atOven, Component: "Custard", Step: 4, Status: episode.Missing},
		{Title: "A mould nudged: it trembles", Kind: "insert", Setup: atBench, Component: "Custard", Step: 5, Status: episode.Missing},
		{Title: "Probe reads 80 °C", Kind: "insert", Setup: atBench, Component: "Custard", Step: 5, Status: episode.Missing},
		{Title: "Turned over, the sigh, the sauce", Kind: "hero", Setup: atTable, Component: "Custard", Step: 8, Status: episode.Missing, Note: "Swap-out. Three tries at least."},
		{Title: "One spoon straight down", Kind: "close-up", Setup: atTable, Status: episode.Missing},
	}
}
