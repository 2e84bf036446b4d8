package episode

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// Show is the channel: one a database.
type Show struct {
	Name             string
	Host             string         // who cooks and speaks
	System           measure.System // the house measures
	Oven             string         // "fan" or "conventional": the kitchen's own oven
	TimeZone         string         // IANA name, "Pacific/Auckland"
	Currency         string         // ISO 4217, "NZD"
	WordsPerMinute   int            // the host's pace when narrating
	DescriptionLimit int            // characters the video platform allows
	Disclosure       string         // standing disclosure, put in every description
	Links            string         // standing links and words at the description's end
	MixerGrams       int            // dough the mixer takes at once; 0 if not said
	TrayPieces       int            // pieces on one tray; 0 if not said
	OvenTrays        int            // trays in the oven at once; 0 if not said
	Revision         int
}

// Capacity is what the show's kitchen takes at once.
func (s Show) Capacity() recipe.Capacity {
	return recipe.Capacity{
		MixerGrams: measure.Whole(int64(s.MixerGrams)), TrayPieces: measure.Whole(int64(s.TrayPieces)), OvenTrays: measure.Whole(int64(s.OvenTrays)),
	}
}

// Pitch is a dish somebody asked for.
type Pitch struct {
	ID        int64
	Dish      string
	Who       string // who asked
	Place     string // where: a comment, a letter, in person
	Times     int    // how often it was asked for, at least 1
	Note      string
	EpisodeID int64 // the episode it became; 0 if none yet
	Revision  int
}
