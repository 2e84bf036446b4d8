package seed_test

import (
	"testing"
	"time"

	"benchproof/seed"
)

func TestDemoIsTheFerryStopKitchen(t *testing.T) {
	show, err := seed.Demo(time.Date(2028, time.February, 29, 9, 0, 0, 0, time.UTC))
	if err != nil {
		t.Fatalf("Demo: %v", err)
	}
	if show.Show.Name != "Ferry Stop Kitchen" || len(show.Episodes) != 8 {
		t.Errorf("Demo is %q with %d episodes, want Ferry Stop Kitchen with 8", show.Show.Name, len(show.Episodes))
	}
	// The Saturday after 29 February 2028, a Tuesday, is 4 March.
	inEdit := show.Episodes[2].Brief.ReleaseOn
	if want := time.Date(2028, time.March, 4, 0, 0, 0, 0, time.UTC); !inEdit.Equal(want) {
		t.Errorf("episode 21 is out on %s, want %s", inEdit, want)
	}
}
