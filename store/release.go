package store

import (
	"context"

	"benchproof/kitchen/episode"
)

const selectRelease = `
SELECT r.episode_id, r.title, r.opening, r.equipment, r.credits, r.disclosure, r.video_url, r.page_url, r.revision
FROM release AS r
JOIN episode AS e ON e.episode_id = r.episode_id`

func scanRelease(row scanner) (r episode.Release, err error) {
	err = row.Scan(&r.EpisodeID, &r.Title, &r.Opening, &r.Equipment, &r.Credits, &r.Disclosure, &r.VideoURL, &r.PageURL, &r.Revision)
	return r, err
}

// insertRelease makes a new episode's empty release.
const insertRelease = `
INSERT INTO release (episode_id)
VALUES (?1)`

var editedRelease = edited{
	noun: "release",
	update: `
UPDATE release
SET title = ?3,
    opening = ?4,
    equipment = ?5,
    credits = ?6,
    disclosure = ?7,
    video_url = ?8,
    page_url = ?9,
    revision = revision + 1
WHERE episode_id = ?1
  AND revision = ?2
  AND EXISTS (SELECT 1 FROM episode AS e WHERE e.episode_id = release.episode_id AND e.deleted_at IS NULL)`,
	revision: `
SELECT r.revision
FROM release AS r
JOIN episode AS e ON e.episode_id = r.episode_id
WHERE r.episode_id = ?1
  AND e.deleted_at IS NULL`,
}

// Release gives an episode's release. Every episode has one, empty at first.
func (s *Store) Release(ctx context.Context, episodeID int64) (episode.Release, error) {
	r, err := one(ctx, s.reader, "episode", scanRelease, selectRelease+`
WHERE r.episode_id = ?1
  AND e.deleted_at IS NULL`, episodeID)
	return r, operation{"read release of episode", episodeID}.wrap(err)
}

// SaveRelease keeps what was edited.
func (s *Store) SaveRelease(ctx context.Context, r episode.Release) error {
	return s.write(ctx, operation{"save release of episode", r.EpisodeID}, func(t *tx) error {
		return t.save(ctx, editedRelease, r.EpisodeID, r.Revision, r.Title, r.Opening, r.Equipment, r.Credits, r.Disclosure, r.VideoURL, r.PageURL)
	})
}
