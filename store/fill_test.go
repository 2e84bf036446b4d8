package store_test

import (
	"fmt"
	"reflect"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
)

// filler sets every field below a value to something of its own, so that a
// field which a round trip through the database forgets, or mixes up with its
// neighbour, shows.
type filler struct{ n int64 }

// filled gives a T with every field set.
func filled[T any](t testing.TB) T {
	t.Helper()
	var value T
	(&filler{}).fill(t, reflect.ValueOf(&value).Elem(), "")
	return value
}

func (f *filler) fill(t testing.TB, v reflect.Value, name string) {
	t.Helper()
	f.n++
	switch v.Interface().(type) {
	case measure.Number:
		v.Set(reflect.ValueOf(measure.Ratio(f.n, 7)))
		return
	case time.Time:
		v.Set(reflect.ValueOf(time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC).AddDate(0, 0, int(f.n))))
		return
	}
	switch v.Kind() {
	case reflect.String:
		v.SetString(fmt.Sprintf("%s %d: ½ \\ tab\tnew\nline\\n ‘quoted’ 'sql'; \"%%\"", name, f.n))
	case reflect.Int, reflect.Int64:
		v.SetInt(f.n)
	case reflect.Bool:
		v.SetBool(true)
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 2, 2))
		for i := range v.Len() {
			f.fill(t, v.Index(i), name)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			f.fill(t, v.Field(i), v.Type().Field(i).Name)
		}
	default:
		t.Fatalf("fill cannot set %s, a %s: teach it, and see that the store keeps such a field", name, v.Type())
	}
}

// same fails the test with the differences, if there are any.
func same(t testing.TB, what string, got, want any) {
	t.Helper()
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", what, diff)
	}
}
