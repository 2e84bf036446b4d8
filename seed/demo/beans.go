package demo

import "benchproof/kitchen/episode"

// beans is episode 26: pitched, without a date yet.
func (m *maker) beans() Episode {
	return Episode{
		Brief: episode.Episode{
			Number:     26,
			Title:      "Brindle Quay bean pot",
			Stage:      episode.Pitched,
			Dish:       "Bean pot baked under a corn lid",
			InspiredBy: "the band that plays on Brindle Quay, and what it eats afterwards",
			Look:       "A cracked golden lid with red at the edges, one spoon in.",
			Notes:      m.text("notes/26-brindle-quay-beans.md"),
			Scale:      whole(1),
		},
		Recipe:  "beans",
		Version: 1,
	}
}
