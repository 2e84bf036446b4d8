package recipe_test

import (
	"testing"

	"benchproof/kitchen/food"
	"benchproof/seed"
)

// larder is the built-in larder, which the product reads with.
func larder(t testing.TB) *food.Larder {
	t.Helper()
	l, err := seed.Larder()
	if err != nil {
		t.Fatal(err)
	}
	return l
}
