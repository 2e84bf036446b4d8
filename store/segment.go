package store

import (
	"context"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/script"
)

const selectSegment = `
SELECT segment_id, episode_id, position, title, narration, planned_seconds, revision
FROM segment`

func scanSegment(row scanner) (g episode.Segment, err error) {
	err = row.Scan(&g.ID, &g.EpisodeID, &g.Position, &g.Title, &g.Narration, &g.PlannedSeconds, &g.Revision)
	return g, err
}

const insertSegment = `
INSERT INTO segment (episode_id, position, title, narration, words, planned_seconds)
SELECT episode_id,
       (SELECT count(*) + 1 FROM segment AS g WHERE g.episode_id = ?1 AND g.deleted_at IS NULL),
       ?2, ?3, ?4, ?5
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`

var editedSegment = edited{
	noun: "segment",
	update: `
UPDATE segment
SET title = ?3,
    narration = ?4,
    words = ?5,
    planned_seconds = ?6,
    revision = revision + 1
WHERE segment_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM segment
WHERE segment_id = ?1
  AND deleted_at IS NULL`,
}

// segmentFields are what both inserting and saving a segment write, in order.
// The words are counted here so that a season's lengths need no narration.
func segmentFields(g episode.Segment) []any {
	return []any{g.Title, g.Narration, script.Words(g.Narration), g.PlannedSeconds}
}

var segments = child{
	plural: "segments",
	count: `
SELECT count(*)
FROM segment
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
	home: `
SELECT episode_id, position, deleted_at IS NULL
FROM segment
WHERE segment_id = ?1`,
	order: &siblings{
		ids: `
SELECT segment_id
FROM segment
WHERE episode_id = ?1
  AND deleted_at IS NULL
ORDER BY position`,
		aside: `
UPDATE segment
SET position = -position
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
		place: `
UPDATE segment
SET position = ?2
WHERE segment_id = ?1`,
	},
	undoable: undoable{
		noun: "segment",
		remove: `
UPDATE segment
SET deleted_at = ?2
WHERE segment_id = ?1
  AND deleted_at IS NULL`,
		restore: `
UPDATE segment
SET deleted_at = NULL,
    position = (SELECT count(*) + 1 FROM segment AS g WHERE g.episode_id = segment.episode_id AND g.deleted_at IS NULL)
WHERE segment_id = ?1
  AND deleted_at IS NOT NULL`,
	},
}

// Segments lists an episode's running order.
func (s *Store) Segments(ctx context.Context, episodeID int64) ([]episode.Segment, error) {
	all, err := list(ctx, s.reader, scanSegment, selectSegment+`
WHERE episode_id = ?1
  AND deleted_at IS NULL
ORDER BY position
LIMIT ?2`, episodeID, mostChildren)
	return all, operation{"list segments of episode", episodeID}.wrap(err)
}

// Segment gives one segment.
func (s *Store) Segment(ctx context.Context, id int64) (episode.Segment, error) {
	g, err := one(ctx, s.reader, "segment", scanSegment, selectSegment+`
WHERE segment_id = ?1
  AND deleted_at IS NULL`, id)
	return g, operation{"read segment", id}.wrap(err)
}

// AddSegment puts a segment at its Position in the running order, last if that
// is 0.
func (s *Store) AddSegment(ctx context.Context, g episode.Segment) (id int64, err error) {
	err = s.write(ctx, operation{"add segment to episode", g.EpisodeID}, func(t *tx) error {
		id, err = t.addChild(ctx, segments, g.EpisodeID, g.Position, insertSegment, segmentFields(g)...)
		return err
	})
	return id, err
}

// SaveSegment keeps what was edited: all but the position, for which see
// MoveSegment.
func (s *Store) SaveSegment(ctx context.Context, g episode.Segment) error {
	return s.write(ctx, operation{"save segment", g.ID}, func(t *tx) error {
		return t.save(ctx, editedSegment, g.ID, g.Revision, segmentFields(g)...)
	})
}

// MoveSegment moves a segment by places down the running order, up if by is
// negative, and no further than its ends. The revision stays.
func (s *Store) MoveSegment(ctx context.Context, id int64, by int) error {
	return s.moveChild(ctx, segments, id, by)
}

// DeleteSegment hides a segment; Restore brings it back to its place.
func (s *Store) DeleteSegment(ctx context.Context, id int64) error {
	return s.deleteChild(ctx, segments, id)
}
