package store_test

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/store"
)

func TestABackupRestoresToTheSameData(t *testing.T) {
	st := open(t)
	f := addFull(t, st, "one")
	version := must(st.Version(t.Context(), f.versionID))(t)
	folder := t.TempDir()
	backup, path := filepath.Join(folder, "back up é%.db"), filepath.Join(folder, "restored.db")
	ok(t, st.Backup(t.Context(), backup))
	before := f.state(t, st)
	ok(t, st.DeleteEpisode(t.Context(), f.episodeID))

	ok(t, store.CheckBackup(t.Context(), backup))
	ok(t, store.RestoreBackup(t.Context(), backup, path))
	restored := openAt(t, path, nil)
	same(t, "the restored episode", f.state(t, restored), before)
	same(t, "the restored version", must(restored.Version(t.Context(), f.versionID))(t), version)
	if left := must(filepath.Glob(filepath.Join(folder, ".benchproof-*")))(t); len(left) != 0 {
		t.Errorf("left behind: %v", left)
	}
	info, err := os.Stat(backup)
	ok(t, err)
	if info.Mode().Perm() != 0o600 {
		t.Errorf("the backup has mode %o, want 600", info.Mode().Perm())
	}
}

// Each backup taken while others write holds whole transactions only: a pitch
// and its namesake are written together.
func TestABackupUnderLoadIsOneMoment(t *testing.T) {
	st := open(t)
	folder := t.TempDir()
	var group sync.WaitGroup
	stop := make(chan struct{})
	group.Go(func() {
		for i := 0; ; i++ {
			select {
			case <-stop:
				return
			default:
			}
			err := st.Transact(t.Context(), "add pair", 0, func(change func(string, ...any) error) error {
				text := "INSERT INTO pitch (dish, who, place, times, note) VALUES (?1, ?2, '', 1, '')"
				if err := change(text, i, "left"); err != nil {
					return err
				}
				return change(text, i, "right")
			})
			if err != nil {
				t.Errorf("add pair: %v", err)
				return
			}
		}
	})
	for i := range 5 {
		backup := filepath.Join(folder, fmt.Sprint(i, ".db"))
		ok(t, st.Backup(t.Context(), backup))
		ok(t, store.CheckBackup(t.Context(), backup))
		copied := openAt(t, backup, nil)
		pairs := map[string]int{}
		for _, p := range must(copied.Pitches(t.Context()))(t) {
			pairs[p.Dish]++
		}
		for dish, n := range pairs {
			if n != 2 {
				t.Errorf("backup %d has %d of pair %s", i, n, dish)
			}
		}
	}
	close(stop)
	group.Wait()
}

func TestABackupNeverTakesAnothersPlace(t *testing.T) {
	st := open(t)
	path := filepath.Join(t.TempDir(), "precious.txt")
	ok(t, os.WriteFile(path, []byte("precious"), 0o600))
	wantFault(t, st.Backup(t.Context(), path), fault.Conflict)
	if got := must(os.ReadFile(path))(t); string(got) != "precious" {
		t.Errorf("the file holds %q", got)
	}
	wantFault(t, st.Backup(t.Context(), filepath.Join(t.TempDir(), "missing", "b.db")), fault.Invalid)
}

func TestCheckBackupRefuses(t *testing.T) {
	st := open(t)
	addFull(t, st, "one")
	folder := t.TempDir()
	good := filepath.Join(folder, "good.db")
	ok(t, st.Backup(t.Context(), good))
	data := must(os.ReadFile(good))(t)
	tests := []struct {
		name string
		make func(t *testing.T, path string)
		say  string
	}{
		{"nothing", func(t *testing.T, path string) {}, "no file"},
		{"a folder", func(t *testing.T, path string) { ok(t, os.Mkdir(path, 0o700)) }, "no file"},
		{"an empty file", func(t *testing.T, path string) { ok(t, os.WriteFile(path, nil, 0o600)) }, "not Benchproof data"},
		{"text", func(t *testing.T, path string) {
			ok(t, os.WriteFile(path, bytes.Repeat([]byte("flour "), 1000), 0o600))
		}, "not Benchproof data"},
		{"another program's database", func(t *testing.T, path string) { execFile(t, path, "CREATE TABLE contact (name TEXT)") }, "not Benchproof data"},
		{"cut short", func(t *testing.T, path string) { ok(t, os.WriteFile(path, data[:len(data)/2], 0o600)) }, "damaged"},
		{"a page of rubbish", func(t *testing.T, path string) {
			broken := bytes.Clone(data)
			copy(broken[len(broken)/2:], bytes.Repeat([]byte{0xa5}, 8192))
			ok(t, os.WriteFile(path, broken, 0o600))
		}, "damaged"},
		{"a loose reference", func(t *testing.T, path string) {
			ok(t, os.WriteFile(path, data, 0o600))
			execFile(t, path, "PRAGMA foreign_keys = 0; DELETE FROM episode")
		}, "damaged"},
		{"a newer program's data", func(t *testing.T, path string) {
			ok(t, os.WriteFile(path, data, 0o600))
			execFile(t, path, "INSERT INTO goose_db_version (version_id, is_applied) VALUES (99999, 1)")
		}, "newer Benchproof"},
	}
	ok(t, store.CheckBackup(t.Context(), good))
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "backup.db")
			test.make(t, path)
			err := store.CheckBackup(t.Context(), path)
			wantFault(t, err, fault.Invalid)
			if !strings.Contains(fault.Say(err), test.say) {
				t.Errorf("says %q, want something with %q", fault.Say(err), test.say)
			}
			to := filepath.Join(t.TempDir(), "restored.db")
			wantFault(t, store.RestoreBackup(t.Context(), path, to), fault.Invalid)
			if _, err := os.Stat(to); err == nil {
				t.Error("the refused backup was restored")
			}
		})
	}
}

// A backup on read-only media is checked and restored without writing there.
func TestCheckBackupLeavesTheFileAlone(t *testing.T) {
	st := open(t)
	folder := t.TempDir()
	backup := filepath.Join(folder, "backup.db")
	ok(t, st.Backup(t.Context(), backup))
	before := must(os.ReadFile(backup))(t)
	ok(t, store.CheckBackup(t.Context(), backup))
	if !bytes.Equal(must(os.ReadFile(backup))(t), before) {
		t.Error("checking changed the backup")
	}
	if entries := must(os.ReadDir(folder))(t); len(entries) != 1 {
		t.Errorf("checking left files: %v", entries)
	}
}

func TestRestoreNeverOverwritesAShow(t *testing.T) {
	st := open(t)
	addEpisode(t, st, "in the backup")
	backup := filepath.Join(t.TempDir(), "backup.db")
	ok(t, st.Backup(t.Context(), backup))
	for _, name := range []string{"show.db", "show.db-wal"} {
		t.Run(name, func(t *testing.T) {
			folder := t.TempDir()
			ok(t, os.WriteFile(filepath.Join(folder, name), []byte("precious"), 0o600))
			wantFault(t, store.RestoreBackup(t.Context(), backup, filepath.Join(folder, "show.db")), fault.Conflict)
			if got := must(os.ReadFile(filepath.Join(folder, name)))(t); string(got) != "precious" {
				t.Errorf("the file holds %q", got)
			}
		})
	}
}
