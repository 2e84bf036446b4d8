package demo

import (
	"time"

	"benchproof/kitchen/episode"
)

// pickles is episode 20: the last release, with two corrections to what was
// said on air.
func (m *maker) pickles() Episode {
	release := m.saturday(-1)
	return Episode{
		Brief: episode.Episode{
			Number:        20,
			Title:         "Old Quern fridge pickles",
			Stage:         episode.Released,
			ReleaseOn:     release,
			Dish:          "Cucumber, carrot and onion pickled in the fridge overnight",
			InspiredBy:    "the sandwich counter at Old Quern",
			Look:          "Thick slices in pink brine, packed tight, jar wet with cold; the squeak on the first bite.",
			Hook:          "The sandwich is fine. The pickles in it are the reason people remember the stop.",
			TargetMinutes: 6,
			Notes:         m.text("notes/20-old-quern-pickles.md"),
			Scale:         whole(1),
		},
		Recipe:  "pickles",
		Version: 1,
		Batches: []episode.Batch{
			{Kind: episode.TrialBatch, Makes: whole(2)},
			{Kind: episode.ShootBatch, Makes: whole(1)},
			{Kind: episode.SwapOut, Makes: whole(1), Note: "three days old on the day of the shoot, for the bite"},
		},
		Trials:   picklesTrials(release),
		Segments: m.segments("narration/20-old-quern-pickles.txt", 45, 50, 55, 60, 60, 45, 55),
		Shots:    inOrder(picklesShots()),
		Cuts:     []episode.Cut{{Name: "Final cut", Seconds: 372}},
		Release: episode.Release{
			Title:      "Fridge pickles that squeak: half an hour and one night | Ferry Stop Kitchen 20",
			Opening:    "Cold, loud, more sour than sweet: the cucumber pickles from the sandwich counter at Old Quern.\nNo canning. They live in the fridge.",
			Equipment:  "Two jars of 500 ml with lids\nScales that show single grams\nOne small pan",
			Credits:    "Asked for fifty-one times by HALF PAST TIDE and friends\nMusic: Low Water, squeezebox played by the host",
			Disclosure: "The two jars in this video were a present from the person who blew the glass, who had no say in what is said about them.",
			VideoURL:   "https://video.example/ferry-stop-kitchen/20",
		},
		Corrections: []episode.Correction{
			{At: 188, Said: "Fifteen grams of salt a jar.", Right: "15 g of fine salt for the whole brine, which fills both jars."},
			{At: 338, Said: "Eat them within two months.", Right: "Eat them within two weeks, and keep them in the fridge at 5 °C or colder."},
		},
	}
}

func picklesTrials(release time.Time) []Trial {
	return []Trial{
		{Version: 1, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -27), Scale: whole(1), Pieces: whole(2), Minutes: whole(5),
			Setting: "brine at a full boil", Verdict: "nearly",
			Note: "Cut at 3 mm by mistake: limp on day two. Taste right. 60 ml of brine left over.",
		}},
		{Version: 1, Trial: episode.Trial{
			MadeOn: release.AddDate(0, 0, -18), Scale: whole(1), Pieces: whole(2), Minutes: whole(5),
			Setting: "brine at a full boil", Verdict: "proved",
			Note: "5 mm as written. Squeaks on days one, three and nine. Fridge at 4 °C throughout.",
		}},
	}
}

func picklesShots() []episode.Shot {
	return []episode.Shot{
		{Title: "Sandwich, then only the pickle pulled out of it", Kind: "close-up", Setup: atTable, Status: episode.Got},
		{Title: "Host at the bench: the hook", Kind: "piece to camera", Setup: atBench, Status: episode.Got},
		{Title: "Ferry waits for the tide at Old Quern", Kind: "cutaway", Setup: onQuay, Status: episode.Got},
		{Title: "Boiling water into the jars", Kind: "close-up", Setup: atBench, Step: 1, Status: episode.Got, Note: "Steam against the dark wall."},
		{Title: "Slicing, a ruler beside the slices", Kind: "overhead", Setup: overBench, Step: 2, Status: episode.Got},
		{Title: "Jars packed, pressed with a spoon", Kind: "overhead", Setup: overBench, Step: 2, Status: episode.Got},
		{Title: "The label: 5 % acidity", Kind: "insert", Setup: overBench, Step: 3, Status: episode.Got, Note: "Maker's name turned away."},
		{Title: "Salt on the scales, 15 g readable", Kind: "insert", Setup: overBench, Step: 3, Status: episode.Got},
		{Title: "Brine comes to the boil and clears", Kind: "close-up", Setup: atHob, Step: 3, Status: episode.Got},
		{Title: "Hot brine poured, onion turning pink", Kind: "close-up", Setup: atBench, Step: 4, Status: episode.Got},
		{Title: "Fridge door closes on two jars", Kind: "wide", Setup: atBench, Step: 4, Status: episode.Got},
		{Title: "The bite", Kind: "hero", Setup: atTable, Status: episode.Got, Note: "Swap-out, three days old. Sound!"},
	}
}
