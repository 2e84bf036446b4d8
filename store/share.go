package store

import (
	"context"
	"time"
)

// ShareLink is a read-only address for viewers. Its token is not kept, so the
// address can be shown only when it is made.
type ShareLink struct {
	ID        int64
	EpisodeID int64
	CreatedAt time.Time
	RevokedAt time.Time // zero while it is live
}

const selectShareLink = `
SELECT l.share_link_id, l.episode_id, l.created_at, l.revoked_at
FROM share_link AS l
JOIN episode AS e ON e.episode_id = l.episode_id`

func scanShareLink(row scanner) (l ShareLink, err error) {
	err = row.Scan(&l.ID, &l.EpisodeID, instant{&l.CreatedAt}, instant{&l.RevokedAt})
	return l, err
}

// ShareLinks lists an episode's links, live and revoked, the newest first.
func (s *Store) ShareLinks(ctx context.Context, episodeID int64) ([]ShareLink, error) {
	links, err := list(ctx, s.reader, scanShareLink, selectShareLink+`
WHERE l.episode_id = ?1
  AND e.deleted_at IS NULL
ORDER BY l.share_link_id DESC
LIMIT ?2`, episodeID, mostChildren)
	return links, operation{"list share links of episode", episodeID}.wrap(err)
}

// ShareLink finds the live link of a token. An unknown or revoked one, and one
// of a deleted episode, is fault.NotFound.
func (s *Store) ShareLink(ctx context.Context, token string) (ShareLink, error) {
	link, err := one(ctx, s.reader, "page", scanShareLink, selectShareLink+`
WHERE l.token_hash = ?1
  AND l.revoked_at IS NULL
  AND e.deleted_at IS NULL`, tokenHash(token))
	return link, operation{verb: "find share link"}.wrap(err)
}

// AddShareLink makes a link to an episode under a token of at least 128 random
// bits, of which only the SHA-256 is kept.
func (s *Store) AddShareLink(ctx context.Context, episodeID int64, token string) (id int64, err error) {
	err = s.write(ctx, operation{"share episode", episodeID}, func(t *tx) error {
		if err := t.room(ctx, "share links", mostChildren, "SELECT count(*) FROM share_link WHERE episode_id = ?1", episodeID); err != nil {
			return err
		}
		id, err = t.add(ctx, "episode", `
INSERT INTO share_link (episode_id, token_hash, created_at)
SELECT episode_id, ?2, ?3
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`, episodeID, tokenHash(token), t.now)
		return err
	})
	return id, err
}

// RevokeShareLink ends a link for good; ending it twice is the same as once.
func (s *Store) RevokeShareLink(ctx context.Context, id int64) error {
	return s.write(ctx, operation{"revoke share link", id}, func(t *tx) error {
		rows, err := t.change(ctx, `
UPDATE share_link
SET revoked_at = COALESCE(revoked_at, ?2)
WHERE share_link_id = ?1`, id, t.now)
		if err == nil && rows == 0 {
			err = missing("share link")
		}
		return err
	})
}
