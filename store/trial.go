package store

import (
	"context"

	"benchproof/kitchen/episode"
)

const selectTrial = `
SELECT trial_id, episode_id, version_id, made_on, scale, dough_grams, baked_grams, pieces, minutes, setting, verdict, note, revision
FROM trial`

func scanTrial(row scanner) (r episode.Trial, err error) {
	err = row.Scan(&r.ID, &r.EpisodeID, &r.VersionID, date{&r.MadeOn}, exact{&r.Scale}, exact{&r.DoughGrams}, exact{&r.BakedGrams},
		exact{&r.Pieces}, exact{&r.Minutes}, &r.Setting, &r.Verdict, &r.Note, &r.Revision)
	return r, err
}

const insertTrial = `
INSERT INTO trial (episode_id, version_id, made_on, scale, dough_grams, baked_grams, pieces, minutes, setting, verdict, note)
SELECT episode_id, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11
FROM episode
WHERE episode_id = ?1
  AND deleted_at IS NULL`

var editedTrial = edited{
	noun: "trial",
	update: `
UPDATE trial
SET version_id = ?3,
    made_on = ?4,
    scale = ?5,
    dough_grams = ?6,
    baked_grams = ?7,
    pieces = ?8,
    minutes = ?9,
    setting = ?10,
    verdict = ?11,
    note = ?12,
    revision = revision + 1
WHERE trial_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM trial
WHERE trial_id = ?1
  AND deleted_at IS NULL`,
}

// trialFields are what both inserting and saving a trial write, in order.
func trialFields(r episode.Trial) []any {
	return []any{r.VersionID, dateText(r.MadeOn), makesText(r.Scale), r.DoughGrams.String(), r.BakedGrams.String(),
		r.Pieces.String(), r.Minutes.String(), r.Setting, r.Verdict, r.Note}
}

var trials = child{
	plural: "trials",
	count: `
SELECT count(*)
FROM trial
WHERE episode_id = ?1
  AND deleted_at IS NULL`,
	home: `
SELECT episode_id, 0, deleted_at IS NULL
FROM trial
WHERE trial_id = ?1`,
	undoable: undoable{
		noun: "trial",
		remove: `
UPDATE trial
SET deleted_at = ?2
WHERE trial_id = ?1
  AND deleted_at IS NULL`,
		restore: `
UPDATE trial
SET deleted_at = NULL
WHERE trial_id = ?1
  AND deleted_at IS NOT NULL`,
	},
}

// Trials lists an episode's trials, the latest first.
func (s *Store) Trials(ctx context.Context, episodeID int64) ([]episode.Trial, error) {
	all, err := list(ctx, s.reader, scanTrial, selectTrial+`
WHERE episode_id = ?1
  AND deleted_at IS NULL
ORDER BY made_on DESC, trial_id DESC
LIMIT ?2`, episodeID, mostChildren)
	return all, operation{"list trials of episode", episodeID}.wrap(err)
}

// TrialsOfVersion lists the latest trials of one version in any episode.
func (s *Store) TrialsOfVersion(ctx context.Context, versionID int64) ([]episode.Trial, error) {
	all, err := list(ctx, s.reader, scanTrial, selectTrial+`
WHERE version_id = ?1
  AND deleted_at IS NULL
ORDER BY made_on DESC, trial_id DESC
LIMIT ?2`, versionID, mostChildren)
	return all, operation{"list trials of version", versionID}.wrap(err)
}

// Trial gives one trial.
func (s *Store) Trial(ctx context.Context, id int64) (episode.Trial, error) {
	r, err := one(ctx, s.reader, "trial", scanTrial, selectTrial+`
WHERE trial_id = ?1
  AND deleted_at IS NULL`, id)
	return r, operation{"read trial", id}.wrap(err)
}

// AddTrial keeps a trial; from then on its version is never changed. A Scale
// of 0 means 1.
func (s *Store) AddTrial(ctx context.Context, r episode.Trial) (id int64, err error) {
	err = s.write(ctx, operation{"add trial to episode", r.EpisodeID}, func(t *tx) error {
		if err := t.liveVersion(ctx, r.VersionID); err != nil {
			return err
		}
		id, err = t.addChild(ctx, trials, r.EpisodeID, 0, insertTrial, trialFields(r)...)
		return err
	})
	return id, err
}

// SaveTrial keeps what was edited; a trial stays with its episode.
func (s *Store) SaveTrial(ctx context.Context, r episode.Trial) error {
	return s.write(ctx, operation{"save trial", r.ID}, func(t *tx) error {
		return t.save(ctx, editedTrial, r.ID, r.Revision, trialFields(r)...)
	})
}

// DeleteTrial hides a trial; Restore brings it back. Its version stays tried.
func (s *Store) DeleteTrial(ctx context.Context, id int64) error {
	return s.deleteChild(ctx, trials, id)
}
