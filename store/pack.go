package store

import (
	"context"

	"benchproof/kitchen/shop"
)

const mostPacks = 10_000

const selectPack = `
SELECT pack_id, food_id, amount, amount, unit, price, revision
FROM pack`

func scanPack(row scanner) (p shop.Pack, err error) {
	err = row.Scan(&p.ID, &p.FoodID, exact{&p.Amount.From}, exact{&p.Amount.To}, &p.Amount.Unit, &p.Price, &p.Revision)
	return p, err
}

const insertPack = `
INSERT INTO pack (food_id, amount, unit, price)
VALUES (?1, ?2, ?3, ?4)`

var editedPack = edited{
	noun: "pack",
	update: `
UPDATE pack
SET food_id = ?3,
    amount = ?4,
    unit = ?5,
    price = ?6,
    revision = revision + 1
WHERE pack_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM pack
WHERE pack_id = ?1
  AND deleted_at IS NULL`,
}

var undoPack = undoable{
	noun: "pack",
	remove: `
UPDATE pack
SET deleted_at = ?2
WHERE pack_id = ?1
  AND deleted_at IS NULL`,
	restore: `
UPDATE pack
SET deleted_at = NULL
WHERE pack_id = ?1
  AND deleted_at IS NOT NULL`,
}

// packFields are what both inserting and saving a pack write, in order.
func packFields(p shop.Pack) []any {
	return []any{p.FoodID, p.Amount.To.String(), p.Amount.Unit, p.Price}
}

// Packs lists the packs of a food, or of every food for "", in the order they
// were noted.
func (s *Store) Packs(ctx context.Context, foodID string) ([]shop.Pack, error) {
	all, err := list(ctx, s.reader, scanPack, selectPack+`
WHERE (?1 = '' OR food_id = ?1)
  AND deleted_at IS NULL
ORDER BY pack_id
LIMIT ?2`, foodID, mostPacks)
	return all, operation{verb: "list packs"}.wrap(err)
}

// Pack gives one pack.
func (s *Store) Pack(ctx context.Context, id int64) (shop.Pack, error) {
	p, err := one(ctx, s.reader, "pack", scanPack, selectPack+`
WHERE pack_id = ?1
  AND deleted_at IS NULL`, id)
	return p, operation{"read pack", id}.wrap(err)
}

// AddPack notes a pack of a food. Its amount is a single value.
func (s *Store) AddPack(ctx context.Context, p shop.Pack) (id int64, err error) {
	err = s.write(ctx, operation{verb: "add pack"}, func(t *tx) error {
		if err := t.room(ctx, "packs", mostPacks, "SELECT count(*) FROM pack WHERE deleted_at IS NULL"); err != nil {
			return err
		}
		id, err = t.add(ctx, "pack", insertPack, packFields(p)...)
		return err
	})
	return id, err
}

// SavePack keeps what was edited.
func (s *Store) SavePack(ctx context.Context, p shop.Pack) error {
	return s.write(ctx, operation{"save pack", p.ID}, func(t *tx) error {
		return t.save(ctx, editedPack, p.ID, p.Revision, packFields(p)...)
	})
}

// DeletePack hides a pack; Restore brings it back.
func (s *Store) DeletePack(ctx context.Context, id int64) error {
	return s.write(ctx, operation{"delete pack", id}, func(t *tx) error {
		return t.hide(ctx, undoPack, id)
	})
}
