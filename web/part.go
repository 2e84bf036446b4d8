package web

import (
	"context"
	"fmt"
	"net/http"
	"strconv"

	"benchproof/kitchen/fault"
	"benchproof/views"
)

// part is one kind of thing that stands in a list on an episode's sheet and is
// added and changed by a form on that sheet: a segment, a shot, a batch. T is
// its noun in the kitchen.
type part[T any] struct {
	word   string      // as people and undo name it: "segment"
	many   string      // as the address names it: "segments"
	sheet  views.Sheet // where the list stands
	fields func(d *desk) []views.Field
	values func(d *desk, t T) values
	read   func(f *typed, t *T)

	get    func(ctx context.Context, id int64) (T, error)
	add    func(ctx context.Context, t T) (id int64, err error)
	save   func(ctx context.Context, t T) error
	remove func(ctx context.Context, id int64) error
	move   func(ctx context.Context, id int64, by int) error // nil where order does not count

	blank func(episodeID int64) T
	key   func(t T) partKey
	stamp func(t *T, revision int)
}

// partKey is what every part carries.
type partKey struct {
	id, episodeID int64
	revision      int
}

// path is the address of the part id of an episode, or of all its parts of
// this kind for id 0.
func (p part[T]) path(episodeID, id int64) string {
	base := fmt.Sprintf("/episodes/%d/%s", episodeID, p.many)
	if id == 0 {
		return base
	}
	return base + "/" + strconv.FormatInt(id, 10)
}

// changePath is where the sheet shows the form that changes part id.
func (p part[T]) changePath(episodeID, id int64) string {
	return fmt.Sprintf("/episodes/%d/%s?change=%s-%d#%s", episodeID, p.sheet, p.word, id, p.word)
}

// form is the sheet's form for this kind: to change the part the address asks
// for with ?change=, else to add one.
func (p part[T]) form(d *desk, r *http.Request) (views.Form, error) {
	var id int64
	if _, err := fmt.Sscanf(r.URL.Query().Get("change"), p.word+"-%d", &id); err != nil {
		return p.addForm(d, p.values(d, p.blank(d.episode.ID)).get, nil), nil
	}
	t, err := p.get(r.Context(), id)
	if err != nil {
		return views.Form{}, err
	}
	if p.key(t).episodeID != d.episode.ID {
		return views.Form{}, noSuchPart(p.word)
	}
	return p.changeForm(d, p.key(t), p.values(d, t).get, nil), nil
}

func (p part[T]) addForm(d *desk, value func(string) string, err error) views.Form {
	form := p.bareForm(d, value, err)
	form.Title, form.Submit = "Add a "+p.word, "Add "+p.word
	form.Action = p.path(d.episode.ID, 0)
	return form
}

func (p part[T]) changeForm(d *desk, key partKey, value func(string) string, err error) views.Form {
	form := p.bareForm(d, value, err)
	form.Title, form.Submit = "Change this "+p.word, "Save "+p.word
	form.Action, form.Revision = p.path(key.episodeID, key.id), key.revision
	form.Cancel = d.path(p.sheet)
	return form
}

func (p part[T]) bareForm(d *desk, value func(string) string, err error) views.Form {
	fields := filled(p.fields(d), value, err)
	return views.Form{ID: p.word, Fields: fields, Problem: formError(err, fields), Guard: true}
}

// partRoutes are the handlers of one kind of part.
type partRoutes struct{ add, save, remove, move handler }

// handlers makes the routes of p. A refused form is redrawn on its sheet, a
// stale one on the conflict page.
func handlers[T any](s *Server, p part[T]) partRoutes {
	return partRoutes{
		add:    func(w http.ResponseWriter, r *http.Request) error { return addPart(s, p, w, r) },
		save:   func(w http.ResponseWriter, r *http.Request) error { return savePart(s, p, w, r) },
		remove: func(w http.ResponseWriter, r *http.Request) error { return removePart(s, p, w, r) },
		move:   func(w http.ResponseWriter, r *http.Request) error { return movePart(p, w, r) },
	}
}

func addPart[T any](s *Server, p part[T], w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	t := p.blank(d.episode.ID)
	p.read(form, &t)
	if err = form.err(); err == nil {
		_, err = p.add(r.Context(), t)
	}
	if fault.KindOf(err) == fault.Invalid && err != nil {
		return s.redrawSheet(w, r, d, p.sheet, p.addForm(d, form.values.Get, err))
	}
	if err != nil {
		return err
	}
	return seeOther(w, r, d.path(p.sheet)+"#"+p.word)
}

func savePart[T any](s *Server, p part[T], w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.deskAndForm(w, r)
	if err != nil {
		return err
	}
	t, err := getPart(p, r)
	if err != nil {
		return err
	}
	saved := t
	p.read(form, &t)
	p.stamp(&t, form.revision())
	if err = form.err(); err == nil {
		err = p.save(r.Context(), t)
	}
	key := p.key(saved)
	return s.settle(w, r, err, outcome{
		to: d.path(p.sheet) + "#" + p.word,
		redraw: func(err error) error {
			typedKey := key
			typedKey.revision = form.revision()
			return s.redrawSheet(w, r, d, p.sheet, p.changeForm(d, typedKey, form.values.Get, err))
		},
		late: conflict{
			what: "this " + p.word, action: p.path(d.episode.ID, key.id), back: d.path(p.sheet), revision: key.revision,
			fields: p.fields(d), mine: form.values.Get, saved: p.values(d, saved).get,
		},
	})
}

func removePart[T any](s *Server, p part[T], w http.ResponseWriter, r *http.Request) error {
	t, err := getPart(p, r)
	if err != nil {
		return err
	}
	key := p.key(t)
	if err := p.remove(r.Context(), key.id); err != nil {
		return err
	}
	s.flash(r, "The "+p.word+" is deleted.", undoPath(p.word, key.id))
	return seeOther(w, r, fmt.Sprintf("/episodes/%d/%s", key.episodeID, p.sheet))
}

// movePart moves a part one place up or down among its siblings, or by as many
// places down as the address says.
func movePart[T any](p part[T], w http.ResponseWriter, r *http.Request) error {
	t, err := getPart(p, r)
	if err != nil {
		return err
	}
	by := 1
	if r.URL.Query().Get("way") == "up" {
		by = -1
	}
	if places, err := strconv.Atoi(r.URL.Query().Get("by")); err == nil {
		by = places
	}
	key := p.key(t)
	if err := p.move(r.Context(), key.id, by); err != nil {
		return err
	}
	return seeOther(w, r, fmt.Sprintf("/episodes/%d/%s#%s", key.episodeID, p.sheet, anchor(p.word, key.id)))
}

// getPart loads the part of the address, which must be of the episode there.
func getPart[T any](p part[T], r *http.Request) (T, error) {
	var none T
	episodeID, err := pathID(r, "episode")
	if err != nil {
		return none, err
	}
	id, err := pathID(r, "part")
	if err != nil {
		return none, err
	}
	t, err := p.get(r.Context(), id)
	if err == nil && p.key(t).episodeID != episodeID {
		return none, noSuchPart(p.word)
	}
	return t, err
}

func noSuchPart(word string) error {
	return fault.NotFoundf("There is no such %s in this episode.", word)
}

func (v values) get(name string) string { return v[name] }
