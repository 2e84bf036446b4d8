package web

import (
	"net/http"
	"slices"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/store"
	"benchproof/views"
)

// openShown is how many open things the Season page names for one episode.
const openShown = 3

func startFields() []views.Field {
	return []views.Field{
		{Name: "title", Label: "Working title", Placeholder: "Rye knots with smoked butter"},
		{Name: "recipe", Label: "Recipe", Kind: views.FieldArea, Rows: 6, Hint: "Paste it as it is written: ingredients, then the method. It can follow later."},
	}
}

func startForm(value func(string) string, err error) views.Form {
	fields := filled(startFields(), value, err)
	return views.Form{ID: "start", Title: "A new episode", Action: "/episodes", Fields: fields, Submit: "Make the episode", Problem: formError(err, fields), Guard: true}
}

func (s *Server) showSeason(w http.ResponseWriter, r *http.Request) error {
	return s.drawSeason(w, r, http.StatusOK, startForm(values{}.get, nil))
}

func (s *Server) drawSeason(w http.ResponseWriter, r *http.Request, status int, start views.Form) error {
	page, err := s.page(r, "Season", views.SectionSeason)
	if err != nil {
		return err
	}
	rows, err := s.store.Season(r.Context())
	if err != nil {
		return err
	}
	return s.draw(w, r, status, views.Season(views.SeasonPage{Page: page, Start: start, Groups: seasonGroups(rows, s.config.Now())}))
}

// seasonGroups parts the episodes into those coming (the next one first),
// those not dated, and those released (the newest first).
func seasonGroups(rows []store.SeasonRow, now time.Time) []views.SeasonGroup {
	groups := []views.SeasonGroup{{Title: "Coming"}, {Title: "Not dated"}, {Title: "Released"}}
	for _, row := range rows {
		at := &groups[0].Episodes
		switch e := row.Episode; {
		case e.Stage == episode.Released:
			at = &groups[2].Episodes
		case e.ReleaseOn.IsZero():
			at = &groups[1].Episodes
		}
		*at = append(*at, episodeRow(row, now))
	}
	slices.Reverse(groups[0].Episodes) // rows come newest first
	kept := groups[:0]
	for _, g := range groups {
		if len(g.Episodes) > 0 {
			kept = append(kept, g)
		}
	}
	return kept
}

func episodeRow(row store.SeasonRow, now time.Time) views.EpisodeRow {
	e := row.Episode
	view := views.EpisodeRow{
		Date: "not dated", Number: numberWord(e.Number), Title: e.Title,
		Path: episodePath(e.ID) + "/" + string(firstSheet(e)), Stage: string(e.Stage),
	}
	if !e.ReleaseOn.IsZero() {
		view.Date = e.ReleaseOn.Format("2 Jan")
		if e.ReleaseOn.Year() != now.Year() {
			view.Year = e.ReleaseOn.Format("2006")
		}
	}
	open := episode.StillOpen(row.Facts)
	slices.SortStableFunc(open, wrongFirst)
	for i, o := range open {
		if i == openShown {
			view.More = len(open) - i
			break
		}
		view.Open = append(view.Open, views.OpenLink{Text: readOn(o.Text), Path: episodePath(e.ID) + "/" + string(sheetOf(o.Sheet)), Wrong: o.Wrong})
	}
	return view
}

// wrongFirst puts what is false before what is only missing.
func wrongFirst(a, b episode.Open) int {
	switch {
	case a.Wrong == b.Wrong:
		return 0
	case a.Wrong:
		return -1
	}
	return 1
}

// firstSheet is where work on an episode goes on.
func firstSheet(e episode.Episode) views.Sheet {
	if e.RecipeID == 0 {
		return views.SheetBrief
	}
	return views.SheetRecipe
}

// startEpisode is the short way in: a title, a pasted recipe, and the episode
// stands with all that follows from them.
func (s *Server) startEpisode(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	title, text := form.text("title"), form.values.Get("recipe")
	draft, err := s.readDraft(r.Context(), text, 0)
	if err != nil {
		return err
	}
	if title == "" {
		title = draft.Reading.Title
	}
	if title == "" {
		form.fail("title", "Give the episode a working title, or paste a recipe that has one.")
		return s.drawSeason(w, r, http.StatusUnprocessableEntity, startForm(form.values.Get, form.err()))
	}
	start := store.Start{
		Episode: episode.Episode{Title: title, Dish: title, Stage: episode.InDevelopment, Scale: measure.Whole(1)},
	}
	if normal(text) != "" {
		start.RecipeName, start.Version = recipeName(draft.Reading, title), draft
	}
	made, err := s.store.StartEpisode(r.Context(), start)
	if err != nil {
		return err
	}
	return seeOther(w, r, episodePath(made)+"/recipe")
}
