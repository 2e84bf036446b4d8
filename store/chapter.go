package store

import "context"

// chapterStart is where a person said that a segment begins.
type chapterStart struct {
	segmentID int64
	seconds   int
}

func scanChapterStart(row scanner) (c chapterStart, err error) {
	err = row.Scan(&c.segmentID, &c.seconds)
	return c, err
}

// ChapterStarts gives where a person said that segments of an episode begin in
// its cut, in seconds, by segment.
func (s *Store) ChapterStarts(ctx context.Context, episodeID int64) (map[int64]int, error) {
	all, err := list(ctx, s.reader, scanChapterStart, `
SELECT c.segment_id, c.at_seconds
FROM chapter_start AS c
JOIN segment AS s ON s.segment_id = c.segment_id
WHERE s.episode_id = ?1
  AND s.deleted_at IS NULL
ORDER BY c.segment_id
LIMIT ?2`, episodeID, mostChildren)
	starts := make(map[int64]int, len(all))
	for _, c := range all {
		starts[c.segmentID] = c.seconds
	}
	return starts, operation{"list chapter starts of episode", episodeID}.wrap(err)
}

// SetChapterStart keeps where a segment begins in the cut, in place of an
// earlier word on it.
func (s *Store) SetChapterStart(ctx context.Context, segmentID int64, seconds int) error {
	return s.write(ctx, operation{"set chapter start of segment", segmentID}, func(t *tx) error {
		rows, err := t.change(ctx, `
INSERT INTO chapter_start (segment_id, at_seconds)
SELECT segment_id, ?2
FROM segment
WHERE segment_id = ?1
  AND deleted_at IS NULL
ON CONFLICT (segment_id) DO UPDATE
SET at_seconds = excluded.at_seconds`, segmentID, seconds)
		if err == nil && rows == 0 {
			err = missing("segment")
		}
		return err
	})
}

// ClearChapterStart lets a segment's start be found by what is said again; none
// set is no error.
func (s *Store) ClearChapterStart(ctx context.Context, segmentID int64) error {
	return s.write(ctx, operation{"clear chapter start of segment", segmentID}, func(t *tx) error {
		_, err := t.change(ctx, `
DELETE FROM chapter_start
WHERE segment_id = ?1`, segmentID)
		return err
	})
}
