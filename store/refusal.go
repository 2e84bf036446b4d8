package store

import (
	"errors"

	"modernc.org/sqlite"
	sqlite3 "modernc.org/sqlite/lib"

	"benchproof/kitchen/fault"
)

// ErrTried is in the chain of the fault.Conflict that refuses to change a
// tried version, to tell it from a stale save.
var ErrTried = errors.New("tried version")

func tried() error {
	return &fault.Error{
		Kind: fault.Conflict,
		Say:  "This version was tried at the bench or has gone out, so it stays as it is. Save yours as a new version.",
		Err:  ErrTried,
	}
}

// refuse turns the database's refusals into faults, by their code: what a
// person can put right gets a sentence. Faults and all else pass through.
// Source of the codes: https://www.sqlite.org/rescode.html.
func refuse(err error) error {
	var refusal *sqlite.Error
	var known *fault.Error
	if errors.As(err, &known) || !errors.As(err, &refusal) {
		return err
	}
	switch refusal.Code() {
	case sqlite3.SQLITE_CONSTRAINT_TRIGGER:
		return tried()
	case sqlite3.SQLITE_CONSTRAINT_UNIQUE, sqlite3.SQLITE_CONSTRAINT_PRIMARYKEY:
		return because(fault.Conflict, "There is one like this already. Choose another name.", err)
	case sqlite3.SQLITE_CONSTRAINT_FOREIGNKEY:
		return because(fault.NotFound, "What this belongs to is not there. It may have been deleted.", err)
	case sqlite3.SQLITE_CONSTRAINT_CHECK, sqlite3.SQLITE_CONSTRAINT_NOTNULL, sqlite3.SQLITE_CONSTRAINT_DATATYPE:
		return because(fault.Invalid, "A choice or number here is not one that can be kept. Check them and save again.", err)
	}
	switch refusal.Code() & 0xff {
	case sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED:
		return because(fault.Busy, "The data is in use elsewhere and nothing was saved. Try again in a moment.", err)
	case sqlite3.SQLITE_FULL:
		return because(fault.Busy, "The disk is full and nothing was saved. Make room, then try again.", err)
	case sqlite3.SQLITE_TOOBIG:
		return because(fault.TooLarge, "This is more text than one entry can hold. Shorten it.", err)
	case sqlite3.SQLITE_NOTADB:
		return because(fault.Invalid, "This file is not Benchproof data, or it is damaged. Restore a backup.", err)
	case sqlite3.SQLITE_CORRUPT:
		return because(fault.Invalid, "The data file is damaged. Restore a backup.", err)
	}
	return err
}

func because(kind fault.Kind, say string, cause error) error {
	return &fault.Error{Kind: kind, Say: say, Err: cause}
}
