package store

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"time"

	"benchproof/kitchen/fault"
)

// SessionStore keeps sessions for scs: it is an scs.CtxStore.
//
// Of a token only the SHA-256 is kept, so that neither the file nor a backup
// lets anybody in. A token is random and long, so the hash needs no salt and
// may be fast. It does no harm when scs hashes the token as well.
type SessionStore struct{ store *Store }

// Sessions gives the session store of this database.
func (s *Store) Sessions() *SessionStore { return &SessionStore{s} }

// tokenHash is what stands in the database for a session's or a share link's
// token.
func tokenHash(token string) string {
	sum := sha256.Sum256([]byte(token))
	return hex.EncodeToString(sum[:])
}

// FindCtx gives the data of a session that has not expired or ended; found is
// false for an unknown token.
func (s *SessionStore) FindCtx(ctx context.Context, token string) (data []byte, found bool, err error) {
	kept, found, err := s.find(ctx, token)
	return kept.data, found, operation{verb: "find session"}.wrap(err)
}

// keptSession is what a session's row holds.
type keptSession struct {
	data      []byte
	expiresAt time.Time
}

func scanSession(row scanner) (k keptSession, err error) {
	err = row.Scan(&k.data, instant{&k.expiresAt})
	return k, err
}

func (s *SessionStore) find(ctx context.Context, token string) (kept keptSession, found bool, err error) {
	kept, err = one(ctx, s.store.reader, "session", scanSession, `
SELECT data, expires_at
FROM session
WHERE token_hash = ?1
  AND expires_at > ?2
  AND is_ended = 0`, tokenHash(token), instantText(s.store.clock()))
	if err != nil && fault.KindOf(err) == fault.NotFound {
		return keptSession{}, false, nil
	}
	return kept, err == nil, err
}

// CommitCtx keeps the data until expiry, in place of any the token had. An
// ended session stays ended: a page that was under way at the sign-out must
// not undo it.
//
// With an idle time scs commits at every visit, only to move the expiry a
// little. A write must reach the disk, so the expiry is moved only when a
// twentieth of the time left would be gained.
func (s *SessionStore) CommitCtx(ctx context.Context, token string, data []byte, expiry time.Time) error {
	kept, found, err := s.find(ctx, token)
	if err != nil {
		return operation{verb: "keep session"}.wrap(err)
	}
	gained := expiry.Sub(kept.expiresAt)
	if found && bytes.Equal(kept.data, data) && gained >= 0 && gained < expiry.Sub(s.store.clock())/20 {
		return nil
	}
	return s.change(ctx, "keep session", `
INSERT INTO session (token_hash, data, expires_at)
VALUES (?1, ?2, ?3)
ON CONFLICT (token_hash) DO UPDATE
SET data = excluded.data,
    expires_at = excluded.expires_at
WHERE is_ended = 0`, tokenHash(token), data, instantText(expiry))
}

// DeleteCtx ends a session. An unknown token is no error.
func (s *SessionStore) DeleteCtx(ctx context.Context, token string) error {
	return s.change(ctx, "end session", `
UPDATE session
SET data = x'',
    is_ended = 1
WHERE token_hash = ?1`, tokenHash(token))
}

// DeleteAll ends every session, for when a password was lost or replaced.
func (s *SessionStore) DeleteAll(ctx context.Context) error {
	return s.change(ctx, "end all sessions", `
UPDATE session
SET data = x'',
    is_ended = 1`)
}

func (s *SessionStore) change(ctx context.Context, verb, text string, args ...any) error {
	return s.store.write(ctx, operation{verb: verb}, func(t *tx) error {
		_, err := t.change(ctx, text, args...)
		return err
	})
}

// Find is FindCtx without a context, as scs.Store has it.
func (s *SessionStore) Find(token string) (data []byte, found bool, err error) {
	return s.FindCtx(context.Background(), token)
}

// Commit is CommitCtx without a context, as scs.Store has it.
func (s *SessionStore) Commit(token string, data []byte, expiry time.Time) error {
	return s.CommitCtx(context.Background(), token, data, expiry)
}

// Delete is DeleteCtx without a context, as scs.Store has it.
func (s *SessionStore) Delete(token string) error {
	return s.DeleteCtx(context.Background(), token)
}

// DeleteExpiredSessions clears out what has expired, and tells how many. An
// expired session is not found in any case; this only saves room.
func (s *Store) DeleteExpiredSessions(ctx context.Context) (cleared int, err error) {
	err = s.write(ctx, operation{verb: "delete expired sessions"}, func(t *tx) error {
		rows, err := t.change(ctx, `
DELETE FROM session
WHERE expires_at <= ?1`, t.now)
		cleared = int(rows)
		return err
	})
	return cleared, err
}
