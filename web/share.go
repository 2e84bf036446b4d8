package web

import (
	"bytes"
	"context"
	"crypto/rand"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"net/http"
	"strconv"
	"strings"

	"github.com/go-chi/chi/v5"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/release"
	"benchproof/views"
)

// shareFresh is how long a cache in between may answer for us. A revoked link
// lives on there no longer than that.
const shareFresh = 60

// NewShareToken makes the secret part of a viewers' address: 26 letters and
// digits, 130 random bits.
func NewShareToken() string { return rand.Text() }

// SharePath is the viewers' address of a token, without scheme and host.
func SharePath(token string) string { return "/s/" + token }

func (s *Server) addShare(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	if !d.hasRecipe() {
		return fault.Invalidf("", "There is no recipe to share yet. Paste one on the Recipe sheet first.")
	}
	token := NewShareToken()
	if _, err := s.store.AddShareLink(r.Context(), d.episode.ID, token); err != nil {
		return err
	}
	address := s.config.PublicURL + SharePath(token)
	if err := s.noteShare(r.Context(), d.episode.ID, address); err != nil {
		return err
	}
	s.sessions.Put(r.Context(), sessionShare, address)
	return seeOther(w, r, d.path(views.SheetRelease)+"#shares")
}

// noteShare lets the description give the new address, unless it gives one
// that still opens.
func (s *Server) noteShare(ctx context.Context, episodeID int64, address string) error {
	saved, err := s.store.Release(ctx, episodeID)
	if err != nil {
		return err
	}
	if saved.PageURL != "" && !s.isDeadShare(ctx, saved.PageURL) {
		return nil
	}
	saved.PageURL = address
	return s.store.SaveRelease(ctx, saved)
}

// isDeadShare tells whether an address is one of our share links that was
// withdrawn.
func (s *Server) isDeadShare(ctx context.Context, address string) bool {
	token, ours := strings.CutPrefix(address, s.config.PublicURL+SharePath(""))
	if !ours {
		return false
	}
	_, err := s.store.ShareLink(ctx, token)
	return fault.KindOf(err) == fault.NotFound && err != nil
}

// dropDeadShare takes a withdrawn address out of the description.
func (s *Server) dropDeadShare(ctx context.Context, episodeID int64) error {
	saved, err := s.store.Release(ctx, episodeID)
	if err != nil || saved.PageURL == "" || !s.isDeadShare(ctx, saved.PageURL) {
		return err
	}
	saved.PageURL = ""
	return s.store.SaveRelease(ctx, saved)
}

func (s *Server) revokeShare(w http.ResponseWriter, r *http.Request) error {
	d, err := s.openDesk(r)
	if err != nil {
		return err
	}
	id, err := pathID(r, "share")
	if err != nil {
		return err
	}
	links, err := s.store.ShareLinks(r.Context(), d.episode.ID)
	if err != nil {
		return err
	}
	for _, link := range links {
		if link.ID == id {
			if err := s.store.RevokeShareLink(r.Context(), id); err != nil {
				return err
			}
			if err := s.dropDeadShare(r.Context(), d.episode.ID); err != nil {
				return err
			}
			s.flash(r, "The link is withdrawn: whoever opens it is told so.", "")
			return seeOther(w, r, d.path(views.SheetRelease)+"#shares")
		}
	}
	return fault.NotFoundf("This episode has no such link.")
}

// sharedDesk finds the episode that a viewer's address shows.
func (s *Server) sharedDesk(r *http.Request) (*desk, error) {
	link, err := s.store.ShareLink(r.Context(), chi.URLParam(r, "token"))
	if err != nil {
		return nil, err
	}
	d, err := s.deskOf(r.Context(), link.EpisodeID)
	if err == nil && !d.hasRecipe() {
		return nil, fault.NotFoundf("There is no recipe here any more.")
	}
	return d, err
}

