package store_test

import (
	"path/filepath"
	"testing"
	"time"

	"benchproof/store"
)

// testClock is a clock that tests set by hand. It starts at a Monday noon with
// a fraction finer than the store keeps.
type testClock struct{ at time.Time }

func newClock() *testClock {
	return &testClock{time.Date(2026, 3, 9, 12, 0, 0, 123_456_789, time.UTC)}
}

func (c *testClock) now() time.Time { return c.at }

func (c *testClock) pass(d time.Duration) { c.at = c.at.Add(d) }

// stored is the clock's instant as the store gives it back.
func (c *testClock) stored() time.Time { return c.at.Truncate(time.Millisecond) }

// open opens a new store in a folder of the test's own.
func open(t testing.TB) *store.Store {
	t.Helper()
	st, _ := openClocked(t)
	return st
}

func openClocked(t testing.TB) (*store.Store, *testClock) {
	t.Helper()
	clock := newClock()
	return openAt(t, filepath.Join(t.TempDir(), "show.db"), clock), clock
}

func openAt(t testing.TB, path string, clock *testClock) *store.Store {
	t.Helper()
	st, err := store.Open(t.Context(), path, store.Options{Now: clock.now})
	if err != nil {
		t.Fatalf("Open: %v", err)
	}
	t.Cleanup(func() {
		if err := st.Close(); err != nil {
			t.Errorf("Close: %v", err)
		}
	})
	return st
}

// must fails the test on an error, and gives the value otherwise.
func must[T any](value T, err error) func(testing.TB) T {
	return func(t testing.TB) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return value
	}
}
