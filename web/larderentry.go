package web

import (
	"context"
	"fmt"
	"net/http"
	"strconv"

	"benchproof/kitchen/fault"
	"benchproof/views"
)

// entry is one kind of thing that the show notes of a food: a pack it is bought
// in, some of it in stock. T is its noun in the kitchen.
type entry[T any] struct {
	word   string // as people and undo name it: "pack"
	many   string // as the address names it: "packs"
	fields func(d *foodDesk) []views.Field
	values func(d *foodDesk, t T) values
	read   func(f *typed, d *foodDesk, t *T)

	get    func(ctx context.Context, id int64) (T, error)
	add    func(ctx context.Context, t T) (id int64, err error)
	save   func(ctx context.Context, t T) error
	remove func(ctx context.Context, id int64) error

	blank func(foodID string) T
	key   func(t T) entryKey
	stamp func(t *T, revision int)
}

// entryKey is what every entry carries.
type entryKey struct {
	id       int64
	foodID   string
	revision int
}

// path is the address of an entry of a food, or of all of its kind for id 0.
func (e entry[T]) path(foodID string, id int64) string {
	base := foodPath(foodID) + "/" + e.many
	if id == 0 {
		return base
	}
	return base + "/" + strconv.FormatInt(id, 10)
}

// changePath is where the food's page shows the form that changes an entry.
func (e entry[T]) changePath(foodID string, id int64) string {
	return fmt.Sprintf("%s?change=%s-%d#%s", foodPath(foodID), e.word, id, e.word)
}

// form is the page's form for this kind: to change the entry the address asks
// for with ?change=, else to add one.
func (e entry[T]) form(d *foodDesk, r *http.Request) (views.Form, error) {
	var id int64
	if _, err := fmt.Sscanf(r.URL.Query().Get("change"), e.word+"-%d", &id); err != nil {
		return e.addForm(d, e.values(d, e.blank(d.food.ID)).get, nil), nil
	}
	t, err := e.get(r.Context(), id)
	if err != nil {
		return views.Form{}, err
	}
	if e.key(t).foodID != d.food.ID {
		return views.Form{}, e.noSuch()
	}
	return e.changeForm(d, e.key(t), e.values(d, t).get, nil), nil
}

func (e entry[T]) noSuch() error {
	return fault.NotFoundf("There is no such %s of this food.", e.word)
}

func (e entry[T]) addForm(d *foodDesk, value func(string) string, err error) views.Form {
	fields := filled(e.fields(d), value, err)
	return views.Form{
		ID: e.word, Title: "Add " + e.word, Action: e.path(d.food.ID, 0), Submit: "Add " + e.word,
		Fields: fields, Problem: formError(err, fields), Guard: true,
	}
}

func (e entry[T]) changeForm(d *foodDesk, key entryKey, value func(string) string, err error) views.Form {
	form := e.addForm(d, value, err)
	form.Title, form.Submit = "Change this "+e.word, "Save "+e.word
	form.Action, form.Revision, form.Cancel = e.path(key.foodID, key.id), key.revision, foodPath(key.foodID)
	return form
}

// entryRoutes are the handlers of one kind of entry.
type entryRoutes struct{ add, save, remove handler }

func entryHandlers[T any](s *Server, e entry[T]) entryRoutes {
	return entryRoutes{
		add:    func(w http.ResponseWriter, r *http.Request) error { return addEntry(s, e, w, r) },
		save:   func(w http.ResponseWriter, r *http.Request) error { return saveEntry(s, e, w, r) },
		remove: func(w http.ResponseWriter, r *http.Request) error { return removeEntry(s, e, w, r) },
	}
}

func addEntry[T any](s *Server, e entry[T], w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.foodAndForm(w, r)
	if err != nil {
		return err
	}
	t := e.blank(d.food.ID)
	e.read(form, d, &t)
	if err = form.err(); err == nil {
		_, err = e.add(r.Context(), t)
	}
	return s.settle(w, r, err, outcome{
		to: foodPath(d.food.ID) + "#" + e.word,
		redraw: func(err error) error {
			return s.redrawFood(w, r, d, e.addForm(d, form.values.Get, err))
		},
	})
}

func saveEntry[T any](s *Server, e entry[T], w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.foodAndForm(w, r)
	if err != nil {
		return err
	}
	saved, err := e.of(d, r)
	if err != nil {
		return err
	}
	t, key := saved, e.key(saved)
	e.read(form, d, &t)
	e.stamp(&t, form.revision())
	if err = form.err(); err == nil {
		err = e.save(r.Context(), t)
	}
	return s.settle(w, r, err, outcome{
		to: foodPath(d.food.ID) + "#" + e.word,
		redraw: func(err error) error {
			typedKey := key
			typedKey.revision = form.revision()
			return s.redrawFood(w, r, d, e.changeForm(d, typedKey, form.values.Get, err))
		},
		late: conflict{
			what: "this " + e.word, action: e.path(d.food.ID, key.id), back: foodPath(d.food.ID), revision: key.revision,
			fields: e.fields(d), mine: form.values.Get, saved: e.values(d, saved).get,
		},
	})
}

func removeEntry[T any](s *Server, e entry[T], w http.ResponseWriter, r *http.Request) error {
	d, err := s.openFood(r)
	if err != nil {
		return err
	}
	t, err := e.of(d, r)
	if err != nil {
		return err
	}
	id := e.key(t).id
	if err := e.remove(r.Context(), id); err != nil {
		return err
	}
	s.flash(r, "The "+e.word+" is deleted.", undoPath(e.word, id))
	return seeOther(w, r, foodPath(d.food.ID))
}

// of loads the entry of the address, which must be of the food there.
func (e entry[T]) of(d *foodDesk, r *http.Request) (T, error) {
	var none T
	id, err := pathID(r, "entry")
	if err != nil {
		return none, err
	}
	t, err := e.get(r.Context(), id)
	if err == nil && e.key(t).foodID != d.food.ID {
		return none, e.noSuch()
	}
	return t, err
}
