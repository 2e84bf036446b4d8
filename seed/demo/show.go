package demo

import (
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/shop"
)

// Show is the whole demo show. Nothing in it has an ID or a revision: parts
// name each other by Recipe.Key, by version number and by episode number, and
// whoever stores them puts the IDs in.
type Show struct {
	Show     episode.Show
	Recipes  []Recipe
	Pitches  []Pitch
	Episodes []Episode // by number
	Packs    []shop.Pack
	Stock    []shop.Stock
}

// Recipe is a recipe in its versions.
type Recipe struct {
	Key      string // how episodes name it: "knots"
	Name     string
	Versions []Version // oldest first; version 1 is Versions[0]
}

// Version is one text of a recipe, as pasted.
type Version struct {
	Text   string
	Note   string    // what changed and why; "" for a first version
	MadeOn time.Time // a date, midnight UTC
}

// Episode is one instalment with everything that belongs to it. Empty parts are
// not there yet.
type Episode struct {
	Brief       episode.Episode // RecipeID and VersionID are 0: Recipe and Version tell
	Recipe      string          // a Recipe.Key
	Version     int             // the version in use, from 1
	Batches     []episode.Batch
	ShootDay    episode.ShootDay  // the zero one if nothing is said of it
	Moments     []episode.Moment  // of the shoot day
	Trials      []Trial           // oldest first
	Segments    []episode.Segment // in the running order
	Shots       []episode.Shot    // in order
	Setups      []episode.Setup   // those that the shots name
	Cuts        []episode.Cut
	Release     episode.Release // the zero Release if nothing is written yet
	Corrections []episode.Correction
}

// Trial is one make at the bench, of one version of the episode's recipe.
type Trial struct {
	episode.Trial     // VersionID is 0: Version tells
	Version       int // from 1
}

// Pitch is a dish somebody asked for.
type Pitch struct {
	episode.Pitch     // EpisodeID is 0: Episode tells
	Episode       int // the number of the episode it became; 0 if none yet
}
