package store

import (
	"context"
	"time"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

const mostVersions = 1000

// Version is one state of a recipe: its text and the reading of it.
type Version struct {
	ID        int64
	RecipeID  int64
	Number    int            // from 1 within the recipe
	Text      string         // as typed
	System    measure.System // the measures it is read in; "" takes the show's
	Note      string         // what changed, in the creator's words
	CreatedAt time.Time
	IsTried   bool // made at the bench or gone out: never changed again
	Revision  int

	// Reading is what Text was understood to say. It is empty in lists.
	Reading recipe.Recipe
}

const selectVersion = `
SELECT v.version_id, v.recipe_id, v.number, v.text, v.system, v.note, v.created_at,
       EXISTS (SELECT 1 FROM tried_version AS d WHERE d.version_id = v.version_id), v.revision,
       v.title, v.yield_text, v.yield_from, v.yield_to, v.yield_unit, v.yield_of, v.stated_system,
       v.intro, v.equipment, v.notes, v.credits, v.placed
FROM version AS v
JOIN recipe AS r ON r.recipe_id = v.recipe_id`

func scanVersion(row scanner) (v Version, err error) {
	var intro, equipment, notes, credits, placed string
	head := &v.Reading
	err = row.Scan(&v.ID, &v.RecipeID, &v.Number, &v.Text, &v.System, &v.Note, instant{&v.CreatedAt}, &v.IsTried, &v.Revision,
		&head.Title, &head.Yield.Text, exact{&head.Yield.Amount.From}, exact{&head.Yield.Amount.To}, &head.Yield.Amount.Unit, &head.Yield.Of,
		&head.System, &intro, &equipment, &notes, &credits, &placed)
	if err != nil {
		return v, err
	}
	head.Intro, head.Equipment, head.Notes, head.Credits = items(intro), items(equipment), items(notes), items(credits)
	head.Placed, err = places(placed)
	return v, err
}

// selectVersionRow is a version as lists show it, without its reading.
const selectVersionRow = `
SELECT v.version_id, v.recipe_id, v.number, v.text, v.system, v.note, v.created_at,
       EXISTS (SELECT 1 FROM tried_version AS d WHERE d.version_id = v.version_id), v.revision
FROM version AS v
JOIN recipe AS r ON r.recipe_id = v.recipe_id`

func scanVersionRow(row scanner) (v Version, err error) {
	err = row.Scan(&v.ID, &v.RecipeID, &v.Number, &v.Text, &v.System, &v.Note, instant{&v.CreatedAt}, &v.IsTried, &v.Revision)
	return v, err
}

// insertVersion numbers the version behind the recipe's last.
const insertVersion = `
INSERT INTO version (recipe_id, number, created_at, text, system, note,
                     title, yield_text, yield_from, yield_to, yield_unit, yield_of, stated_system,
                     intro, equipment, notes, credits, placed)
SELECT recipe_id,
       (SELECT COALESCE(max(v.number), 0) + 1 FROM version AS v WHERE v.recipe_id = ?1),
       ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17
FROM recipe
WHERE recipe_id = ?1
  AND deleted_at IS NULL`

var editedVersion = edited{
	noun: "version",
	update: `
UPDATE version
SET text = ?3,
    system = ?4,
    note = ?5,
    title = ?6,
    yield_text = ?7,
    yield_from = ?8,
    yield_to = ?9,
    yield_unit = ?10,
    yield_of = ?11,
    stated_system = ?12,
    intro = ?13,
    equipment = ?14,
    notes = ?15,
    credits = ?16,
    placed = ?17,
    revision = revision + 1
WHERE version_id = ?1
  AND revision = ?2`,
	revision: `
SELECT revision
FROM version
WHERE version_id = ?1`,
}

// versionFields are what both inserting and saving a version write, in order.
func versionFields(v Version) []any {
	head := v.Reading
	return []any{v.Text, v.System, v.Note, head.Title,
		head.Yield.Text, head.Yield.Amount.From.String(), head.Yield.Amount.To.String(), head.Yield.Amount.Unit, head.Yield.Of,
		head.System, itemsText(head.Intro), itemsText(head.Equipment), itemsText(head.Notes), itemsText(head.Credits), placesText(head.Placed)}
}

// Versions lists a recipe's versions, the newest first, without readings.
func (s *Store) Versions(ctx context.Context, recipeID int64) ([]Version, error) {
	all, err := list(ctx, s.reader, scanVersionRow, selectVersionRow+`
WHERE v.recipe_id = ?1
  AND r.deleted_at IS NULL
ORDER BY v.number DESC
LIMIT ?2`, recipeID, mostVersions)
	return all, operation{"list versions of recipe", recipeID}.wrap(err)
}

// Version gives one version with its reading, in a handful of queries whatever
// its length.
func (s *Store) Version(ctx context.Context, id int64) (v Version, err error) {
	err = s.read(ctx, operation{"read version", id}, func(t *tx) error {
		v, err = one(ctx, t, "version", scanVersion, selectVersion+`
WHERE v.version_id = ?1
  AND r.deleted_at IS NULL`, id)
		if err != nil {
			return err
		}
		return t.readParts(ctx, id, &v.Reading)
	})
	return v, err
}

// AddVersion keeps a new version of v.RecipeID, numbered behind the last one;
// v's ID, Number, CreatedAt and Revision do not count.
func (s *Store) AddVersion(ctx context.Context, v Version) (id int64, err error) {
	err = s.write(ctx, operation{"add version to recipe", v.RecipeID}, func(t *tx) error {
		id, err = t.addVersion(ctx, v)
		return err
	})
	return id, err
}

func (t *tx) addVersion(ctx context.Context, v Version) (int64, error) {
	if err := t.room(ctx, "versions", mostVersions, "SELECT count(*) FROM version WHERE recipe_id = ?1", v.RecipeID); err != nil {
		return 0, err
	}
	id, err := t.add(ctx, "recipe", insertVersion, append([]any{v.RecipeID, t.now}, versionFields(v)...)...)
	if err != nil {
		return 0, err
	}
	return id, t.keepParts(ctx, id, v.Reading)
}

// SaveVersion keeps v's text, system, note and reading in place. A tried
// version is fault.Conflict with ErrTried: save it with AddVersion.
func (s *Store) SaveVersion(ctx context.Context, v Version) error {
	return s.write(ctx, operation{"save version", v.ID}, func(t *tx) error {
		if err := t.untried(ctx, v.ID); err != nil {
			return err
		}
		if err := t.save(ctx, editedVersion, v.ID, v.Revision, versionFields(v)...); err != nil {
			return err
		}
		if err := t.dropParts(ctx, v.ID); err != nil {
			return err
		}
		return t.keepParts(ctx, v.ID, v.Reading)
	})
}

// untried refuses a version that is gone or tried. The database has triggers
// to the same end.
func (t *tx) untried(ctx context.Context, id int64) error {
	isTried, err := one(ctx, t, "version", scanned[bool], `
SELECT EXISTS (SELECT 1 FROM tried_version AS d WHERE d.version_id = v.version_id)
FROM version AS v
JOIN recipe AS r ON r.recipe_id = v.recipe_id
WHERE v.version_id = ?1
  AND r.deleted_at IS NULL`, id)
	if err == nil && isTried {
		err = tried()
	}
	return err
}

// liveVersion is fault.NotFound for a version that is missing or deleted; 0
// stands for none and passes.
func (t *tx) liveVersion(ctx context.Context, id int64) error {
	if id == 0 {
		return nil
	}
	return t.live(ctx, "version", `
SELECT 1
FROM version AS v
JOIN recipe AS r ON r.recipe_id = v.recipe_id
WHERE v.version_id = ?1
  AND r.deleted_at IS NULL`, id)
}
