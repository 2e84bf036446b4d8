package views_test

import (
	"testing"

	"benchproof/views"
)

func TestFindingIsNamedByWhatItHas(t *testing.T) {
	for want, f := range map[string]views.FindingRow{
		"22 minutes, written 12 minutes": {Said: "22 minutes", Written: "12 minutes"},
		"1 tablespoon":                   {Written: "1 tablespoon"},
		"half a teaspoon":                {Said: "half a teaspoon"},
	} {
		if got := f.Named(); got != want {
			t.Errorf("%+v is named %q, want %q", f, got, want)
		}
	}
}
