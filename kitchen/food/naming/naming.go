package naming

import "maps"

// Thing is something that has names.
type Thing struct {
	ID     string
	Name   string   // the name it is shown by; goes before every alias
	Plural string   // its plural, if not regular
	Names  []string // its other names
	Fresh  bool     // sold fresh: "chopped" beside a name it shares means this one
}

// Names knows the names of things. It is never changed once made, so many
// readers may share one.
type Names struct {
	known   *index
	learned *index // names that people corrected; they win
	things  map[string]*Thing
}

// New makes the names of things, whose order decides which of several comes
// first in a question. Of two things with one ID the later stays.
func New(things []Thing) *Names {
	x := &Names{known: newIndex(), learned: newIndex(), things: make(map[string]*Thing, len(things))}
	own := append([]Thing(nil), things...)
	for i := range own {
		x.things[own[i].ID] = &own[i]
	}
	for i := range own {
		t := &own[i]
		if x.things[t.ID] != t {
			continue
		}
		x.known.add(t, t.Name, true)
		x.known.add(t, t.Plural, true)
		for _, name := range t.Names {
			x.known.add(t, name, false)
		}
	}
	x.known.finish()
	return x
}

// Learn gives a copy that also knows these written names, each mapped to the
// id it means. A learned name wins over every other reading. Names of unknown
// ids are left out; names learned before stay unless they are given again.
func (x *Names) Learn(names map[string]string) *Names {
	all := maps.Clone(x.learned.ids)
	for written, id := range names {
		all[stemKey(parsePhrase(written).all)] = id
	}
	next := *x
	next.learned = newIndex()
	for key, id := range all {
		if t, ok := x.things[id]; ok && key != "" {
			next.learned.add(t, key, false)
			next.learned.ids[key] = id
		}
	}
	next.learned.fileByRarest() // a slip in a learned name is not forgiven
	return &next
}
