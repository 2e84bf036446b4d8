package recipe

import (
	"strings"

	"benchproof/kitchen/recipe/align"
)

// ChangeKind is what happened to a part between two versions.
type ChangeKind string

// The kinds of change.
const (
	Added   ChangeKind = "added"
	Removed ChangeKind = "removed"
	Changed ChangeKind = "changed"
	Moved   ChangeKind = "moved" // to another place or component, its words as before
)

// Change is one difference between two versions of a recipe.
type Change struct {
	Kind      ChangeKind
	In        Part   // title, yield, component, line, step …
	Component string // where it stands in the new version; for what was removed, in the old
	From      string // the component it was in before, if it moved from another
	Old, New  string // both texts; Old is "" for what was added, New for what was removed
}

// Changes tells what is different in the newer recipe, in the order of reading:
// title, yield, then each component with its lines and steps, then the rest. A
// line whose food is the same counts as changed, not as removed and added. Equal
// recipes give nil. It compares what was written, not what was understood of it.
func Changes(older, newer Recipe) []Change {
	d := differ{older: older, newer: newer}
	d.text(InTitle, older.Title, newer.Title)
	d.text(InYield, older.Yield.Text, newer.Yield.Text)
	d.list(InIntro, older.Intro, newer.Intro)
	d.components()
	d.list(InEquipment, older.Equipment, newer.Equipment)
	d.list(InNotes, older.Notes, newer.Notes)
	d.list(InCredits, older.Credits, newer.Credits)
	d.list(InUnread, unreadTexts(older), unreadTexts(newer))
	return d.settle()
}

// differ gathers the changes.
type differ struct {
	older, newer Recipe
	changes      []Change
}

func (d *differ) add(c Change) { d.changes = append(d.changes, c) }

func (d *differ) text(in Part, was, is string) {
	switch {
	case same(was, is):
	case was == "":
		d.add(Change{Kind: Added, In: in, New: is})
	case is == "":
		d.add(Change{Kind: Removed, In: in, Old: was})
	default:
		d.add(Change{Kind: Changed, In: in, Old: was, New: is})
	}
}

// entry is a line or step to compare.
type entry struct {
	text  string
	food  string // of a line, folded; "" for others
	words []string
}

func (d *differ) list(in Part, was, is []string) {
	d.entries(in, "", plainEntries(was), plainEntries(is))
}

func plainEntries(texts []string) []entry {
	entries := make([]entry, len(texts))
	for i, t := range texts {
		entries[i] = entry{text: t, words: align.Words(t)}
	}
	return entries
}

// entries compares two lists of one component.
func (d *differ) entries(in Part, component string, was, is []entry) {
	pairs := align.Pairs(len(was), len(is), leastAlike, func(i, j int) float64 { return alike(was[i], is[j]) })
	align.Walk(pairs, len(was), len(is),
		func(i int) { d.add(Change{Kind: Removed, In: in, Component: component, Old: was[i].text}) },
		func(j int) { d.add(Change{Kind: Added, In: in, Component: component, New: is[j].text}) },
		func(i, j int) {
			if !same(was[i].text, is[j].text) {
				d.add(Change{Kind: Changed, In: in, Component: component, Old: was[i].text, New: is[j].text})
			}
		})
}

// leastAlike is how alike two texts must be to be versions of one another.
const leastAlike = 0.45

func alike(a, b entry) float64 {
	score := align.Alike(a.words, b.words)
	if a.food != "" && a.food == b.food {
		return 0.6 + 0.4*score
	}
	return score
}

// components matches components by name, then by what they hold.
func (d *differ) components() {
	was, is := d.older.Components, d.newer.Components
	pairs := align.Pairs(len(was), len(is), leastAlike, func(i, j int) float64 { return alikeComponents(was[i], is[j]) })
	align.Walk(pairs, len(was), len(is),
		func(i int) { d.component(was[i], Component{}, Removed) },
		func(j int) { d.component(Component{}, is[j], Added) },
		func(i, j int) { d.component(was[i], is[j], Changed) })
}

func (d *differ) component(was, is Component, kind ChangeKind) {
	name := is.Name
	switch {
	case kind == Removed:
		name = was.Name
		if was.Name != "" {
			d.add(Change{Kind: Removed, In: InComponent, Component: name, Old: was.Name})
		}
	case kind == Added && is.Name != "":
		d.add(Change{Kind: Added, In: InComponent, Component: name, New: is.Name})
	case !same(was.Name, is.Name):
		d.add(Change{Kind: Changed, In: InComponent, Component: name, Old: was.Name, New: is.Name})
	}
	d.entries(InLine, name, lineEntries(was), lineEntries(is))
	d.entries(InStep, name, stepEntries(was), stepEntries(is))
}

func alikeComponents(a, b Component) float64 {
	if a.Name != "" && strings.EqualFold(a.Name, b.Name) {
		return 1
	}
	var x, y []string
	for _, l := range lineEntries(a) {
		x = append(x, l.food)
	}
	for _, l := range lineEntries(b) {
		y = append(y, l.food)
	}
	for _, s := range stepEntries(a) {
		x = append(x, s.text)
	}
	for _, s := range stepEntries(b) {
		y = append(y, s.text)
	}
	if a.Name == b.Name {
		return max(0.5, align.Alike(x, y)) // both without a name
	}
	return 0.9 * align.Alike(x, y)
}

func lineEntries(c Component) []entry {
	entries := make([]entry, len(c.Lines))
	for i, l := range c.Lines {
		entries[i] = entry{text: l.Text, words: align.Words(l.Text), food: foodKey(l)}
	}
	return entries
}

// foodKey is what makes two lines one food's: the larder's id, else the name.
func foodKey(l Line) string {
	if l.FoodID != "" {
		return l.FoodID
	}
	if !l.Read {
		return ""
	}
	return singular(strings.ToLower(l.Food))
}

func stepEntries(c Component) []entry {
	entries := make([]entry, len(c.Steps))
	for i, s := range c.Steps {
		entries[i] = entry{text: s.Text, words: align.Words(s.Text)}
	}
	return entries
}

func unreadTexts(r Recipe) []string {
	var texts []string
	for _, u := range r.Unread {
		texts = append(texts, u.Text)
	}
	return texts
}

// same compares texts without regard to how they are spaced.
func same(a, b string) bool {
	return a == b || strings.Join(strings.Fields(a), " ") == strings.Join(strings.Fields(b), " ")
}

// settle makes one move of a removal and an addition of the same words.
func (d *differ) settle() []Change {
	gone := make([]bool, len(d.changes))
	for i := range d.changes {
		added := &d.changes[i]
		if added.Kind != Added || added.In != InLine && added.In != InStep {
			continue
		}
		for k, removed := range d.changes {
			if gone[k] || removed.Kind != Removed || removed.In != added.In || !same(removed.Old, added.New) {
				continue
			}
			added.Kind, added.Old = Moved, removed.Old
			if removed.Component != added.Component {
				added.From = removed.Component
			}
			gone[k] = true
			break
		}
	}
	var kept []Change
	for i, c := range d.changes {
		if !gone[i] {
			kept = append(kept, c)
		}
	}
	return kept
}
