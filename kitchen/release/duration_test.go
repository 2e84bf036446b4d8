package release_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/release"
)

// TestISODuration: ISO 8601-1:2019, with the examples PT1H30M, P1DT2H and PT45S
// of "DurationString".
func TestISODuration(t *testing.T) {
	for _, test := range []struct{ minutes, want string }{
		{"90", "PT1H30M"}, {"1560", "P1DT2H"}, {"3/4", "PT45S"}, {"0", "PT0S"}, {"-5", "PT0S"}, {"1", "PT1M"}, {"60", "PT1H"},
		{"1440", "P1D"}, {"1441", "P1DT1M"}, {"3/2", "PT1M30S"}, {"1/600", "PT0S"}, {"1/100", "PT1S"}, {"20160", "P14D"},
	} {
		t.Run(test.want, func(t *testing.T) {
			if got := release.ISODuration(measure.MustNumber(test.minutes)); got != test.want {
				t.Errorf("ISODuration(%s) = %q, want %q", test.minutes, got, test.want)
			}
		})
	}
}

// TestISODurationReadsBack adds the parts up again.
func TestISODurationReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		seconds := rapid.Int64Range(0, 40*24*3600).Draw(t, "seconds")
		text := release.ISODuration(measure.Ratio(seconds, 60))
		size := map[byte]int64{'D': 86400, 'H': 3600, 'M': 60, 'S': 1}
		var sum, n int64
		for i := 1; i < len(text); i++ {
			switch c := text[i]; {
			case c >= '0' && c <= '9':
				n = n*10 + int64(c-'0')
			case c != 'T':
				sum, n = sum+n*size[c], 0
			}
		}
		if sum != seconds {
			t.Fatalf("%d s is %q, which adds up to %d", seconds, text, sum)
		}
	})
}

func TestTimesOf(t *testing.T) {
	n := measure.Whole
	want := release.Times{Prepare: n(12), Cook: n(17), Total: n(89)}
	if diff := cmp.Diff(want, release.TimesOf(full().Recipe)); diff != "" {
		t.Errorf("TimesOf (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff(release.Times{}, release.TimesOf(recipe.Recipe{})); diff != "" {
		t.Errorf("TimesOf nothing (-want +got):\n%s", diff)
	}
}