// showShared draws the viewers' page. It needs no login, sets no cookie, and
// may be kept by any cache for a minute.
func (s *Server) showShared(w http.ResponseWriter, r *http.Request) error {
	d, err := s.sharedDesk(r)
	if err != nil {
		return s.drawGone(w, r, err)
	}
	page, err := s.sharePage(r, d)
	if err != nil {
		return err
	}
	var body bytes.Buffer
	if err := views.Share(page).Render(r.Context(), &body); err != nil {
		return err
	}
	return sendShared(w, r, "text/html; charset=utf-8", body.Bytes())
}

// drawGone answers a viewer whose link is no more.
func (s *Server) drawGone(w http.ResponseWriter, r *http.Request, err error) error {
	if fault.KindOf(err) != fault.NotFound {
		return err
	}
	return s.draw(w, r, http.StatusNotFound, views.ShareGone(views.ShareGonePage{}))
}

// sendShared sends what viewers may see, with an ETag of its content.
func sendShared(w http.ResponseWriter, r *http.Request, contentType string, body []byte) error {
	sum := sha256.Sum256(body)
	h := w.Header()
	h.Set("Content-Type", contentType)
	h.Set("ETag", `"`+hex.EncodeToString(sum[:12])+`"`)
	h.Set("Cache-Control", "public, max-age="+strconv.Itoa(shareFresh))
	return sendBytes(w, r, body)
}

// sharePage words the viewers' page at the scale and in the measures asked.
func (s *Server) sharePage(r *http.Request, d *desk) (views.SharePage, error) {
	path := r.URL.Path
	reading, style := d.version.Reading, styleOf(r)
	want := s.wantedFor(d, r.URL.Query())
	body := newBody(recipe.Scale(reading, want.by, s.writer(d.show, reading, style)))
	body.Name, body.Credits = cardTitle(d), nil
	body.Measures = measureChoices(path, want, style)
	facts := s.publishedFacts(d)
	canonical := s.config.PublicURL + path
	out, err := s.releaseInput(r.Context(), d, canonical)
	if err != nil {
		return views.SharePage{}, err
	}
	structured, err := release.JSONLD(out.Input)
	if err != nil {
		return views.SharePage{}, err
	}
	page := views.SharePage{
		Show: d.show.Name, Recipe: body, Scales: scaleChoices(path, d.episode.Scale, want, style), Opening: out.Release.Opening,
		Allergens: facts.allergenViews(), Cautions: facts.cautionViews(), Credits: out.Credits(), VideoURL: out.Release.VideoURL,
		Canonical: canonical, Structured: string(structured), CardPath: path + "/card",
	}
	for _, c := range out.Corrections {
		row := airRow(s.corrections(), c)
		row.EditPath, row.DeleteAction = "", ""
		page.Corrections = append(page.Corrections, row)
	}
	return page, nil
}

// shareFactors are the scales a viewer is offered.
var shareFactors = []measure.Number{measure.Ratio(1, 2), measure.Whole(1), measure.Ratio(3, 2), measure.Whole(2), measure.Whole(3)}

func scaleChoices(path string, base measure.Number, want wanted, style recipe.Style) []views.Choice {
	var choices []views.Choice
	for _, factor := range shareFactors {
		by := base.Mul(factor)
		at := wanted{by: by, asked: !by.Equal(base)}
		choices = append(choices, views.Choice{
			Text: "× " + measure.FormatNumber(factor), Path: scaledPath(path, at, style), Current: by.Equal(want.by),
		})
	}
	return choices
}

func (s *Server) showSharedCard(w http.ResponseWriter, r *http.Request) error {
	d, err := s.sharedDesk(r)
	if err != nil {
		return s.drawGone(w, r, err)
	}
	base := SharePath(chi.URLParam(r, "token"))
	w.Header().Set("Cache-Control", fmt.Sprintf("public, max-age=%d", shareFresh))
	return s.drawCard(w, r, d, base, views.Link{Text: "Back to the recipe", Path: base})
}

func (s *Server) sendSharedPDF(w http.ResponseWriter, r *http.Request) error {
	d, err := s.sharedDesk(r)
	if err != nil {
		return s.drawGone(w, r, err)
	}
	w.Header().Set("Cache-Control", fmt.Sprintf("public, max-age=%d", shareFresh))
	return s.sendPDF(w, r, d)
}
