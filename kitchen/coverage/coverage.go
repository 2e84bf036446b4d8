package coverage

import (
	"slices"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
)

// Coverage is what a shot list leaves out of a recipe. Steps stand in the order
// in which they are cooked as written.
type Coverage struct {
	Steps, Cues int               // that the recipe has
	NoShot      []recipe.Position // steps without a shot
	NoCue       []recipe.Position // steps whose cue no shot is near enough to show
	NoLayout    []int             // components whose ingredients no shot shows laid out
	NoHero      bool              // no hero of the finished dish
}

// IsNear tells whether a kind of shot is near enough to show a cue.
func IsNear(kind string) bool { return slices.Contains(near, kind) }

// near are the kinds of shot that are near enough to show a cue. A wide shows
// the room, a cutaway something else, a piece to camera the host: common
// practice, no source.
var near = []string{"overhead", "close-up", "insert", "hero"}

// Of compares a shot list with its recipe. A step whose cue is not shown because
// it has no shot at all is in both lists. A shot that is tied to what the recipe
// no longer has covers nothing, but a hero stays one.
func Of(r recipe.Recipe, shots []episode.Shot) Coverage {
	c := Coverage{NoHero: true}
	filmed, shown, laid := map[recipe.Position]bool{}, map[recipe.Position]bool{}, map[int]bool{}
	last := finished(r)
	for _, shot := range shots {
		tie, ok := TieOf(r, shot)
		if at, isStep := tie.At(); isStep {
			filmed[at] = true
			shown[at] = shown[at] || IsNear(shot.Kind)
		}
		laid[tie.Component] = laid[tie.Component] || ok && shot.Layout
		if shot.Kind == "hero" && (tie.Component < 0 || last[tie.Component]) {
			c.NoHero = false
		}
	}
	for _, t := range r.Sequence() {
		c.Steps++
		if !filmed[t.At] {
			c.NoShot = append(c.NoShot, t.At)
		}
		if r.Components[t.At.Component].Steps[t.At.Step].Cue != "" {
			c.Cues++
			if !shown[t.At] {
				c.NoCue = append(c.NoCue, t.At)
			}
		}
	}
	for i, component := range r.Components {
		if len(component.Lines) > 0 && !laid[i] && !laid[-1] {
			c.NoLayout = append(c.NoLayout, i)
		}
	}
	return c
}

// finished tells which components are the finished dish: those with a step that
// no other waits for. One without steps of its own may be.
func finished(r recipe.Recipe) map[int]bool {
	tasks, awaited := r.Sequence(), map[recipe.Position]bool{}
	for _, t := range tasks {
		for _, at := range t.After {
			awaited[at] = true
		}
	}
	last := map[int]bool{}
	for _, t := range tasks {
		last[t.At.Component] = last[t.At.Component] || !awaited[t.At]
	}
	for i, c := range r.Components {
		last[i] = last[i] || len(c.Steps) == 0
	}
	return last
}

// IsWhole tells whether nothing is left out.
func (c Coverage) IsWhole() bool {
	return len(c.NoShot) == 0 && len(c.NoCue) == 0 && len(c.NoLayout) == 0 && !c.NoHero
}

// SaysLayout tells whether a shot's title says that it shows the ingredients
// laid out. The creator has the last word: see Shot.Layout.
func SaysLayout(title string) bool {
	title = strings.ToLower(title)
	has := func(words string) bool { return strings.Contains(title, words) }
	if has("mise en place") || has("layout") {
		return true
	}
	_, after, _ := strings.Cut(title, "all")
	return has("ingredient") && has("laid") || strings.Contains(after, "ingredients")
}
