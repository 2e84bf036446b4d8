package demo

import "benchproof/kitchen/episode"

// pitches are the dishes that viewers ask for, most asked for first. The
// viewers are as invented as the boat.
func pitches() []Pitch {
	return []Pitch{
		{Episode: 20, Pitch: episode.Pitch{
			Dish: "The pickles from the Old Quern sandwich", Who: "HALF PAST TIDE", Place: "comments", Times: 51,
			Note: "All in capital letters, every week since the spring. Wants them loud, not sweet.",
		}},
		{Episode: 21, Pitch: episode.Pitch{
			Dish: "Plum tart in the Saint Ebble window", Who: "Noon Boat Norah", Place: "comments", Times: 38,
			Note: "She has never once got a slice.",
		}},
		{Episode: 19, Pitch: episode.Pitch{
			Dish: "Candle Point knots", Who: "the night deckhand", Place: "in person, on the pier", Times: 27,
			Note: "Says the hatch uses milk, no water. That was the hint I needed.",
		}},
		{Episode: 22, Pitch: episode.Pitch{
			Dish: "The custards at Thornholm, the ones with the dark tops", Who: "class 4B of Marrowick school", Place: "a letter with drawings", Times: 24,
			Note: "Two drawings show it upside down. One shows the cat.",
		}},
		{Episode: 24, Pitch: episode.Pitch{
			Dish: "Battered fish that stays crisp until the boat comes", Who: "Uncle Fender", Place: "comments", Times: 19,
			Note: "Stays crisp for ten minutes is the bar.",
		}},
		{Episode: 23, Pitch: episode.Pitch{
			Dish: "Stew for the rain stop", Who: "Pim, aged nine", Place: "a postcard", Times: 16,
		}},
		{Episode: 26, Pitch: episode.Pitch{
			Dish: "Bean pot with the corn bread on top", Who: "the band that plays on Brindle Quay", Place: "in person", Times: 12,
			Note: "They think in cups, so write this one in cups.",
		}},
		{Pitch: episode.Pitch{
			Dish: "Gluten-free knots", Who: "Marl", Place: "comments", Times: 11,
			Note: "Not a swap of flour: a different dough. Its own episode or none.",
		}},
		{Episode: 25, Pitch: episode.Pitch{
			Dish: "Something for a heatwave, nothing cooked", Who: "Lantern Lou", Place: "comments", Times: 9,
		}},
		{Pitch: episode.Pitch{
			Dish: "Smoked eel on rye from the kiosk at Wether Landing", Who: "tern.watcher", Place: "comments", Times: 7,
			Note: "Needs a smoker, or a friend with one.",
		}},
		{Pitch: episode.Pitch{
			Dish: "The ginger biscuits in the wheelhouse tin", Who: "the skipper's mother", Place: "by telephone", Times: 4,
		}},
	}
}
