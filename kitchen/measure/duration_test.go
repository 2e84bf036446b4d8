package measure_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

func TestDurations(t *testing.T) {
	for _, row := range tables.Read(t, "durations.txt", 2) {
		t.Run(row[0], func(t *testing.T) {
			var got []string
			for _, d := range measure.Durations(row[0]) {
				got = append(got, tables.Range(d.Minutes))
			}
			if text := strings.Join(got, ", "); text != row[1] && !(text == "" && row[1] == "none") {
				t.Errorf("minutes = %q, want %q", text, row[1])
			}
		})
	}
}

func TestDurationsSayWhereTheyStand(t *testing.T) {
	text := "Prove é for 1½ hours. Bake 10 to 12 min, rest overnight."
	var got []string
	for _, d := range measure.Durations(text) {
		if text[d.At:d.At+len(d.Text)] != d.Text {
			t.Errorf("%q does not stand at %d", d.Text, d.At)
		}
		got = append(got, d.Text)
	}
	if diff := cmp.Diff([]string{"1½ hours", "10 to 12 min", "overnight"}, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func TestFormatMinutesReadsBack(t *testing.T) {
	for _, r := range []string{"3/4", "9", "9..11", "60", "75", "45..60", "2880"} {
		text := "wait " + measure.FormatMinutes(span(t, r))
		got := measure.Durations(text)
		if len(got) != 1 || tables.Range(got[0].Minutes) != r {
			t.Errorf("Durations(%q) = %v, want %s", text, got, r)
		}
	}
}
