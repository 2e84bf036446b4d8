package store

import (
	"context"
	"database/sql"
	"errors"

	"github.com/pressly/goose/v3"

	"benchproof/kitchen/fault"
	"benchproof/migrations"
)

// applicationID marks a file as Benchproof data; the first migration sets it.
const applicationID = 0x426e5066 // "BnPf"

// migrate brings db to this program's schema, from whatever it has: a fresh
// file has nothing, and takes the same way.
func migrate(ctx context.Context, db *sql.DB) error {
	provider, err := newProvider(db)
	if err != nil {
		return err
	}
	current, target, err := provider.GetVersions(ctx)
	if err != nil {
		return err
	}
	if current > target {
		return tooNew(current, target)
	}
	_, err = provider.Up(ctx)
	return err
}

func newProvider(db *sql.DB) (*goose.Provider, error) {
	return goose.NewProvider(goose.DialectSQLite3, db, migrations.Files,
		goose.WithDisableGlobalRegistry(true), goose.WithLogger(goose.NopLogger()))
}

// checkOwner refuses a database that another program made: it has tables, and
// not our mark. It comes before the writer, whose settings change the file.
func checkOwner(ctx context.Context, path string) (err error) {
	db, err := sql.Open("sqlite", dsn(path, reading))
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, db.Close()) }()
	var id, tables int64
	if err := db.QueryRowContext(ctx, "PRAGMA application_id").Scan(&id); err != nil {
		return err
	}
	if err := db.QueryRowContext(ctx, "SELECT count(*) FROM sqlite_schema").Scan(&tables); err != nil {
		return err
	}
	if id != applicationID && tables > 0 {
		return fault.Invalidf("", "This file is a database of another program. Choose another file.")
	}
	return nil
}

func tooNew(current, target int64) error {
	return fault.Invalidf("", "This data was written by a newer Benchproof (schema %d, this one knows %d). Use that program, or a newer one.", current, target)
}
