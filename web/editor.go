package web

import (
	"fmt"
	"net/http"
	"strconv"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/views"
)

// drawEditor draws the editor: the text on one side, what is understood of it
// beside. err is what is wrong with what was sent, nil for nothing.
func (s *Server) drawEditor(w http.ResponseWriter, r *http.Request, d draft, err error) error {
	page, pageErr := s.page(r, "Edit the recipe", views.SectionRecipes)
	if pageErr != nil {
		return pageErr
	}
	show, showErr := s.store.Show(r.Context())
	if showErr != nil {
		return showErr
	}
	read, readErr := s.readDraft(r.Context(), d.text, d.version.RecipeID)
	if readErr != nil {
		return readErr
	}
	view := newEditor(d)
	view.Page = page
	view.TextError, view.NoteError = fieldError(err, "text"), fieldError(err, "note")
	view.Problem = formError(err, []views.Field{{Name: "text"}, {Name: "note"}})
	if normal(d.text) != "" {
		view.Understood = s.understanding(d, read.Reading, show)
	}
	return s.draw(w, r, formStatus(err), views.RecipeEdit(view))
}

// newEditor words the editor's head and buttons.
func newEditor(d draft) views.RecipeEditPage {
	view := views.RecipeEditPage{
		Heading: "A new recipe", Path: "/recipes", Text: d.text, Note: d.note, Revision: d.revision,
		ReadAction: "/recipes/read", SaveAction: "/recipes",
	}
	if d.episodeID != 0 {
		view.Episode = strconv.FormatInt(d.episodeID, 10)
		view.Path = episodePath(d.episodeID) + "/recipe"
	}
	if d.version.ID == 0 {
		return view
	}
	v := d.version
	view.Version = strconv.Itoa(v.Number)
	view.Heading = fmt.Sprintf("%s, version %d", v.Name, v.Number)
	view.ReadAction, view.SaveAction, view.VersionAction = recipePath(v.RecipeID)+"/read", versionPath(v.Version), recipePath(v.RecipeID)+"/versions"
	if d.episodeID == 0 {
		view.Path = versionPath(v.Version)
	}
	if v.IsTried {
		view.SaveAction = ""
		view.Kept = fmt.Sprintf("Version %d was tried and stays as it is; what you change becomes version %d.", v.Number, v.Number+1)
	}
	return view
}

// understanding words what was read of a text.
func (s *Server) understanding(d draft, read recipe.Recipe, show episode.Show) views.Understanding {
	_, because := read.LikelySystem()
	read.System = read.MeasuredIn()
	w := s.writer(show, read, recipe.AsWritten)
	u := views.Understanding{Title: read.Title, Yield: read.Yield.Text, Notes: read.Notes, Credits: read.Credits, Unread: unreadRows(read.Unread)}
	if system := read.System.Or(w.House); system != "" {
		u.System = "cups and spoons read as " + system.Name()
	}
	if len(because) > 0 {
		u.System += ", because of " + strings.Join(because, ", ") + "; write “metric cups” under the title if they are"
	}
	all, good := 0, 0
	for ci, c := range read.Components {
		block := views.ReadComponent{Name: c.Name}
		for li, line := range c.Lines {
			all++
			if line.Read {
				good++
			}
			block.Lines = append(block.Lines, s.readLine(d, line, w.Line(line), fmt.Sprintf("line-%d-%d", ci, li)))
		}
		for _, step := range c.Steps {
			block.Steps = append(block.Steps, views.ReadStep{StepRow: stepRow(step), HandsOn: step.HandsOn})
		}
		u.Components = append(u.Components, block)
	}
	u.Summary = fmt.Sprintf("%d of %s read", good, count(all, "line", "lines"))
	if good == all && all > 0 && len(read.Unread) == 0 {
		u.Marks = []views.Mark{{Kind: views.MarkProved, Text: "all read"}}
	}
	return u
}

// readLine words one line as read, with the form that puts it right.
func (s *Server) readLine(d draft, line recipe.Line, written recipe.Written, id string) views.ReadLine {
	row := views.ReadLine{LineRow: lineRow(line, written), Number: fmt.Sprintf("line %d", line.Number), Text: line.Text, Corrected: line.Corrected}
	if f, ok := s.config.Larder.Food(line.FoodID); ok {
		row.Small = joined(" · ", row.Small, "larder: "+f.Name)
	} else if line.Read {
		row.Question = joined(" ", row.Question, s.askFood(line))
	}
	if d.version.ID != 0 {
		row.Correction = &views.Correction{
			ID: id, Action: recipePath(d.version.RecipeID) + "/corrections", Line: line.Text,
			Amount: amountText(line), Food: line.Food, Preparation: line.Preparation, Note: line.Note, Open: d.open == line.Text,
		}
		if line.Corrected {
			row.Correction.Forget = recipePath(d.version.RecipeID) + "/corrections/forget"
		}
	}
	return row
}

// askFood asks which food a name means that the larder does not know.
func (s *Server) askFood(line recipe.Line) string {
	if len(line.Choices) == 0 {
		return "The larder does not know this food."
	}
	names := ""
	for i, id := range line.Choices {
		f, ok := s.config.Larder.Food(id)
		if !ok {
			continue
		}
		if i > 0 {
			names += " or "
		}
		names += f.Name
	}
	return "Which is it: " + names + "?"
}

// amountText is a line's amount as a person would type it.
func amountText(line recipe.Line) string {
	switch {
	case line.ToTaste && !line.HasAmount:
		return "to taste"
	case !line.HasAmount:
		return ""
	}
	return line.Amount.String()
}
