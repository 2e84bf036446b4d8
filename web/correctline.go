package web

import (
	"context"
	"net/http"
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// correctLine keeps what a person says a line means. The whole editor is sent
// along, so that text typed and not saved yet stays.
func (s *Server) correctLine(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.readDraftForm(w, r)
	if err != nil {
		return err
	}
	id, err := pathID(r, "recipe")
	if err != nil {
		return err
	}
	at := form.text("correct") + "-"
	line := form.text(at + "line")
	if line == "" {
		return &fault.Error{Kind: fault.Malformed, Say: "The form does not say which line it corrects."}
	}
	correction, err := s.readCorrection(form, at)
	if err != nil {
		d.open, d.openForm = line, form
		return s.drawEditor(w, r, d, err)
	}
	if err := s.store.CorrectLine(r.Context(), id, line, correction); err != nil {
		return err
	}
	if correction.FoodID != "" && form.text(at+"learn") == "yes" {
		if err := s.learnLine(r.Context(), line, correction.FoodID); err != nil {
			return err
		}
	}
	return s.afterCorrection(w, r, d)
}

// readCorrection reads the fields of one line's form, whose names begin with
// at.
func (s *Server) readCorrection(form *typed, at string) (recipe.Correction, error) {
	amount := form.text(at + "amount")
	c := recipe.Correction{
		Food:        form.needed(at+"food", "Name the food."),
		Preparation: form.text(at + "preparation"),
		Note:        form.text(at + "note"),
		ToTaste:     strings.EqualFold(amount, "to taste"),
	}
	if amount != "" && !c.ToTaste {
		read, rest, ok := measure.ReadAmount(amount)
		if !ok || strings.TrimSpace(rest) != "" {
			form.fail(at+"amount", "“%s” is not an amount such as 200 g, 1½ cups or 3. Leave it empty if there is none.", amount)
		}
		c.Amount, c.HasAmount = read.Amount, true
	}
	if match := s.config.Larder.Match(c.Food); match.Food != nil {
		c.FoodID = match.Food.ID
	}
	return c, form.err()
}

// learnLine remembers that the food's name as the line writes it means this
// food, in every recipe from now on.
func (s *Server) learnLine(ctx context.Context, line, foodID string) error {
	written := recipe.Reader{Larder: s.config.Larder}.ReadLine(line).Food
	if written == "" {
		return nil
	}
	return s.store.LearnFood(ctx, written, foodID)
}

// forgetCorrection goes back to what was read by itself.
func (s *Server) forgetCorrection(w http.ResponseWriter, r *http.Request) error {
	d, form, err := s.readDraftForm(w, r)
	if err != nil {
		return err
	}
	id, err := pathID(r, "recipe")
	if err != nil {
		return err
	}
	if err := s.store.ForgetLine(r.Context(), id, form.text(form.text("correct")+"-line")); err != nil {
		return err
	}
	return s.afterCorrection(w, r, d)
}

// afterCorrection lays the version's kept reading anew where it may change,
// and shows the editor with the text as typed.
func (s *Server) afterCorrection(w http.ResponseWriter, r *http.Request, d draft) error {
	if d.version.ID != 0 && !d.version.IsTried {
		again, err := s.readDraft(r.Context(), d.version.Text, d.version.RecipeID)
		if err != nil {
			return err
		}
		kept := d.version.Version
		kept.Reading = again.Reading
		if err := s.store.SaveVersion(r.Context(), kept); err != nil {
			return err
		}
		if d.revision == kept.Revision {
			d.revision++ // the save just made is ours: it must not stand against us
		}
	}
	return s.drawEditor(w, r, d, nil)
}
