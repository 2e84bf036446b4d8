package demo

import "benchproof/kitchen/episode"

// soup is episode 25: pitched, with a recipe pasted and nothing tried.
func (m *maker) soup() Episode {
	return Episode{
		Brief: episode.Episode{
			Number:        25,
			Title:         "Tidewick cold soup",
			Stage:         episode.Pitched,
			ReleaseOn:     m.saturday(4),
			Dish:          "Cold cucumber and yoghurt soup, nothing cooked",
			InspiredBy:    "the only shade on the Tidewick pier",
			Look:          "Pale green, ice-cold bowls, dark crumbs, a thread of oil.",
			Hook:          "Thirty-three degrees on the pier, and nobody wants to stand at a stove.",
			TargetMinutes: 5,
			Notes:         m.text("notes/25-tidewick-soup.md"),
			Scale:         whole(1),
		},
		Recipe:  "soup",
		Version: 1,
	}
}
