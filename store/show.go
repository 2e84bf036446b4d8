package store

import (
	"context"

	"benchproof/kitchen/episode"
)

const selectShow = `
SELECT name, host, system, oven, time_zone, currency, words_per_minute, description_limit, disclosure, links, mixer_grams, tray_pieces, oven_trays, revision
FROM show
WHERE show_id = 1`

func scanShow(row scanner) (s episode.Show, err error) {
	err = row.Scan(&s.Name, &s.Host, &s.System, &s.Oven, &s.TimeZone, &s.Currency, &s.WordsPerMinute, &s.DescriptionLimit, &s.Disclosure, &s.Links,
		&s.MixerGrams, &s.TrayPieces, &s.OvenTrays, &s.Revision)
	return s, err
}

var editedShow = edited{
	noun: "show",
	update: `
UPDATE show
SET name = ?3,
    host = ?4,
    system = ?5,
    oven = ?6,
    time_zone = ?7,
    currency = ?8,
    words_per_minute = ?9,
    description_limit = ?10,
    disclosure = ?11,
    links = ?12,
    mixer_grams = ?13,
    tray_pieces = ?14,
    oven_trays = ?15,
    revision = revision + 1
WHERE show_id = ?1
  AND revision = ?2`,
	revision: `
SELECT revision
FROM show
WHERE show_id = ?1`,
}

// Show gives the show's settings. There always is one: a new database has a
// metric show with a conventional oven.
func (s *Store) Show(ctx context.Context) (episode.Show, error) {
	show, err := one(ctx, s.reader, "show", scanShow, selectShow)
	return show, operation{verb: "read show"}.wrap(err)
}

// SaveShow keeps the settings; Pace and limit must be above 0. The errors are
// those of every save.
func (s *Store) SaveShow(ctx context.Context, show episode.Show) error {
	return s.write(ctx, operation{verb: "save show"}, func(t *tx) error {
		return t.save(ctx, editedShow, 1, show.Revision,
			show.Name, show.Host, show.System, show.Oven, show.TimeZone, show.Currency, show.WordsPerMinute, show.DescriptionLimit, show.Disclosure, show.Links,
			show.MixerGrams, show.TrayPieces, show.OvenTrays)
	})
}
