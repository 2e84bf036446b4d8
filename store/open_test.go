package store_test

import (
	"context"
	"database/sql"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/store"
)

func TestOpenMakesAShowOnAnyPath(t *testing.T) {
	for _, name := range []string{"show.db", "my show.db", "100 % café?.db", "a#b&c=d.db", "semi;colon'quote.db"} {
		t.Run(name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), name)
			st := openAt(t, path, nil)
			ok(t, st.SaveShow(t.Context(), renamed(t, st, name)))
			info, err := os.Stat(path)
			ok(t, err)
			if info.Size() == 0 && len(must(os.ReadFile(path+"-wal"))(t)) == 0 {
				t.Errorf("the show is not in %s", path)
			}
		})
	}
}

func renamed(t *testing.T, st *store.Store, name string) episode.Show {
	t.Helper()
	show := must(st.Show(t.Context()))(t)
	show.Name = name
	return show
}

func TestOpenKeepsTheFilesToTheirOwner(t *testing.T) {
	path := filepath.Join(t.TempDir(), "show.db")
	st := openAt(t, path, nil)
	addEpisode(t, st, "one")
	for _, file := range []string{path, path + "-wal", path + "-shm"} {
		info, err := os.Stat(file)
		ok(t, err)
		if mode := info.Mode().Perm(); mode != 0o600 {
			t.Errorf("%s has mode %o, want 600", filepath.Base(file), mode)
		}
	}
}

func TestOpenAgainFindsWhatWasSaved(t *testing.T) {
	path := filepath.Join(t.TempDir(), "show.db")
	first, err := store.Open(t.Context(), path, store.Options{})
	ok(t, err)
	id := addEpisode(t, first, "kept")
	ok(t, first.Close())
	if got := must(openAt(t, path, nil).Episode(t.Context(), id))(t); got.Title != "kept" {
		t.Errorf("Episode = %+v", got)
	}
}

// Two programs on one file, such as the server and a command, share it.
func TestTwoStoresOnOneFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "show.db")
	one, two := openAt(t, path, nil), openAt(t, path, nil)
	id := addEpisode(t, one, "from one")
	e := must(two.Episode(t.Context(), id))(t)
	e.Title = "from two"
	ok(t, two.SaveBrief(t.Context(), e))
	if got := must(one.Episode(t.Context(), id))(t); got.Title != "from two" {
		t.Errorf("the first store sees %q", got.Title)
	}
}

func TestOpenRefuses(t *testing.T) {
	tests := []struct {
		name string
		make func(t *testing.T, path string)
		kind fault.Kind
		say  string
	}{
		{"text", func(t *testing.T, path string) {
			ok(t, os.WriteFile(path, []byte(strings.Repeat("This is a shopping list. ", 200)), 0o600))
		}, fault.Invalid, "not Benchproof data"},
		{"another program's database", func(t *testing.T, path string) {
			execFile(t, path, "CREATE TABLE contact (name TEXT)")
		}, fault.Invalid, "another program"},
		{"a newer program's data", func(t *testing.T, path string) {
			st, err := store.Open(t.Context(), path, store.Options{})
			ok(t, err)
			ok(t, st.Close())
			execFile(t, path, "INSERT INTO goose_db_version (version_id, is_applied) VALUES (99999, 1)")
		}, fault.Invalid, "newer Benchproof"},
		{"a folder", func(t *testing.T, path string) { ok(t, os.Mkdir(path, 0o700)) }, fault.Internal, ""},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "show.db")
			test.make(t, path)
			before, _ := os.ReadFile(path)
			_, err := store.Open(t.Context(), path, store.Options{})
			if err == nil || fault.KindOf(err) != test.kind || !strings.Contains(fault.Say(err), test.say) {
				t.Errorf("Open: kind %d, says %q, want kind %d and %q: %v", fault.KindOf(err), fault.Say(err), test.kind, test.say, err)
			}
			if after, _ := os.ReadFile(path); string(after) != string(before) {
				t.Error("the refused file was changed")
			}
		})
	}
}

func TestOpenInAMissingFolderNamesThePath(t *testing.T) {
	path := filepath.Join(t.TempDir(), "missing", "show.db")
	_, err := store.Open(t.Context(), path, store.Options{})
	if err == nil || !errors.Is(err, os.ErrNotExist) || !strings.Contains(err.Error(), path) {
		t.Errorf("Open: %v", err)
	}
}

