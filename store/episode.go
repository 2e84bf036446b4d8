package store

import (
	"context"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
)

const mostEpisodes = 5000

const selectEpisode = `
SELECT e.episode_id, e.number, e.title, e.stage, e.release_on, e.dish, e.inspired_by, e.inspired_url, e.look, e.hook,
       e.target_minutes, e.notes, COALESCE(v.recipe_id, 0), COALESCE(e.version_id, 0), e.scale, e.revision
FROM episode AS e
LEFT JOIN version AS v ON v.version_id = e.version_id`

func scanEpisode(row scanner) (e episode.Episode, err error) {
	err = row.Scan(episodeColumns(&e)...)
	return e, err
}

func episodeColumns(e *episode.Episode) []any {
	return []any{&e.ID, &e.Number, &e.Title, &e.Stage, date{&e.ReleaseOn}, &e.Dish, &e.InspiredBy, &e.InspiredURL, &e.Look, &e.Hook,
		&e.TargetMinutes, &e.Notes, &e.RecipeID, &e.VersionID, exact{&e.Scale}, &e.Revision}
}

const insertEpisode = `
INSERT INTO episode (number, title, stage, release_on, dish, inspired_by, inspired_url, look, hook, target_minutes, notes, version_id, scale)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13)`

const liveEpisode = `
SELECT 1
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`

const episodeRevision = `
SELECT revision
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`

var editedBrief = edited{
	noun:     "brief",
	revision: episodeRevision,
	update: `
UPDATE episode
SET number = ?3,
    title = ?4,
    release_on = ?5,
    dish = ?6,
    inspired_by = ?7,
    inspired_url = ?8,
    look = ?9,
    hook = ?10,
    target_minutes = ?11,
    notes = ?12,
    stage = ?13,
    revision = revision + 1
WHERE episode_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
}

var editedUse = edited{
	noun:     "episode",
	revision: episodeRevision,
	update: `
UPDATE episode
SET version_id = ?3,
    scale = ?4,
    revision = revision + 1
WHERE episode_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
}

// Episodes lists the episodes, the latest release first and those without a
// date before them, as they are still to come; then by number.
func (s *Store) Episodes(ctx context.Context) ([]episode.Episode, error) {
	episodes, err := list(ctx, s.reader, scanEpisode, selectEpisode+`
WHERE e.deleted_at IS NULL
ORDER BY e.release_on DESC NULLS FIRST, e.number DESC, e.episode_id DESC
LIMIT ?1`, mostEpisodes)
	return episodes, operation{verb: "list episodes"}.wrap(err)
}

// Episode gives one episode.
func (s *Store) Episode(ctx context.Context, id int64) (episode.Episode, error) {
	e, err := one(ctx, s.reader, "episode", scanEpisode, selectEpisode+`
WHERE e.episode_id = ?1
  AND e.deleted_at IS NULL`, id)
	return e, operation{"read episode", id}.wrap(err)
}

// AddEpisode keeps a new episode with an empty release. Its VersionID says
// which recipe it is; RecipeID does not count. A Scale of 0 means 1.
func (s *Store) AddEpisode(ctx context.Context, e episode.Episode) (id int64, err error) {
	err = s.write(ctx, operation{verb: "add episode"}, func(t *tx) error {
		id, err = t.addEpisode(ctx, e)
		return err
	})
	return id, err
}

func (t *tx) addEpisode(ctx context.Context, e episode.Episode) (int64, error) {
	if err := t.room(ctx, "episodes", mostEpisodes, "SELECT count(*) FROM episode WHERE deleted_at IS NULL"); err != nil {
		return 0, err
	}
	if err := t.liveVersion(ctx, e.VersionID); err != nil {
		return 0, err
	}
	id, err := t.add(ctx, "episode", insertEpisode,
		e.Number, e.Title, e.Stage, dateText(e.ReleaseOn), e.Dish, e.InspiredBy, e.InspiredURL, e.Look, e.Hook,
		e.TargetMinutes, e.Notes, idOrNull(e.VersionID), makesText(e.Scale))
	if err != nil {
		return 0, err
	}
	_, err = t.change(ctx, insertRelease, id)
	return id, err
}

// Start is all that StartEpisode keeps in one go.
type Start struct {
	Episode    episode.Episode
	RecipeName string  // "" with a Version without text: no recipe yet
	Version    Version // the recipe's first
	PitchID    int64   // the pitch it comes from; 0 for none
}

// StartEpisode is the short way in: it makes the recipe with its first
// version, the episode that uses it, and one batch for the shoot, or nothing.
func (s *Store) StartEpisode(ctx context.Context, start Start) (id int64, err error) {
	err = s.write(ctx, operation{verb: "start episode"}, func(t *tx) error {
		id, err = t.startEpisode(ctx, start)
		return err
	})
	return id, err
}

func (t *tx) startEpisode(ctx context.Context, start Start) (id int64, err error) {
	e := start.Episode
	if start.RecipeName != "" || start.Version.Text != "" {
		if _, e.VersionID, err = t.addRecipe(ctx, start.RecipeName, start.Version); err != nil {
			return 0, err
		}
	}
	if id, err = t.addEpisode(ctx, e); err != nil {
		return 0, err
	}
	if start.PitchID != 0 {
		if err := t.linkPitch(ctx, start.PitchID, id); err != nil {
			return 0, err
		}
	}
	_, err = t.addBatch(ctx, episode.Batch{EpisodeID: id, Kind: episode.ShootBatch, Makes: measure.Whole(1)})
	return id, err
}

