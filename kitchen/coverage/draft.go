package coverage

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
)

// Draft gives a shot for each thing that is left out, ready to be changed: the
// layout first, the steps in their order, the hero last. With them nothing is
// left out. Their setups are for the creator to choose.
func (c Coverage) Draft(r recipe.Recipe) []episode.Shot {
	drafted := c.layouts(r)
	for _, t := range r.Sequence() {
		if slices.Contains(c.NoShot, t.At) || slices.Contains(c.NoCue, t.At) {
			drafted = append(drafted, StepShot(r, t.At))
		}
	}
	if c.NoHero {
		drafted = append(drafted, HeroShot())
	}
	return drafted
}

// layouts lays out everything in one shot where nothing is laid out yet, else
// each component that is left.
func (c Coverage) layouts(r recipe.Recipe) []episode.Shot {
	holding := 0
	for _, component := range r.Components {
		if len(component.Lines) > 0 {
			holding++
		}
	}
	if len(c.NoLayout) == 0 {
		return nil
	}
	if len(c.NoLayout) == holding {
		return []episode.Shot{LayoutShot("")}
	}
	var all []episode.Shot
	for _, i := range c.NoLayout {
		all = append(all, LayoutShot(r.Components[i].Name))
	}
	return all
}

// LayoutShot shows the ingredients of a component laid out; of the whole dish
// for "".
func LayoutShot(component string) episode.Shot {
	title := "The ingredients laid out"
	if component != "" {
		title = component + ": the ingredients laid out"
	}
	return episode.Shot{Title: title, Kind: "overhead", Component: component, Layout: true, Status: episode.Missing}
}

// HeroShot shows the finished dish.
func HeroShot() episode.Shot {
	return episode.Shot{Title: "The finished dish", Kind: "hero", Status: episode.Missing}
}

// StepShot shows a step: its cue from close by if it has one, else hands from
// above, or what stands and cooks as an insert. Common practice, no source.
func StepShot(r recipe.Recipe, at recipe.Position) episode.Shot {
	component := r.Components[at.Component]
	step := component.Steps[at.Step]
	shot := episode.Shot{Title: firstWords(step.Text), Kind: "insert", Component: component.Name, Step: at.Step + 1, Status: episode.Missing}
	switch {
	case step.Cue != "":
		shot.Title, shot.Kind = capital(step.Cue), "close-up"
	case step.HandsOn:
		shot.Kind = "overhead"
	}
	return shot
}

// titleLength is about what fits on one line of a shot list, in letters.
const titleLength = 60

// firstWords is the beginning of a step, to its first clause's end or as long as
// a title is.
func firstWords(text string) string {
	for i, letter := range text {
		ends := i+1 == len(text) || text[i+1] == ' '
		if i > 0 && ends && strings.ContainsRune(".,;:", letter) {
			text = text[:i]
			break
		}
	}
	letters := []rune(text)
	if len(letters) <= titleLength {
		return text
	}
	short := string(letters[:titleLength])
	if end := strings.LastIndexByte(short, ' '); end > 0 {
		short = short[:end]
	}
	return short + "…"
}

func capital(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	if size == 0 {
		return text
	}
	return string(unicode.ToUpper(first)) + text[size:]
}
