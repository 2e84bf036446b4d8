package store

import (
	"context"
	"database/sql"
	"strconv"

	"benchproof/kitchen/episode"
)

// mostDaySteps bounds what is kept of one day: no day has as many steps.
const mostDaySteps = 2000

const selectDayStep = `
SELECT episode_id, batch, component, step, pin_at, barred, by_helper, wait_least, wait_most, began_at, ended_at
FROM day_step`

func scanDayStep(row scanner) (d episode.DayStep, err error) {
	var barred string
	var most sql.NullInt64
	err = row.Scan(&d.EpisodeID, &d.Batch, &d.Component, &d.Step, &d.Pin, &barred, &d.ByHelper, &d.Waits.Least, &most, &d.Began, &d.Ended)
	d.Waits.Most, d.Waits.HasMost = int(most.Int64), most.Valid
	if err == nil {
		d.Barred, err = spans(barred)
	}
	return d, err
}

func spansText(spans []episode.Span) string {
	return columnText(spans, func(s episode.Span) []string {
		return []string{strconv.Itoa(s.From), strconv.Itoa(s.To)}
	})
}

func spans(text string) ([]episode.Span, error) {
	return column(text, func(f *fields) episode.Span { return episode.Span{From: f.whole(), To: f.whole()} })
}

// DaySteps lists the steps of an episode's shoot day of which something is
// fixed or known.
func (s *Store) DaySteps(ctx context.Context, episodeID int64) ([]episode.DayStep, error) {
	all, err := list(ctx, s.reader, scanDayStep, selectDayStep+`
WHERE episode_id = ?1
ORDER BY batch, component, step
LIMIT ?2`, episodeID, mostDaySteps)
	return all, operation{"list day steps of episode", episodeID}.wrap(err)
}

// SaveDayStep keeps what is fixed and known about a step in place of what was;
// nothing is kept of a plain one.
func (s *Store) SaveDayStep(ctx context.Context, d episode.DayStep) error {
	return s.write(ctx, operation{"save day step of episode", d.EpisodeID}, func(t *tx) error {
		if err := t.live(ctx, "episode", liveEpisode, d.EpisodeID); err != nil {
			return err
		}
		return t.putDayStep(ctx, d)
	})
}

func (t *tx) putDayStep(ctx context.Context, d episode.DayStep) error {
	if _, err := t.change(ctx, `
DELETE FROM day_step
WHERE episode_id = ?1
  AND batch = ?2
  AND component = ?3
  AND step = ?4`, d.EpisodeID, d.Batch, d.Component, d.Step); err != nil || d.IsPlain() {
		return err
	}
	if err := t.room(ctx, "steps with something fixed", mostDaySteps, "SELECT count(*) FROM day_step WHERE episode_id = ?1", d.EpisodeID); err != nil {
		return err
	}
	_, err := t.change(ctx, `
INSERT INTO day_step (episode_id, batch, component, step, pin_at, barred, by_helper, wait_least, wait_most, began_at, ended_at)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)`,
		d.EpisodeID, d.Batch, d.Component, d.Step, d.Pin, spansText(d.Barred), d.ByHelper,
		d.Waits.Least, sql.NullInt64{Int64: int64(d.Waits.Most), Valid: d.Waits.HasMost}, d.Began, d.Ended)
	return err
}

// SaveProgress notes how far a shoot day has come: the minute now, from
// midnight, and all steps that have begun. A step that is not among them has
// not. Now 0 takes the day back to before its beginning.
func (s *Store) SaveProgress(ctx context.Context, day episode.ShootDay, begun []episode.DayStep) error {
	return s.write(ctx, operation{"save progress of episode", day.EpisodeID}, func(t *tx) error {
		if err := t.saveShootDay(ctx, day); err != nil {
			return err
		}
		was, err := list(ctx, t, scanDayStep, selectDayStep+`
WHERE episode_id = ?1
ORDER BY batch, component, step
LIMIT ?2`, day.EpisodeID, mostDaySteps)
		if err != nil {
			return err
		}
		steps := map[episode.StepName]episode.DayStep{}
		for _, d := range was {
			d.Began, d.Ended = 0, 0
			steps[d.StepName] = d
		}
		for _, b := range begun {
			d := steps[b.StepName]
			d.EpisodeID, d.StepName, d.Began, d.Ended = day.EpisodeID, b.StepName, b.Began, b.Ended
			steps[b.StepName] = d
		}
		for _, d := range steps {
			if err := t.putDayStep(ctx, d); err != nil {
				return err
			}
		}
		return nil
	})
}
