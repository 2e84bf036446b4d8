package store

import (
	"context"
	"strconv"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
)

// aligned is a cut without its captions, and the alignment kept of it.
type aligned struct {
	cut  episode.Cut
	kept script.Alignment
}

func scanAligned(row scanner) (a aligned, err error) {
	var starts, stretches string
	var ends int64
	if err = row.Scan(&a.cut.ID, &a.cut.EpisodeID, &a.cut.Revision, &a.kept.Print, &ends, &starts, &stretches); err != nil {
		return a, err
	}
	a.kept.End = time.Duration(ends) * time.Millisecond
	if a.kept.Starts, err = column(starts, (*fields).start); err != nil {
		return a, err
	}
	for i := range a.kept.Starts {
		a.kept.Starts[i].Segment = i
	}
	a.kept.Stretches, err = column(stretches, func(f *fields) script.Stretch {
		return script.Stretch{Words: f.whole(), Spoke: f.milliseconds()}
	})
	return a, err
}

func (f *fields) start() script.Start {
	return script.Start{Found: f.flag(), Cue: f.whole(), At: f.milliseconds(), Confidence: float64(f.whole()) / 100}
}

func (f *fields) milliseconds() time.Duration { return time.Duration(f.whole()) * time.Millisecond }

func startFields(s script.Start) []string {
	return []string{strconv.FormatBool(s.Found), strconv.Itoa(s.Cue), millisecondsText(s.At), strconv.Itoa(int(s.Confidence*100 + 0.5))}
}

func stretchFields(s script.Stretch) []string {
	return []string{strconv.Itoa(s.Words), millisecondsText(s.Spoke)}
}

func millisecondsText(t time.Duration) string { return strconv.FormatInt(t.Milliseconds(), 10) }

// Alignment gives the episode's current cut without name, length and captions,
// and what is kept of the alignment of that cut, zero if nothing is. Whether
// that still holds its print tells. fault.NotFound if the episode has no cut.
func (s *Store) Alignment(ctx context.Context, episodeID int64) (episode.Cut, script.Alignment, error) {
	a, err := one(ctx, s.reader, "cut", scanAligned, `
SELECT c.cut_id, c.episode_id, c.revision, COALESCE(a.print, ''), COALESCE(a.ends_at, 0), COALESCE(a.starts, ''), COALESCE(a.stretches, '')
FROM cut AS c
LEFT JOIN alignment AS a ON a.cut_id = c.cut_id
WHERE c.episode_id = ?1
  AND c.deleted_at IS NULL
ORDER BY c.turn DESC
LIMIT 1`, episodeID)
	return a.cut, a.kept, operation{"read alignment of episode", episodeID}.wrap(err)
}

// KeepAlignment keeps what was reckoned of a cut in place of what was before.
// Times are kept to the millisecond. A cut that is gone meanwhile is no error.
func (s *Store) KeepAlignment(ctx context.Context, cutID int64, a script.Alignment) error {
	return s.write(ctx, operation{"keep alignment of cut", cutID}, func(t *tx) error {
		_, err := t.change(ctx, `
INSERT INTO alignment (cut_id, print, ends_at, starts, stretches)
SELECT cut_id, ?2, ?3, ?4, ?5
FROM cut
WHERE cut_id = ?1
  AND deleted_at IS NULL
ON CONFLICT (cut_id) DO UPDATE
SET print = excluded.print,
    ends_at = excluded.ends_at,
    starts = excluded.starts,
    stretches = excluded.stretches`,
			cutID, a.Print, a.End.Milliseconds(), columnText(a.Starts, startFields), columnText(a.Stretches, stretchFields))
		return err
	})
}
