package store

import (
	"context"
	"errors"

	"benchproof/kitchen/fault"
)

// User is somebody who may sign in.
type User struct {
	ID           int64
	Name         string // unique, whatever the case of a–z
	PasswordHash string // as the caller made it
}

const selectUser = `
SELECT user_id, name, password_hash
FROM user`

func scanUser(row scanner) (u User, err error) {
	err = row.Scan(&u.ID, &u.Name, &u.PasswordHash)
	return u, err
}

const insertUser = `
INSERT INTO user (name, password_hash, created_at)
VALUES (?1, ?2, ?3)`

// insertFirstUser is one statement, so that two visitors cannot both be first.
const insertFirstUser = `
INSERT INTO user (name, password_hash, created_at)
SELECT ?1, ?2, ?3
WHERE NOT EXISTS (SELECT 1 FROM user)`

// CountUsers tells how many people may sign in; 0 before the show is set up.
func (s *Store) CountUsers(ctx context.Context) (int, error) {
	n, err := one(ctx, s.reader, "user", scanned[int], "SELECT count(*) FROM user")
	return n, operation{verb: "count users"}.wrap(err)
}

// Users lists the people who may sign in, by name; at most 100.
func (s *Store) Users(ctx context.Context) ([]User, error) {
	users, err := list(ctx, s.reader, scanUser, selectUser+`
ORDER BY name, user_id
LIMIT 100`)
	return users, operation{verb: "list users"}.wrap(err)
}

// UserByName finds somebody by name, whatever the case of a–z.
func (s *Store) UserByName(ctx context.Context, name string) (User, error) {
	user, err := one(ctx, s.reader, "user", scanUser, selectUser+`
WHERE name = ?1`, name)
	return user, operation{verb: "find user"}.wrap(err)
}

// AddUser adds somebody. A name that is taken is fault.Conflict.
func (s *Store) AddUser(ctx context.Context, name, passwordHash string) (id int64, err error) {
	err = s.write(ctx, operation{verb: "add user"}, func(t *tx) error {
		id, err = t.add(ctx, "user", insertUser, name, passwordHash, t.now)
		return err
	})
	return id, err
}

// AddFirstUser adds the owner, and is fault.Forbidden when there is anybody
// yet. Of two calls at once, one wins.
func (s *Store) AddFirstUser(ctx context.Context, name, passwordHash string) (id int64, err error) {
	err = s.write(ctx, operation{verb: "add first user"}, func(t *tx) error {
		id, err = t.add(ctx, "", insertFirstUser, name, passwordHash, t.now)
		if fault.KindOf(err) == fault.NotFound {
			return because(fault.Forbidden, "The show has an owner already. Sign in instead.", errors.New("a user exists"))
		}
		return err
	})
	return id, err
}

// SetPassword replaces the hash of the user of that name. Sessions under way
// go on: see SessionStore.DeleteAll.
func (s *Store) SetPassword(ctx context.Context, name, passwordHash string) error {
	return s.write(ctx, operation{verb: "set password"}, func(t *tx) error {
		rows, err := t.change(ctx, `
UPDATE user
SET password_hash = ?2
WHERE name = ?1`, name, passwordHash)
		if err == nil && rows == 0 {
			err = missing("user")
		}
		return err
	})
}