// SaveBrief keeps what the brief holds: all but the version in use and the
// scale. While the episode is released its version cannot be changed.
func (s *Store) SaveBrief(ctx context.Context, e episode.Episode) error {
	return s.write(ctx, operation{"save brief of episode", e.ID}, func(t *tx) error {
		return t.save(ctx, editedBrief, e.ID, e.Revision,
			e.Number, e.Title, dateText(e.ReleaseOn), e.Dish, e.InspiredBy, e.InspiredURL, e.Look, e.Hook, e.TargetMinutes, e.Notes, e.Stage)
	})
}

// UseVersion sets the recipe version that the episode makes, 0 for none, and
// the scale it is made at. A deleted version is fault.NotFound.
func (s *Store) UseVersion(ctx context.Context, id int64, revision int, versionID int64, scale measure.Number) error {
	return s.write(ctx, operation{"set version of episode", id}, func(t *tx) error {
		if err := t.liveVersion(ctx, versionID); err != nil {
			return err
		}
		return t.save(ctx, editedUse, id, revision, idOrNull(versionID), scale.String())
	})
}

var undoEpisode = undoable{
	noun: "episode",
	remove: `
UPDATE episode
SET deleted_at = ?2
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
	restore: `
UPDATE episode
SET deleted_at = NULL
WHERE episode_id = ?1
  AND deleted_at IS NOT NULL`,
}

// hideWithEpisode hides all live rows that hang on ?1 an episode, at ?2 the
// instant it is deleted.
var hideWithEpisode = []string{`
UPDATE batch
SET deleted_at = ?2, deleted_with_episode = 1
WHERE episode_id = ?1
  AND deleted_at IS NULL`, `
UPDATE trial
SET deleted_at = ?2, deleted_with_episode = 1
WHERE episode_id = ?1
  AND deleted_at IS NULL`, `
UPDATE segment
SET deleted_at = ?2, deleted_with_episode = 1
WHERE episode_id = ?1
  AND deleted_at IS NULL`, `
UPDATE shot
SET deleted_at = ?2, deleted_with_episode = 1
WHERE episode_id = ?1
  AND deleted_at IS NULL`, `
UPDATE cut
SET deleted_at = ?2, deleted_with_episode = 1
WHERE episode_id = ?1
  AND deleted_at IS NULL`, `
UPDATE correction
SET deleted_at = ?2, deleted_with_episode = 1
WHERE episode_id = ?1
  AND deleted_at IS NULL`, `
UPDATE moment
SET deleted_at = ?2, deleted_with_episode = 1
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
}

// restoreWithEpisode shows the rows that went with ?1 an episode, and the
// recipe it uses.
var restoreWithEpisode = []string{`
UPDATE batch
SET deleted_at = NULL, deleted_with_episode = 0
WHERE episode_id = ?1
  AND deleted_with_episode = 1`, `
UPDATE trial
SET deleted_at = NULL, deleted_with_episode = 0
WHERE episode_id = ?1
  AND deleted_with_episode = 1`, `
UPDATE segment
SET deleted_at = NULL, deleted_with_episode = 0
WHERE episode_id = ?1
  AND deleted_with_episode = 1`, `
UPDATE shot
SET deleted_at = NULL, deleted_with_episode = 0
WHERE episode_id = ?1
  AND deleted_with_episode = 1`, `
UPDATE cut
SET deleted_at = NULL, deleted_with_episode = 0
WHERE episode_id = ?1
  AND deleted_with_episode = 1`, `
UPDATE correction
SET deleted_at = NULL, deleted_with_episode = 0
WHERE episode_id = ?1
  AND deleted_with_episode = 1`, `
UPDATE moment
SET deleted_at = NULL, deleted_with_episode = 0
WHERE episode_id = ?1
  AND deleted_with_episode = 1`, `
UPDATE recipe
SET deleted_at = NULL
WHERE deleted_at IS NOT NULL
  AND recipe_id = (SELECT v.recipe_id FROM episode AS e JOIN version AS v ON v.version_id = e.version_id WHERE e.episode_id = ?1)`,
}

// DeleteEpisode hides an episode with all that hangs on it; its share links
// find nothing meanwhile. Restore brings it all back, and the recipe it uses if
// that was deleted since.
func (s *Store) DeleteEpisode(ctx context.Context, id int64) error {
	return s.write(ctx, operation{"delete episode", id}, func(t *tx) error {
		if err := t.hide(ctx, undoEpisode, id); err != nil {
			return err
		}
		for _, text := range hideWithEpisode {
			if _, err := t.change(ctx, text, id, t.now); err != nil {
				return err
			}
		}
		return nil
	})
}

func (t *tx) restoreEpisode(ctx context.Context, id int64) error {
	if err := t.bringBack(ctx, undoEpisode, id); err != nil {
		return err
	}
	for _, text := range restoreWithEpisode {
		if _, err := t.change(ctx, text, id); err != nil {
			return err
		}
	}
	return nil
}
