package store

import (
	"context"
	"strconv"

	"benchproof/kitchen/episode"
)

func scanDayPlan(row scanner) (p episode.DayPlan, err error) {
	var starts, overdue, moved string
	if err = row.Scan(&p.EpisodeID, &p.Print, &starts, &p.Bound, &p.Optimal, &overdue, &moved); err != nil {
		return p, err
	}
	p.Overdue = items(overdue)
	if p.Starts, err = column(starts, (*fields).whole); err != nil {
		return p, err
	}
	p.Moved, err = column(moved, func(f *fields) episode.Move {
		return episode.Move{Text: f.text(), Was: f.whole(), Is: f.whole()}
	})
	return p, err
}

// DayPlan gives the plan kept of an episode's shoot day; fault.NotFound if
// there is none.
func (s *Store) DayPlan(ctx context.Context, episodeID int64) (episode.DayPlan, error) {
	p, err := one(ctx, s.reader, "plan", scanDayPlan, `
SELECT episode_id, print, starts, bound, optimal, overdue, moved
FROM day_plan
WHERE episode_id = ?1`, episodeID)
	return p, operation{"read plan of episode", episodeID}.wrap(err)
}

// KeepDayPlan keeps a plan in place of the one before.
func (s *Store) KeepDayPlan(ctx context.Context, p episode.DayPlan) error {
	return s.write(ctx, operation{"keep plan of episode", p.EpisodeID}, func(t *tx) error {
		if err := t.live(ctx, "episode", liveEpisode, p.EpisodeID); err != nil {
			return err
		}
		starts := columnText(p.Starts, func(n int) []string { return []string{strconv.Itoa(n)} })
		moved := columnText(p.Moved, func(m episode.Move) []string {
			return []string{m.Text, strconv.Itoa(m.Was), strconv.Itoa(m.Is)}
		})
		_, err := t.change(ctx, `
INSERT INTO day_plan (episode_id, print, starts, bound, optimal, overdue, moved)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)
ON CONFLICT (episode_id) DO UPDATE
SET print = excluded.print,
    starts = excluded.starts,
    bound = excluded.bound,
    optimal = excluded.optimal,
    overdue = excluded.overdue,
    moved = excluded.moved`, p.EpisodeID, p.Print, starts, p.Bound, p.Optimal, itemsText(p.Overdue), moved)
		return err
	})
}
