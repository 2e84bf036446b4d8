package release

import (
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/food"
	"benchproof/kitchen/recipe"
)

// Input is what a release is written from. Empty parts are left out of what is
// written; only the show's and the episode's names are missed.
type Input struct {
	Show        episode.Show
	Episode     episode.Episode
	Release     episode.Release
	Corrections []episode.Correction
	Recipe      recipe.Recipe // every amount at the scale that is published
	Makes       string        // "makes 24 knots", at that scale; "" if the recipe does not say
	Larder      *food.Larder  // for weights; may be nil
	Chapters    []Chapter     // none if the platform would refuse the list
	Allergens   []string      // in words, "milk", "nuts (almond)"
	MayHold     []string      // what only some makers' versions hold
	Unsure      []string      // foods whose allergens nobody knows
	Cautions    []string
	PageURL     string // the recipe page's address; "" if it is not shared
	Language    string // BCP 47, "en"; "" for not said
}

// Chapter is one entry of the video's chapter list.
type Chapter struct {
	At    int // seconds into the video
	Title string
}

// Title is what the release is called: its own title, else the recipe's, else
// the episode's.
func (in Input) Title() string {
	return firstOf(in.Release.Title, in.Recipe.Title, in.Episode.Title, in.Episode.Dish)
}

// Credits names who inspired the episode, then the recipe's credits and the
// release's, each once.
func (in Input) Credits() []string {
	var list []string
	if in.Episode.InspiredBy != "" {
		credit := "Inspired by " + in.Episode.InspiredBy
		if in.Episode.InspiredURL != "" {
			credit += ": " + in.Episode.InspiredURL
		}
		list = append(list, credit)
	}
	list = append(list, in.Recipe.Credits...)
	return distinct(append(list, linesOf(in.Release.Credits)...))
}

// Disclosures are the show's standing one and the release's own.
func (in Input) Disclosures() []string {
	return distinct(append(linesOf(in.Show.Disclosure), linesOf(in.Release.Disclosure)...))
}

// Equipment is the release's list, else the recipe's.
func (in Input) Equipment() []string {
	if list := linesOf(in.Release.Equipment); len(list) > 0 {
		return distinct(list)
	}
	return distinct(in.Recipe.Equipment)
}

// linesOf cuts text into its lines that are not blank.
func linesOf(text string) []string {
	var lines []string
	for line := range strings.Lines(text) {
		if line = strings.TrimSpace(line); line != "" {
			lines = append(lines, line)
		}
	}
	return lines
}

// distinct drops what is empty or was there before, with or without a full
// stop.
func distinct(list []string) []string {
	var kept []string
	seen := map[string]bool{"": true}
	for _, s := range list {
		s = strings.TrimSpace(s)
		if bare := strings.TrimRight(s, "."); !seen[bare] {
			seen[bare] = true
			kept = append(kept, s)
		}
	}
	return kept
}

func firstOf(texts ...string) string {
	for _, text := range texts {
		if text = strings.TrimSpace(text); text != "" {
			return text
		}
	}
	return ""
}
