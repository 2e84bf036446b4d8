package store

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"net/url"
	"os"
	"path/filepath"
	"runtime"
	"time"

	_ "modernc.org/sqlite" // the database/sql driver named "sqlite"
)

// Store is an open database. It is safe for use by many goroutines.
type Store struct {
	writer *pool // one connection: writes queue here, not at the file's lock
	reader *pool
	clock  func() time.Time
}

// Options are what a store needs from outside. The zero value is usable.
type Options struct {
	Now func() time.Time // the clock; nil for time.Now
}

// Open opens the database file at path, makes it if there is none, and brings
// it up to this program's schema. The folder must exist. A file that a newer
// program wrote, and one that is no Benchproof data, is fault.Invalid.
func Open(ctx context.Context, path string, opts Options) (*Store, error) {
	s := &Store{clock: opts.Now}
	if s.clock == nil {
		s.clock = time.Now
	}
	if err := s.open(ctx, path); err != nil {
		return nil, fmt.Errorf("open %s: %w", path, refuse(err))
	}
	return s, nil
}

// open makes both pools; the readers come after the migrations, so that none
// ever sees half a schema.
func (s *Store) open(ctx context.Context, path string) error {
	if err := touch(path); err != nil {
		return err
	}
	if err := checkOwner(ctx, path); err != nil {
		return err
	}
	writer, err := openPool(dsn(path, writing), 1)
	if err != nil {
		return err
	}
	if err := migrate(ctx, writer.db); err != nil {
		return errors.Join(err, writer.close())
	}
	reader, err := openPool(dsn(path, reading), max(4, runtime.GOMAXPROCS(0)))
	if err == nil {
		err = reader.db.PingContext(ctx)
	}
	if err != nil {
		return errors.Join(err, writer.close())
	}
	s.writer, s.reader = writer, reader
	return nil
}

// Close waits for running calls and closes the file. The store is of no use
// afterwards.
func (s *Store) Close() error {
	return errors.Join(s.reader.close(), s.writer.close())
}

// The two ways to use the file. FULL syncs the log at every commit, so that an
// answered save survives a power cut; immediate takes the write lock at BEGIN,
// so that no transaction fails halfway for want of it.
const (
	writing = "_busy_timeout=5000&_foreign_keys=1&_dqs=0&_journal_mode=WAL&_synchronous=FULL&_txlock=immediate"
	reading = "_busy_timeout=5000&_foreign_keys=1&_dqs=0&_query_only=1&_synchronous=FULL"
)

func dsn(path, settings string) string {
	return "file:" + (&url.URL{Path: path}).EscapedPath() + "?" + settings
}

// touch makes the file, readable by its owner alone since it holds password
// hashes, and puts its name on disk; SQLite gives its log the same rights.
func touch(path string) error {
	file, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
	if errors.Is(err, fs.ErrExist) {
		return nil
	}
	if err != nil {
		return err
	}
	return errors.Join(file.Close(), syncFolder(filepath.Dir(path)))
}

// syncFolder puts the names in a folder on disk.
func syncFolder(path string) error {
	folder, err := os.Open(path)
	if err != nil {
		return err
	}
	return errors.Join(folder.Sync(), folder.Close())
}
