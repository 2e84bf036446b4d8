package web

import (
	"net/http"
	"strconv"
	"time"

	"github.com/bojanz/currency"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/views"
)

var ovens = []views.Option{
	{Value: "conventional", Label: "conventional"},
	{Value: "fan", Label: "fan"},
}

func showFields() []views.Field {
	return []views.Field{
		{Name: "name", Label: "Show", Required: true},
		{Name: "host", Label: "Host", Hint: "Who cooks and speaks."},
		{Name: "system", Label: "House measures", Kind: views.FieldSelect, Options: systemOptions(), Hint: "What a cup and a spoon hold where a recipe does not say."},
		{Name: "oven", Label: "Your oven", Kind: views.FieldSelect, Options: ovens},
		{Name: "mixer", Label: "Mixer takes", Kind: views.FieldWhole, Unit: "g of dough", Hint: "Scaled recipes are split into lots that fit. Leave empty what does not matter."},
		{Name: "tray", Label: "A tray holds", Kind: views.FieldWhole, Unit: "pieces"},
		{Name: "trays", Label: "Oven takes", Kind: views.FieldWhole, Unit: "trays at once"},
		{Name: "zone", Label: "Time zone", Required: true, Placeholder: "Pacific/Auckland"},
		{Name: "currency", Label: "Currency", Required: true, Hint: "Three letters: NZD."},
		{Name: "pace", Label: "Host's pace", Kind: views.FieldWhole, Unit: "words a minute", Required: true},
		{Name: "limit", Label: "Description limit", Kind: views.FieldWhole, Unit: "characters", Required: true, Hint: "What your video platform allows; most say 5,000."},
		{Name: "disclosure", Label: "Standing disclosure", Kind: views.FieldArea, Hint: "Stands in every description."},
		{Name: "links", Label: "Standing links", Kind: views.FieldArea, Hint: "Words and links at the end of every description."},
	}
}

func systemOptions() []views.Option {
	var list []views.Option
	for _, system := range measure.Systems() {
		list = append(list, views.Option{Value: string(system), Label: system.Name()})
	}
	return list
}

func showValues(v episode.Show) values {
	return values{
		"name": v.Name, "host": v.Host, "system": string(v.System), "oven": v.Oven, "zone": v.TimeZone, "currency": v.Currency,
		"mixer": wholeText(v.MixerGrams), "tray": wholeText(v.TrayPieces), "trays": wholeText(v.OvenTrays),
		"pace": strconv.Itoa(v.WordsPerMinute), "limit": strconv.Itoa(v.DescriptionLimit), "disclosure": v.Disclosure, "links": v.Links,
	}
}

func readShow(f *typed, v *episode.Show) {
	v.Name, v.Host = f.needed("name", "Give the show a name."), f.text("host")
	v.System = measure.System(f.oneOf("system", asWords(measure.Systems())))
	v.Oven = f.oneOf("oven", []string{"conventional", "fan"})
	v.MixerGrams, v.TrayPieces, v.OvenTrays = f.whole("mixer"), f.whole("tray"), f.whole("trays")
	v.TimeZone, v.Currency = f.text("zone"), f.text("currency")
	if _, err := time.LoadLocation(v.TimeZone); err != nil || v.TimeZone == "" || v.TimeZone == "Local" {
		f.fail("zone", "“%s” is not a time zone we know. Write it as area and town: Europe/Lisbon, Pacific/Auckland, or UTC.", v.TimeZone)
	}
	if !currency.IsValid(v.Currency) {
		f.fail("currency", "“%s” is not a currency code. Write its three letters, such as EUR, NZD or USD.", v.Currency)
	}
	if v.WordsPerMinute = f.whole("pace"); v.WordsPerMinute < 60 || v.WordsPerMinute > 300 {
		f.fail("pace", "A host speaks between 60 and 300 words a minute; 150 is usual.")
	}
	if v.DescriptionLimit = f.whole("limit"); v.DescriptionLimit < 100 {
		f.fail("limit", "Give the number of characters a description may have; most platforms say 5000.")
	}
	v.Disclosure, v.Links = f.text("disclosure"), f.text("links")
}

func showForm(value func(string) string, revision int, err error) views.Form {
	fields := filled(showFields(), value, err)
	return views.Form{ID: "show", Action: "/show", Revision: revision, Fields: fields, Submit: "Save show", Problem: formError(err, fields), Guard: true}
}

func (s *Server) showShow(w http.ResponseWriter, r *http.Request) error {
	show, err := s.store.Show(r.Context())
	if err != nil {
		return err
	}
	return s.drawShow(w, r, http.StatusOK, showForm(showValues(show).get, show.Revision, nil))
}

func (s *Server) drawShow(w http.ResponseWriter, r *http.Request, status int, form views.Form) error {
	page, err := s.page(r, "Show", views.SectionShow)
	if err != nil {
		return err
	}
	pace, cuts, err := s.measuredPace(r.Context())
	if err != nil {
		return err
	}
	return s.draw(w, r, status, views.Show(views.ShowPage{Page: page, Form: form, Measured: paceText(pace, cuts), UseAction: "/show/pace"}))
}

func (s *Server) saveShow(w http.ResponseWriter, r *http.Request) error {
	form, err := readTyped(w, r)
	if err != nil {
		return err
	}
	saved, err := s.store.Show(r.Context())
	if err != nil {
		return err
	}
	show := saved
	readShow(form, &show)
	show.Revision = form.revision()
	if err = form.err(); err == nil {
		err = s.store.SaveShow(r.Context(), show)
	}
	return s.settle(w, r, err, outcome{
		to: "/show", say: "The show is saved.",
		redraw: func(err error) error {
			return s.drawShow(w, r, http.StatusUnprocessableEntity, showForm(form.values.Get, show.Revision, err))
		},
		late: conflict{
			what: "the show", action: "/show", back: "/show", revision: saved.Revision,
			fields: showFields(), mine: form.values.Get, saved: showValues(saved).get,
		},
	})
}
