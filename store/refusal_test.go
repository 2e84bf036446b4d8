package store_test

import (
	"database/sql"
	"errors"
	"path/filepath"
	"strings"
	"testing"

	"modernc.org/sqlite"
	sqlite3 "modernc.org/sqlite/lib"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/store"
)

// Each of the database's refusals, brought about for real. Source of the
// codes: https://www.sqlite.org/rescode.html.
func TestRefusalsAreFaultsByTheirCode(t *testing.T) {
	tests := []struct {
		name string
		text string
		code int
		kind fault.Kind
	}{
		{"not unique", "INSERT INTO user (name, password_hash, created_at) VALUES ('Ina', '', ''), ('ina', '', '')", sqlite3.SQLITE_CONSTRAINT_UNIQUE, fault.Conflict},
		{"key taken", "INSERT INTO tick (episode_id, item, ticked_at) VALUES (1, 'a', ''), (1, 'a', '')", sqlite3.SQLITE_CONSTRAINT_PRIMARYKEY, fault.Conflict},
		{"no parent", "INSERT INTO tick (episode_id, item, ticked_at) VALUES (99, 'a', '')", sqlite3.SQLITE_CONSTRAINT_FOREIGNKEY, fault.NotFound},
		{"out of bounds", "UPDATE show SET words_per_minute = 0", sqlite3.SQLITE_CONSTRAINT_CHECK, fault.Invalid},
		{"missing", "UPDATE show SET name = NULL", sqlite3.SQLITE_CONSTRAINT_NOTNULL, fault.Invalid},
		{"of another type", "UPDATE show SET words_per_minute = 'quick'", sqlite3.SQLITE_CONSTRAINT_DATATYPE, fault.Invalid},
		{"tried", "UPDATE version SET text = 'x'", sqlite3.SQLITE_CONSTRAINT_TRIGGER, fault.Conflict},
		{"too big", "UPDATE show SET links = CAST(zeroblob(2000000000) AS TEXT)", sqlite3.SQLITE_TOOBIG, fault.TooLarge},
		{"our own mistake", "SELECT no_such_column FROM show", sqlite3.SQLITE_ERROR, fault.Internal},
	}
	st := open(t)
	addTrial(t, st, addCooking(t, st, "Eggs"), "proved")
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			_, err := st.Raw().ExecContext(t.Context(), test.text)
			var refusal *sqlite.Error
			if !errors.As(err, &refusal) || refusal.Code() != test.code {
				t.Fatalf("the database answered %v, want code %d", err, test.code)
			}
			refused := store.Refuse(err)
			if fault.KindOf(refused) != test.kind {
				t.Errorf("kind %d, want %d: %v", fault.KindOf(refused), test.kind, refused)
			}
			if test.kind != fault.Internal && (fault.Say(refused) == "" || strings.Contains(fault.Say(refused), "constraint")) {
				t.Errorf("says %q", fault.Say(refused))
			}
			if test.code != sqlite3.SQLITE_CONSTRAINT_TRIGGER && !errors.Is(refused, err) {
				t.Error("the cause is lost")
			}
		})
	}
}

func TestALockedFileIsBusy(t *testing.T) {
	path := filepath.Join(t.TempDir(), "show.db")
	st := openAt(t, path, nil)
	impatient, err := sql.Open("sqlite", "file:"+path+"?_busy_timeout=0")
	ok(t, err)
	defer impatient.Close()
	ok(t, st.Transact(t.Context(), "hold the lock", 0, func(func(string, ...any) error) error {
		_, err := impatient.ExecContext(t.Context(), "UPDATE show SET host = 'x'")
		wantFault(t, store.Refuse(err), fault.Busy)
		return nil
	}))
}

func TestAFullDiskLosesNothing(t *testing.T) {
	st := open(t)
	id := must(st.AddPitch(t.Context(), episode.Pitch{Dish: "toast", Times: 1}))(t)
	execRaw(t, st, "PRAGMA max_page_count = 1") // SQLite takes the least it can: what there is
	p := must(st.Pitch(t.Context(), id))(t)
	p.Note = strings.Repeat("a very long note ", 10_000)
	err := st.SavePitch(t.Context(), p)
	wantFault(t, err, fault.Busy)
	if !strings.Contains(fault.Say(err), "disk is full") {
		t.Errorf("says %q", fault.Say(err))
	}
	execRaw(t, st, "PRAGMA max_page_count = 1000000")
	if got := must(st.Pitch(t.Context(), id))(t); got.Note != "" {
		t.Errorf("half of it was saved: %d bytes", len(got.Note))
	}
	ok(t, st.SavePitch(t.Context(), p))
}

func TestRefuseLetsOtherErrorsPass(t *testing.T) {
	for _, err := range []error{nil, errors.New("plain"), fault.Invalidf("name", "Give a name.")} {
		if got := store.Refuse(err); got != err {
			t.Errorf("Refuse(%v) = %v", err, got)
		}
	}
}
