package store

import (
	"context"
	"database/sql"
	"fmt"
	"time"

	"benchproof/kitchen/fault"
)

// operation names what a call does, for the one wrap around its error.
type operation struct {
	verb string
	id   int64 // 0 for none
}

func (o operation) wrap(err error) error {
	switch {
	case err == nil:
		return nil
	case o.id == 0:
		return fmt.Errorf("%s: %w", o.verb, refuse(err))
	}
	return fmt.Errorf("%s %d: %w", o.verb, o.id, refuse(err))
}

// write runs do in a transaction that may change things, and commits it.
func (s *Store) write(ctx context.Context, op operation, do func(*tx) error) error {
	return op.wrap(s.writer.transact(ctx, s.clock(), nil, do))
}

// read runs do in a transaction that sees one moment throughout. A read of one
// statement needs none.
func (s *Store) read(ctx context.Context, op operation, do func(*tx) error) error {
	return op.wrap(s.reader.transact(ctx, s.clock(), &sql.TxOptions{ReadOnly: true}, do))
}

// tx is a transaction under way.
type tx struct {
	*sql.Tx
	pool *pool
	now  string   // the instant it began, as stored
	met  []string // statements that the pool has not prepared yet
}

// transact commits what do did, or rolls it back on an error or a panic. What
// must be told to others is told after it returned.
func (p *pool) transact(ctx context.Context, now time.Time, opts *sql.TxOptions, do func(*tx) error) error {
	t := &tx{pool: p, now: instantText(now)}
	if err := t.run(ctx, opts, do); err != nil {
		return err
	}
	for _, text := range t.met {
		if _, err := p.prepare(ctx, text); err != nil {
			break // the next transaction meets it again
		}
	}
	return nil
}

func (t *tx) run(ctx context.Context, opts *sql.TxOptions, do func(*tx) error) (err error) {
	if t.Tx, err = t.pool.db.BeginTx(ctx, opts); err != nil {
		return err
	}
	defer t.Rollback() // does nothing after the commit
	if err := do(t); err != nil {
		return err
	}
	return t.Commit()
}

// statement gives text prepared on the transaction's own connection: preparing
// it for the pool would wait for a connection while holding one.
func (t *tx) statement(ctx context.Context, text string) (*sql.Stmt, error) {
	if stmt := t.pool.known(text); stmt != nil {
		return t.StmtContext(ctx, stmt), nil
	}
	t.met = append(t.met, text)
	return t.PrepareContext(ctx, text)
}

func (t *tx) query(ctx context.Context, text string, args ...any) (*sql.Rows, error) {
	stmt, err := t.statement(ctx, text)
	if err != nil {
		return nil, err
	}
	return stmt.QueryContext(ctx, args...)
}

func (t *tx) exec(ctx context.Context, text string, args ...any) (sql.Result, error) {
	stmt, err := t.statement(ctx, text)
	if err != nil {
		return nil, err
	}
	return stmt.ExecContext(ctx, args...)
}

// change runs a statement and tells how many rows it touched.
func (t *tx) change(ctx context.Context, text string, args ...any) (rows int64, err error) {
	result, err := t.exec(ctx, text, args...)
	if err != nil {
		return 0, err
	}
	return result.RowsAffected()
}

// add runs an INSERT and gives the new row's id. One that selects from a
// parent adds nothing when the parent is missing or deleted; then the error is
// fault.NotFound and names the parent.
func (t *tx) add(ctx context.Context, parent, text string, args ...any) (id int64, err error) {
	result, err := t.exec(ctx, text, args...)
	if err != nil {
		return 0, err
	}
	rows, err := result.RowsAffected()
	if err == nil && rows == 0 {
		err = missing(parent)
	}
	if err != nil {
		return 0, err
	}
	return result.LastInsertId()
}

// edited says how rows of one kind are saved. Update takes ?1 the id, ?2 the
// revision that was read, then the fields; revision takes the id.
type edited struct {
	noun     string
	update   string
	revision string
}

// save runs e.update. A row that is gone is fault.NotFound; one that was saved
// in between is fault.Conflict.
func (t *tx) save(ctx context.Context, e edited, id int64, revision int, fields ...any) error {
	rows, err := t.change(ctx, e.update, append([]any{id, revision}, fields...)...)
	if err != nil || rows > 0 {
		return err
	}
	if _, err := one(ctx, t, e.noun, scanned[int], e.revision, id); err != nil {
		return err
	}
	return fault.Conflictf("This %s was saved somewhere else after you opened it. Nothing was overwritten: compare the two and save again.", e.noun)
}