// execFile runs SQL on a database file from outside.
func execFile(t testing.TB, path string, text string, args ...any) {
	t.Helper()
	db, err := sql.Open("sqlite", "file:"+path+"?_foreign_keys=1")
	ok(t, err)
	defer db.Close()
	_, err = db.ExecContext(t.Context(), text, args...)
	ok(t, err)
}

// A PRAGMA belongs to a connection, so each one must have them all.
// Source of the values: https://www.sqlite.org/pragma.html.
func TestEveryConnectionIsSetUp(t *testing.T) {
	st := open(t)
	tests := []struct{ pragma, writer, reader string }{
		{"foreign_keys", "1", "1"},
		{"journal_mode", "wal", "wal"},
		{"synchronous", "2", "2"}, // FULL
		{"busy_timeout", "5000", "5000"},
		{"query_only", "0", "1"},
	}
	for _, test := range tests {
		t.Run(test.pragma, func(t *testing.T) {
			var got string
			ok(t, st.Raw().QueryRowContext(t.Context(), "PRAGMA "+test.pragma).Scan(&got))
			if got != test.writer {
				t.Errorf("writer has %s, want %s", got, test.writer)
			}
			readers := must(st.ReaderSettings(t.Context(), test.pragma))(t)
			if len(readers) < 4 {
				t.Errorf("%d readers, want at least 4", len(readers))
			}
			for i, got := range readers {
				if got != test.reader {
					t.Errorf("reader %d has %s, want %s", i, got, test.reader)
				}
			}
		})
	}
	if n := st.Raw().Stats().MaxOpenConnections; n != 1 {
		t.Errorf("%d writers, want 1", n)
	}
}

// With double-quoted strings off, a misspelt column is an error, not a text.
func TestAMisspeltColumnIsAnError(t *testing.T) {
	if _, err := open(t).Raw().ExecContext(t.Context(), `SELECT "no_such_column" FROM show`); err == nil {
		t.Error("a double-quoted name was taken for a string")
	}
}

func TestCallsStopWithTheirContext(t *testing.T) {
	st := open(t)
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	if _, err := st.Season(ctx); !errors.Is(err, context.Canceled) {
		t.Errorf("Season: %v, want context.Canceled", err)
	}
	if _, err := st.AddPitch(ctx, episode.Pitch{Dish: "toast", Times: 1}); !errors.Is(err, context.Canceled) {
		t.Errorf("AddPitch: %v, want context.Canceled", err)
	}
	if got := must(st.Pitches(t.Context()))(t); len(got) != 0 {
		t.Errorf("a stopped write left %+v", got)
	}
}

func TestAnEmptyStoreIsASetUpShow(t *testing.T) {
	st, clock := openClocked(t)
	same(t, "Show", must(st.Show(t.Context()))(t), episode.Show{
		Name: "My show", System: "metric", Oven: "conventional", TimeZone: "UTC", Currency: "EUR",
		WordsPerMinute: 150, DescriptionLimit: 5000, Revision: 1,
	})
	if rows := must(st.Season(t.Context()))(t); len(rows) != 0 {
		t.Errorf("Season = %+v", rows)
	}
	clock.pass(time.Hour)
	if _, err := time.LoadLocation(must(st.Show(t.Context()))(t).TimeZone); err != nil {
		t.Error(err)
	}
}

func TestSaveShowKeepsEveryField(t *testing.T) {
	st := open(t)
	show := filled[episode.Show](t)
	show.Revision = 1
	ok(t, st.SaveShow(t.Context(), show))
	show.Revision = 2
	same(t, "Show", must(st.Show(t.Context()))(t), show)
}

func TestAStaleShowIsRefused(t *testing.T) {
	st := open(t)
	mine := must(st.Show(t.Context()))(t)
	theirs := mine
	theirs.Host = "Ina"
	ok(t, st.SaveShow(t.Context(), theirs))
	mine.Host = "Bo"
	wantFault(t, st.SaveShow(t.Context(), mine), fault.Conflict)
	theirs.Revision = 2
	same(t, "Show", must(st.Show(t.Context()))(t), theirs)
}

func TestSaveShowRefusesAPaceOfNothing(t *testing.T) {
	st := open(t)
	show := must(st.Show(t.Context()))(t)
	show.WordsPerMinute = 0
	wantFault(t, st.SaveShow(t.Context(), show), fault.Invalid)
}
