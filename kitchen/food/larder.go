package food

import (
	"sort"
	"strings"

	"benchproof/kitchen/food/naming"
)

// Larder is a set of foods and the index of their names. It is never changed
// once made, so many readers may share one.
type Larder struct {
	foods []*Food // by name
	byID  map[string]*Food
	names *naming.Names
}

// NewLarder makes a larder of foods. It copies the slice, not what the foods
// point to: do not change those afterwards. Of two foods with one ID the later
// stays. Making one of 2,000 foods takes some 40 ms: make it once.
func NewLarder(foods []Food) *Larder {
	l := &Larder{byID: make(map[string]*Food, len(foods))}
	own := append([]Food(nil), foods...)
	things := make([]naming.Thing, len(own))
	for i := range own {
		f := &own[i]
		l.byID[f.ID] = f
		fresh := f.Aisle == "Fresh herbs" || f.Aisle == "Fruit and vegetables"
		things[i] = naming.Thing{ID: f.ID, Name: f.Name, Plural: f.Plural, Names: f.Names, Fresh: fresh}
	}
	for _, f := range l.byID {
		l.foods = append(l.foods, f)
	}
	sort.Slice(l.foods, func(i, j int) bool {
		a, b := strings.ToLower(l.foods[i].Name), strings.ToLower(l.foods[j].Name)
		return a < b || a == b && l.foods[i].ID < l.foods[j].ID
	})
	l.names = naming.New(things)
	return l
}

// Food gives the food with this id.
func (l *Larder) Food(id string) (*Food, bool) {
	f, ok := l.byID[id]
	return f, ok
}

// Foods gives every food, sorted by name. The slice is the caller's own.
func (l *Larder) Foods() []*Food { return append([]*Food(nil), l.foods...) }

// Learn gives a copy of the larder that also knows these written names, each
// mapped to the id of the food it means. A learned name wins over every other
// reading. Names of ids the larder has not are left out; names learned before
// stay unless they are given again.
func (l *Larder) Learn(names map[string]string) *Larder {
	next := *l
	next.names = l.names.Learn(names)
	return &next
}
