package store

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"modernc.org/sqlite"

	"benchproof/kitchen/fault"
)

// Backup copies the data as it is at one moment to a new file at path, while
// reading and writing go on. The file is whole and on disk when Backup
// returns, and not there at all on an error. A file that is there already is
// fault.Conflict.
func (s *Store) Backup(ctx context.Context, path string) error {
	err := newFile(path, func(part string) error { return s.copyTo(ctx, part) })
	return operation{verb: "back up"}.wrap(err)
}

// backuper is what the driver's connections can do beside database/sql.
type backuper interface {
	NewBackup(dst string) (*sqlite.Backup, error)
}

// copyTo copies all pages in one step: after a smaller one, a write between
// would start the copy over.
func (s *Store) copyTo(ctx context.Context, path string) error {
	conn, err := s.reader.db.Conn(ctx)
	if err != nil {
		return err
	}
	defer conn.Close()
	return conn.Raw(func(driver any) error {
		backup, err := driver.(backuper).NewBackup(dsn(path, ""))
		if err != nil {
			return err
		}
		_, err = backup.Step(-1)
		return errors.Join(err, backup.Finish())
	})
}

// newFile lets write make a file beside path, then puts it on disk and gives
// it its name, so that there is never half a file at path.
func newFile(path string, write func(part string) error) error {
	if _, err := os.Lstat(path); !errors.Is(err, fs.ErrNotExist) {
		return because(fault.Conflict, fmt.Sprintf("There is something at %s already. Choose another name, or move it away first.", path), err)
	}
	folder := filepath.Dir(path)
	part, err := os.CreateTemp(folder, ".benchproof-*")
	if err != nil {
		return because(fault.Invalid, fmt.Sprintf("Cannot write into the folder %s. Choose another one.", folder), err)
	}
	defer os.Remove(part.Name())
	err = errors.Join(part.Close(), write(part.Name()), syncFile(part.Name()))
	if err != nil {
		return err
	}
	if err := os.Rename(part.Name(), path); err != nil {
		return err
	}
	return syncFolder(folder)
}

func syncFile(path string) error {
	file, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	return errors.Join(file.Sync(), file.Close())
}

// CheckBackup reads the whole file and tells whether it can be restored: it is
// Benchproof data, undamaged, and of no newer program. If not, the error is
// fault.Invalid. An older program's data is fine: Open brings it up to date.
func CheckBackup(ctx context.Context, path string) error {
	if err := checkFile(ctx, path); err != nil {
		return fmt.Errorf("check backup: %w", refuse(err))
	}
	return nil
}

func checkFile(ctx context.Context, path string) error {
	if info, err := os.Stat(path); err != nil || !info.Mode().IsRegular() {
		return because(fault.Invalid, fmt.Sprintf("There is no file at %s.", path), err)
	}
	// Immutable: nothing is written beside the backup, and its folder may be
	// read-only.
	db, err := sql.Open("sqlite", dsn(path, "mode=ro&immutable=1&_query_only=1&_foreign_keys=1&_dqs=0"))
	if err != nil {
		return err
	}
	defer db.Close()
	db.SetMaxOpenConns(1)
	if err := checkMark(ctx, db); err != nil {
		return err
	}
	if err := checkWhole(ctx, db); err != nil {
		return err
	}
	return checkSchema(ctx, db)
}

// checkMark refuses a file without our mark, an empty one too.
func checkMark(ctx context.Context, db *sql.DB) error {
	var id int64
	err := db.QueryRowContext(ctx, "PRAGMA application_id").Scan(&id)
	if err == nil && id != applicationID {
		err = fault.Invalidf("", "This file is not Benchproof data. Choose another file.")
	}
	return err
}

// checkWhole lets SQLite look at every page, and at every reference.
func checkWhole(ctx context.Context, db *sql.DB) error {
	var answer string
	if err := db.QueryRowContext(ctx, "PRAGMA integrity_check(1)").Scan(&answer); err != nil {
		return err
	}
	if answer != "ok" {
		return because(fault.Invalid, "The file is damaged. Use another backup.", errors.New(answer))
	}
	var loose int
	if err := db.QueryRowContext(ctx, "SELECT count(*) FROM pragma_foreign_key_check").Scan(&loose); err != nil {
		return err
	}
	if loose > 0 {
		return because(fault.Invalid, "The file is damaged. Use another backup.", fmt.Errorf("%d loose references", loose))
	}
	return nil
}

// checkSchema refuses what a newer program wrote.
func checkSchema(ctx context.Context, db *sql.DB) error {
	var current int64
	if err := db.QueryRowContext(ctx, "SELECT max(version_id) FROM goose_db_version").Scan(&current); err != nil {
		return err
	}
	provider, err := newProvider(db)
	if err != nil {
		return err
	}
	sources := provider.ListSources()
	if target := sources[len(sources)-1].Version; current > target {
		return tooNew(current, target)
	}
	return nil
}

// RestoreBackup checks the backup and puts a copy of it at path, for Open. A
// file that is there already, or the log of one, is fault.Conflict: what a
// show has is never overwritten. The store must not be open.
func RestoreBackup(ctx context.Context, backup, path string) error {
	if err := CheckBackup(ctx, backup); err != nil {
		return err
	}
	if _, err := os.Lstat(path + "-wal"); err == nil {
		return fault.Conflictf("There is a database's log at %s-wal. Move it away with its database first.", path)
	}
	err := newFile(path, func(part string) error { return copyFile(backup, part) })
	return operation{verb: "restore backup"}.wrap(err)
}

func copyFile(from, to string) error {
	source, err := os.Open(from)
	if err != nil {
		return err
	}
	defer source.Close()
	target, err := os.OpenFile(to, os.O_WRONLY|os.O_TRUNC, 0)
	if err != nil {
		return err
	}
	_, err = io.Copy(target, source)
	return errors.Join(err, target.Close())
}
