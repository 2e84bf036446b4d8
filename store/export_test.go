package store

import (
	"context"
	"database/sql"
	"maps"
	"slices"

	"github.com/pressly/goose/v3"
)

// Raw is the writer's database, for tests that go behind the store's back.
func (s *Store) Raw() *sql.DB { return s.writer.db }

// ReaderSettings asks every connection that the reader pool can have for a
// PRAGMA's value.
func (s *Store) ReaderSettings(ctx context.Context, pragma string) ([]string, error) {
	var values []string
	for range s.reader.db.Stats().MaxOpenConnections {
		conn, err := s.reader.db.Conn(ctx)
		if err != nil {
			return nil, err
		}
		defer conn.Close()
		var value string
		if err := conn.QueryRowContext(ctx, "PRAGMA "+pragma).Scan(&value); err != nil {
			return nil, err
		}
		values = append(values, value)
	}
	return values, nil
}

// Statements lists the statements that both pools keep.
func (s *Store) Statements() []string {
	return append(slices.Collect(maps.Keys(s.reader.prepared)), slices.Collect(maps.Keys(s.writer.prepared))...)
}

// Transact runs do in a writing transaction, with a way to change rows.
func (s *Store) Transact(ctx context.Context, verb string, id int64, do func(change func(text string, args ...any) error) error) error {
	return s.write(ctx, operation{verb, id}, func(t *tx) error {
		return do(func(text string, args ...any) error {
			_, err := t.change(ctx, text, args...)
			return err
		})
	})
}

// NewProvider is the provider of the embedded migrations.
func NewProvider(db *sql.DB) (*goose.Provider, error) { return newProvider(db) }

// Refuse turns the database's refusals into faults.
func Refuse(err error) error { return refuse(err) }
