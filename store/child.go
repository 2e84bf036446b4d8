package store

import (
	"context"

	"benchproof/kitchen/fault"
)

// mostChildren bounds how many of a kind one episode holds. No episode comes
// near it, and so no list is ever cut short.
const mostChildren = 500

// child says how the rows of one kind that hang on an episode are counted,
// deleted and brought back.
type child struct {
	undoable
	plural string
	count  string    // the live rows of ?1 an episode
	home   string    // ?1 a row's episode, its position there (0 for none), whether it is live
	order  *siblings // nil if they have no positions
}

// place is where a child stands.
type place struct {
	episodeID int64
	position  int
	isLive    bool
}

func scanPlace(row scanner) (p place, err error) {
	err = row.Scan(&p.episodeID, &p.position, &p.isLive)
	return p, err
}

// addChild runs an INSERT … SELECT whose ?1 is the episode, and puts the new
// row at position among its siblings: last if that is 0 or beyond the end.
func (t *tx) addChild(ctx context.Context, c child, episodeID int64, position int, insert string, fields ...any) (int64, error) {
	if err := t.room(ctx, c.plural, mostChildren, c.count, episodeID); err != nil {
		return 0, err
	}
	id, err := t.add(ctx, "episode", insert, append([]any{episodeID}, fields...)...)
	if err != nil || c.order == nil || position < 1 {
		return id, err
	}
	return id, c.order.moveTo(ctx, t, episodeID, id, position)
}

func (s *Store) deleteChild(ctx context.Context, c child, id int64) error {
	return s.write(ctx, operation{"delete " + c.noun, id}, func(t *tx) error {
		if err := t.hide(ctx, c.undoable, id); err != nil || c.order == nil {
			return err
		}
		was, err := one(ctx, t, c.noun, scanPlace, c.home, id)
		if err != nil {
			return err
		}
		return c.order.closeGap(ctx, t, was.episodeID)
	})
}

// restoreChild brings a row back to where it stood. Its episode must be there.
func (t *tx) restoreChild(ctx context.Context, c child, id int64) error {
	was, err := one(ctx, t, c.noun, scanPlace, c.home, id)
	if err != nil {
		return err
	}
	if err := t.live(ctx, "episode", liveEpisode, was.episodeID); err != nil {
		return fault.Conflictf("The episode this %s belongs to is deleted. Restore the episode first.", c.noun)
	}
	if err := t.room(ctx, c.plural, mostChildren, c.count, was.episodeID); err != nil {
		return err
	}
	if err := t.bringBack(ctx, c.undoable, id); err != nil || c.order == nil {
		return err
	}
	return c.order.moveTo(ctx, t, was.episodeID, id, was.position)
}

// moveChild moves a row by places down its list, up if by is negative.
func (s *Store) moveChild(ctx context.Context, c child, id int64, by int) error {
	return s.write(ctx, operation{"move " + c.noun, id}, func(t *tx) error {
		at, err := one(ctx, t, c.noun, scanPlace, c.home, id)
		if err == nil && !at.isLive {
			err = missing(c.noun)
		}
		if err != nil {
			return err
		}
		return c.order.moveTo(ctx, t, at.episodeID, id, at.position+by)
	})
}

// room refuses one more of what count counts when there are as many as a list
// gives.
func (t *tx) room(ctx context.Context, plural string, most int, count string, args ...any) error {
	n, err := one(ctx, t, plural, scanned[int], count, args...)
	if err == nil && n >= most {
		err = fault.Invalidf("", "There is room for %d %s, and there are as many. Delete some first.", most, plural)
	}
	return err
}

// live is fault.NotFound, naming the noun, if the query finds no row of id.
func (t *tx) live(ctx context.Context, noun, query string, id int64) error {
	_, err := one(ctx, t, noun, scanned[int], query, id)
	return err
}
