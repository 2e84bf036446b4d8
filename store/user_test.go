package store_test

import (
	"errors"
	"fmt"
	"sync"
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/store"
)

func TestUsers(t *testing.T) {
	st := open(t)
	if n := must(st.CountUsers(t.Context()))(t); n != 0 {
		t.Errorf("CountUsers = %d in a new store", n)
	}
	ina := must(st.AddFirstUser(t.Context(), "Ina", "hash 1"))(t)
	bo := must(st.AddUser(t.Context(), "bo", "hash 2"))(t)
	if n := must(st.CountUsers(t.Context()))(t); n != 2 {
		t.Errorf("CountUsers = %d, want 2", n)
	}
	same(t, "Users, by name", must(st.Users(t.Context()))(t), []store.User{{ID: bo, Name: "bo", PasswordHash: "hash 2"}, {ID: ina, Name: "Ina", PasswordHash: "hash 1"}})
	for _, name := range []string{"Ina", "ina", "INA"} {
		same(t, name, must(st.UserByName(t.Context(), name))(t), store.User{ID: ina, Name: "Ina", PasswordHash: "hash 1"})
	}
	for _, name := range []string{"", "in", "Ina ", "%", "Ina' OR '1'='1"} {
		_, err := st.UserByName(t.Context(), name)
		wantFault(t, err, fault.NotFound)
	}
}

func TestANameIsTakenOnce(t *testing.T) {
	st := open(t)
	must(st.AddUser(t.Context(), "Ina", "hash"))(t)
	_, err := st.AddUser(t.Context(), "iNa", "another")
	wantFault(t, err, fault.Conflict)
	_, err = st.AddUser(t.Context(), "", "another")
	wantFault(t, err, fault.Invalid)
}

func TestSetPassword(t *testing.T) {
	st := open(t)
	must(st.AddUser(t.Context(), "Ina", "old"))(t)
	ok(t, st.SetPassword(t.Context(), "ina", "new"))
	if got := must(st.UserByName(t.Context(), "Ina"))(t).PasswordHash; got != "new" {
		t.Errorf("PasswordHash = %q", got)
	}
	wantFault(t, st.SetPassword(t.Context(), "nobody", "new"), fault.NotFound)
}

func TestOfManyFirstUsersOneIsFirst(t *testing.T) {
	st := open(t)
	const visitors = 8
	errs := make([]error, visitors)
	var group sync.WaitGroup
	for i := range visitors {
		group.Go(func() { _, errs[i] = st.AddFirstUser(t.Context(), fmt.Sprint("visitor ", i), "hash") })
	}
	group.Wait()
	owners := 0
	for _, err := range errs {
		if err == nil {
			owners++
		} else {
			wantFault(t, err, fault.Forbidden)
		}
	}
	if n := must(st.CountUsers(t.Context()))(t); owners != 1 || n != 1 {
		t.Errorf("%d calls won and there are %d users, want 1 and 1: %v", owners, n, errors.Join(errs...))
	}
}
