package store

import (
	"context"
	"database/sql"
	"errors"
	"sync"

	"benchproof/kitchen/fault"
)

// pool is a set of connections with each statement prepared once. Statements
// are constants of this package, so there is an end to them.
type pool struct {
	db       *sql.DB
	mu       sync.RWMutex
	prepared map[string]*sql.Stmt
}

func openPool(dsn string, connections int) (*pool, error) {
	db, err := sql.Open("sqlite", dsn)
	if err != nil {
		return nil, err
	}
	db.SetMaxOpenConns(connections)
	db.SetMaxIdleConns(connections)
	return &pool{db: db, prepared: map[string]*sql.Stmt{}}, nil
}

func (p *pool) close() error {
	p.mu.Lock()
	defer p.mu.Unlock()
	var errs []error
	for _, stmt := range p.prepared {
		errs = append(errs, stmt.Close())
	}
	clear(p.prepared)
	return errors.Join(append(errs, p.db.Close())...)
}

// known gives text's statement if it was prepared before, else nil.
func (p *pool) known(text string) *sql.Stmt {
	p.mu.RLock()
	defer p.mu.RUnlock()
	return p.prepared[text]
}

// prepare gives text's statement. It needs a free connection, so it is never
// called inside a transaction, nor with the lock held.
func (p *pool) prepare(ctx context.Context, text string) (*sql.Stmt, error) {
	if stmt := p.known(text); stmt != nil {
		return stmt, nil
	}
	stmt, err := p.db.PrepareContext(ctx, text)
	if err != nil {
		return nil, err
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	if other := p.prepared[text]; other != nil {
		return other, stmt.Close()
	}
	p.prepared[text] = stmt
	return stmt, nil
}

func (p *pool) query(ctx context.Context, text string, args ...any) (*sql.Rows, error) {
	stmt, err := p.prepare(ctx, text)
	if err != nil {
		return nil, err
	}
	return stmt.QueryContext(ctx, args...)
}

// querier is what can be asked: a pool, or a transaction.
type querier interface {
	query(ctx context.Context, text string, args ...any) (*sql.Rows, error)
}

// scanner is a row to read: sql.Rows where it stands.
type scanner interface {
	Scan(to ...any) error
}

// list gives all rows of the query. Its text bounds how many that can be.
func list[T any](ctx context.Context, q querier, scan func(scanner) (T, error), text string, args ...any) ([]T, error) {
	rows, err := q.query(ctx, text, args...)
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	var all []T
	for rows.Next() {
		each, err := scan(rows)
		if err != nil {
			return nil, err
		}
		all = append(all, each)
	}
	return all, rows.Err()
}

// one gives the first row of the query, fault.NotFound if there is none.
func one[T any](ctx context.Context, q querier, noun string, scan func(scanner) (T, error), text string, args ...any) (T, error) {
	all, err := list(ctx, q, scan, text, args...)
	if err == nil && len(all) == 0 {
		err = missing(noun)
	}
	if err != nil {
		var none T
		return none, err
	}
	return all[0], nil
}

func missing(noun string) error {
	return fault.NotFoundf("There is no such %s. It may have been deleted.", noun)
}

// scanned reads a row of one column.
func scanned[T any](row scanner) (value T, err error) {
	err = row.Scan(&value)
	return value, err
}
