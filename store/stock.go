package store

import (
	"context"

	"benchproof/kitchen/shop"
)

const mostStock = 10_000

const selectStock = `
SELECT stock_id, food_id, amount, amount, unit, use_by, revision
FROM stock`

func scanStock(row scanner) (s shop.Stock, err error) {
	err = row.Scan(&s.ID, &s.FoodID, exact{&s.Amount.From}, exact{&s.Amount.To}, &s.Amount.Unit, date{&s.UseBy}, &s.Revision)
	return s, err
}

const insertStock = `
INSERT INTO stock (food_id, amount, unit, use_by)
VALUES (?1, ?2, ?3, ?4)`

var editedStock = edited{
	noun: "stock",
	update: `
UPDATE stock
SET food_id = ?3,
    amount = ?4,
    unit = ?5,
    use_by = ?6,
    revision = revision + 1
WHERE stock_id = ?1
  AND revision = ?2
  AND deleted_at IS NULL`,
	revision: `
SELECT revision
FROM stock
WHERE stock_id = ?1
  AND deleted_at IS NULL`,
}

var undoStock = undoable{
	noun: "stock",
	remove: `
UPDATE stock
SET deleted_at = ?2
WHERE stock_id = ?1
  AND deleted_at IS NULL`,
	restore: `
UPDATE stock
SET deleted_at = NULL
WHERE stock_id = ?1
  AND deleted_at IS NOT NULL`,
}

// stockFields are what both inserting and saving stock write, in order.
func stockFields(s shop.Stock) []any {
	return []any{s.FoodID, s.Amount.To.String(), s.Amount.Unit, dateText(s.UseBy)}
}

// Stock lists what the larder holds of a food, or of every food for "": what
// must be used soonest first, what has no date last.
func (s *Store) Stock(ctx context.Context, foodID string) ([]shop.Stock, error) {
	all, err := list(ctx, s.reader, scanStock, selectStock+`
WHERE (?1 = '' OR food_id = ?1)
  AND deleted_at IS NULL
ORDER BY use_by IS NULL, use_by, stock_id
LIMIT ?2`, foodID, mostStock)
	return all, operation{verb: "list stock"}.wrap(err)
}

// StockEntry gives one entry of the stock.
func (s *Store) StockEntry(ctx context.Context, id int64) (shop.Stock, error) {
	entry, err := one(ctx, s.reader, "stock", scanStock, selectStock+`
WHERE stock_id = ?1
  AND deleted_at IS NULL`, id)
	return entry, operation{"read stock", id}.wrap(err)
}

// AddStock notes something in the larder. Its amount is a single value.
func (s *Store) AddStock(ctx context.Context, entry shop.Stock) (id int64, err error) {
	err = s.write(ctx, operation{verb: "add stock"}, func(t *tx) error {
		if err := t.room(ctx, "entries of stock", mostStock, "SELECT count(*) FROM stock WHERE deleted_at IS NULL"); err != nil {
			return err
		}
		id, err = t.add(ctx, "stock", insertStock, stockFields(entry)...)
		return err
	})
	return id, err
}

// SaveStock keeps what was edited.
func (s *Store) SaveStock(ctx context.Context, entry shop.Stock) error {
	return s.write(ctx, operation{"save stock", entry.ID}, func(t *tx) error {
		return t.save(ctx, editedStock, entry.ID, entry.Revision, stockFields(entry)...)
	})
}

// DeleteStock hides an entry; Restore brings it back.
func (s *Store) DeleteStock(ctx context.Context, id int64) error {
	return s.write(ctx, operation{"delete stock", id}, func(t *tx) error {
		return t.hide(ctx, undoStock, id)
	})
}
