package store_test

import (
	"bufio"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/store"
)

// childPath, when set, makes the test program the one that is killed.
const childPath = "BENCHPROOF_TEST_SAVE_INTO"

func TestMain(m *testing.M) {
	if path := os.Getenv(childPath); path != "" {
		fmt.Fprintln(os.Stderr, saveUntilKilled(path))
		os.Exit(1)
	}
	os.Exit(m.Run())
}

// saveUntilKilled saves from two sides at once and says each save once it is
// answered: "pitch ID" for a new row, "revision N" for a changed one. It stops
// by itself only on an error, or when far more was saved than is ever read.
func saveUntilKilled(path string) error {
	ctx := context.Background()
	st, err := store.Open(ctx, path, store.Options{})
	if err != nil {
		return err
	}
	failed := make(chan error, 2)
	go func() {
		for range 100_000 {
			id, err := st.AddPitch(ctx, episode.Pitch{Dish: "dish", Who: strings.Repeat("who ", 300), Times: 1})
			if err != nil {
				failed <- err
				return
			}
			fmt.Printf("pitch %d\n", id)
			if err := st.DeletePitch(ctx, id); err != nil { // so that there is always room
				failed <- err
				return
			}
		}
		failed <- nil
	}()
	go func() {
		for range 100_000 {
			e, err := st.Episode(ctx, 1)
			if err == nil {
				e.Notes = fmt.Sprint("revision ", e.Revision+1)
				err = st.SaveBrief(ctx, e)
			}
			if err != nil {
				failed <- err
				return
			}
			fmt.Printf("revision %d\n", e.Revision+1)
		}
		failed <- nil
	}()
	return <-failed
}

// Killed without warning in the middle of writing, again and again, the file
// is whole, opens, and holds every save that was answered.
func TestAnsweredSavesSurviveAKill(t *testing.T) {
	path := filepath.Join(t.TempDir(), "show.db")
	first, err := store.Open(t.Context(), path, store.Options{})
	ok(t, err)
	addEpisode(t, first, "one")
	ok(t, first.Close())

	answered := 0
	for round := range 5 {
		said := killAfter(t, path, 40*(round+1))
		answered += len(said)
		st, err := store.Open(t.Context(), path, store.Options{})
		ok(t, err)
		e := must(st.Episode(t.Context(), 1))(t)
		if want := fmt.Sprint("revision ", e.Revision); e.Revision > 1 && e.Notes != want {
			t.Errorf("round %d: half a save: revision %d with notes %q", round, e.Revision, e.Notes)
		}
		for _, line := range said {
			what, number, _ := strings.Cut(line, " ")
			n := must(strconv.ParseInt(number, 10, 64))(t)
			if what == "revision" && int64(e.Revision) < n {
				t.Errorf("round %d: revision %d was answered, %d is there", round, n, e.Revision)
			}
			if what == "pitch" && countWhere(t, st, "pitch", "pitch_id", n) != 1 {
				t.Errorf("round %d: pitch %d was answered and is gone", round, n)
			}
		}
		backup := filepath.Join(t.TempDir(), "check.db")
		ok(t, st.Backup(t.Context(), backup))
		ok(t, store.CheckBackup(t.Context(), backup))
		ok(t, st.Close())
	}
	t.Logf("%d saves answered before 5 kills, none lost", answered)
}

func countWhere(t testing.TB, st *store.Store, table, column string, value any) (n int) {
	t.Helper()
	ok(t, st.Raw().QueryRowContext(t.Context(), fmt.Sprintf("SELECT count(*) FROM %s WHERE %s = ?1", table, column), value).Scan(&n))
	return n
}

// killAfter runs the saving program, kills it once it has answered so many
// saves, and gives all that it had answered by then.
func killAfter(t *testing.T, path string, saves int) (said []string) {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), time.Minute)
	defer cancel()
	child := exec.CommandContext(ctx, must(os.Executable())(t))
	child.Env = append(os.Environ(), childPath+"="+path)
	var trouble strings.Builder
	child.Stderr = &trouble
	pipe := must(child.StdoutPipe())(t)
	ok(t, child.Start())
	lines := bufio.NewScanner(pipe)
	for lines.Scan() {
		said = append(said, lines.Text())
		if len(said) == saves {
			ok(t, child.Process.Kill())
		}
	}
	if err := child.Wait(); err == nil || len(said) < saves {
		t.Fatalf("the saving program ended by itself after %d saves: %v %s", len(said), err, trouble.String())
	}
	return said
}
