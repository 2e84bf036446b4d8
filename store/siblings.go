package store

import (
	"context"
	"slices"
)

// siblings keeps the positions of an episode's live rows dense from 1.
type siblings struct {
	ids   string // the live rows' ids in order, of ?1 the episode
	aside string // turns the live rows' positions negative, of ?1 the episode
	place string // puts ?1 a row at ?2 a position
}

// closeGap numbers the rows anew after one was deleted.
func (s siblings) closeGap(ctx context.Context, t *tx, episodeID int64) error {
	ids, err := list(ctx, t, scanned[int64], s.ids, episodeID)
	if err != nil {
		return err
	}
	return s.arrange(ctx, t, episodeID, ids)
}

// moveTo puts the live row id at position, or at the nearest end.
func (s siblings) moveTo(ctx context.Context, t *tx, episodeID, id int64, position int) error {
	ids, err := list(ctx, t, scanned[int64], s.ids, episodeID)
	if err != nil {
		return err
	}
	ids = slices.DeleteFunc(ids, func(each int64) bool { return each == id })
	at := min(max(position-1, 0), len(ids))
	return s.arrange(ctx, t, episodeID, slices.Insert(ids, at, id))
}

// arrange numbers the rows in the order given. They are set aside first, since
// no two may hold one position even for a moment.
func (s siblings) arrange(ctx context.Context, t *tx, episodeID int64, ids []int64) error {
	if _, err := t.change(ctx, s.aside, episodeID); err != nil {
		return err
	}
	for i, id := range ids {
		if _, err := t.change(ctx, s.place, id, i+1); err != nil {
			return err
		}
	}
	return nil
}
