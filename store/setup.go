package store

import (
	"context"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
)

const selectSetup = `
SELECT episode_id, name, camera, lens, light, revision
FROM setup`

func scanSetup(row scanner) (u episode.Setup, err error) {
	err = row.Scan(&u.EpisodeID, &u.Name, &u.Camera, &u.Lens, &u.Light, &u.Revision)
	return u, err
}

// Setups lists the setups of an episode that are described, by name. Shots may
// name others.
func (s *Store) Setups(ctx context.Context, episodeID int64) ([]episode.Setup, error) {
	all, err := list(ctx, s.reader, scanSetup, selectSetup+`
WHERE episode_id = ?1
ORDER BY name
LIMIT ?2`, episodeID, mostChildren)
	return all, operation{"list setups of episode", episodeID}.wrap(err)
}

// SaveSetup keeps what is said of the setup that was called was until now, and
// renames it on every shot if its name is another one. Under the name of a setup
// that there is already the shots of both come together; that one's description
// stays, and one that says otherwise is fault.Invalid.
func (s *Store) SaveSetup(ctx context.Context, was string, u episode.Setup) error {
	return s.write(ctx, operation{"save setup of episode", u.EpisodeID}, func(t *tx) error {
		if err := t.live(ctx, "episode", liveEpisode, u.EpisodeID); err != nil {
			return err
		}
		if err := t.takeSetup(ctx, was, u); err != nil {
			return err
		}
		if err := t.putSetup(ctx, u); err != nil || was == u.Name {
			return err
		}
		_, err := t.change(ctx, `
UPDATE shot
SET setup = ?3,
    revision = revision + 1
WHERE episode_id = ?1
  AND setup = ?2`, u.EpisodeID, was, u.Name)
		return err
	})
}

// takeSetup takes the row of the setup called was away, for the new one to come
// in its place. It must be as it was read: of u's revision, or not there for 0.
func (t *tx) takeSetup(ctx context.Context, was string, u episode.Setup) error {
	rows, err := t.change(ctx, `
DELETE FROM setup
WHERE episode_id = ?1
  AND name = ?2
  AND revision = ?3`, u.EpisodeID, was, u.Revision)
	if err != nil || rows > 0 {
		return err
	}
	known, err := t.setups(ctx, u.EpisodeID, was)
	if err == nil && (len(known) > 0 || u.Revision > 0) {
		err = fault.Conflictf("This setup was saved somewhere else after you opened it. Nothing was overwritten: compare the two and save again.")
	}
	return err
}

// putSetup writes the row of a setup, unless there is one of that name that says
// the same, or all that is said.
func (t *tx) putSetup(ctx context.Context, u episode.Setup) error {
	known, err := t.setups(ctx, u.EpisodeID, u.Name)
	if err != nil {
		return err
	}
	if len(known) > 0 {
		if u.Camera+u.Lens+u.Light == "" || u.Camera == known[0].Camera && u.Lens == known[0].Lens && u.Light == known[0].Light {
			return nil
		}
		return fault.Invalidf("name", "There is a setup called “%s” that is described otherwise. Empty camera, lens and light here to join it, or take another name.", u.Name)
	}
	if err := t.room(ctx, "setups", mostChildren, "SELECT count(*) FROM setup WHERE episode_id = ?1", u.EpisodeID); err != nil {
		return err
	}
	_, err = t.change(ctx, `
INSERT INTO setup (episode_id, name, camera, lens, light, revision)
VALUES (?1, ?2, ?3, ?4, ?5, ?6)`, u.EpisodeID, u.Name, u.Camera, u.Lens, u.Light, u.Revision+1)
	return err
}

// setups gives the setup of a name, none if it is not described.
func (t *tx) setups(ctx context.Context, episodeID int64, name string) ([]episode.Setup, error) {
	return list(ctx, t, scanSetup, selectSetup+`
WHERE episode_id = ?1
  AND name = ?2`, episodeID, name)
}
