package store

import (
	"context"
	"time"

	"benchproof/kitchen/fault"
)

const mostRecipes = 5000

// Recipe is a named recipe; what it says stands in its versions, of which it
// has at least one.
type Recipe struct {
	ID         int64
	Name       string
	Versions   int       // how many
	LatestID   int64     // the newest version
	LatestAt   time.Time // when that was made
	LatestNote string    // what changed in it
	Revision   int
}

const selectRecipe = `
SELECT r.recipe_id, r.name, v.number, v.version_id, v.created_at, v.note, r.revision
FROM recipe AS r
JOIN version AS v ON v.recipe_id = r.recipe_id
                 AND v.number = (SELECT max(w.number) FROM version AS w WHERE w.recipe_id = r.recipe_id)`

func scanRecipe(row scanner) (r Recipe, err error) {
	err = row.Scan(&r.ID, &r.Name, &r.Versions, &r.LatestID, instant{&r.LatestAt}, &r.LatestNote, &r.Revision)
	return r, err
}

var editedRecipe = edited{
	noun: "recipe",
	update: `
UPDATE recipe
SET name = ?3,
    revision = revision + 1
WHERE recipe_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM recipe
WHERE recipe_id = ?1
  AND deleted_at IS NULL`,
}

var undoRecipe = undoable{
	noun: "recipe",
	remove: `
UPDATE recipe
SET deleted_at = ?2
WHERE recipe_id = ?1
  AND deleted_at IS NULL`,
	restore: `
UPDATE recipe
SET deleted_at = NULL
WHERE recipe_id = ?1
  AND deleted_at IS NOT NULL`,
}

// Recipes lists the recipes by name.
func (s *Store) Recipes(ctx context.Context) ([]Recipe, error) {
	all, err := list(ctx, s.reader, scanRecipe, selectRecipe+`
WHERE r.deleted_at IS NULL
ORDER BY r.name COLLATE NOCASE, r.recipe_id
LIMIT ?1`, mostRecipes)
	return all, operation{verb: "list recipes"}.wrap(err)
}

// Recipe gives one recipe.
func (s *Store) Recipe(ctx context.Context, id int64) (Recipe, error) {
	r, err := one(ctx, s.reader, "recipe", scanRecipe, selectRecipe+`
WHERE r.recipe_id = ?1
  AND r.deleted_at IS NULL`, id)
	return r, operation{"read recipe", id}.wrap(err)
}

// AddRecipe keeps a recipe with its first version, whose RecipeID and Number
// do not count.
func (s *Store) AddRecipe(ctx context.Context, name string, first Version) (recipeID, versionID int64, err error) {
	err = s.write(ctx, operation{verb: "add recipe"}, func(t *tx) error {
		recipeID, versionID, err = t.addRecipe(ctx, name, first)
		return err
	})
	return recipeID, versionID, err
}

func (t *tx) addRecipe(ctx context.Context, name string, first Version) (recipeID, versionID int64, err error) {
	if err := t.room(ctx, "recipes", mostRecipes, "SELECT count(*) FROM recipe WHERE deleted_at IS NULL"); err != nil {
		return 0, 0, err
	}
	recipeID, err = t.add(ctx, "recipe", `
INSERT INTO recipe (name)
VALUES (?1)`, name)
	if err != nil {
		return 0, 0, err
	}
	first.RecipeID = recipeID
	versionID, err = t.addVersion(ctx, first)
	return recipeID, versionID, err
}

// RenameRecipe gives a recipe another name.
func (s *Store) RenameRecipe(ctx context.Context, r Recipe) error {
	return s.write(ctx, operation{"rename recipe", r.ID}, func(t *tx) error {
		return t.save(ctx, editedRecipe, r.ID, r.Revision, r.Name)
	})
}

// DeleteRecipe hides a recipe with its versions; Restore brings them back.
// While an episode uses it, it is fault.Conflict and names the episode.
func (s *Store) DeleteRecipe(ctx context.Context, id int64) error {
	return s.write(ctx, operation{"delete recipe", id}, func(t *tx) error {
		users, err := list(ctx, t, scanned[string], `
SELECT e.title
FROM episode AS e
JOIN version AS v ON v.version_id = e.version_id
WHERE v.recipe_id = ?1
  AND e.deleted_at IS NULL
ORDER BY e.episode_id
LIMIT 1`, id)
		if err != nil {
			return err
		}
		if len(users) > 0 {
			return fault.Conflictf("The episode “%s” uses this recipe. Choose another recipe there first.", users[0])
		}
		return t.hide(ctx, undoRecipe, id)
	})
}
