package safety_test

import (
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"benchproof/kitchen/safety"
)

// TestLimitsMatchTheTable holds every limit against the published figures in
// testdata/food-safety.txt, row by row in the same order.
func TestLimitsMatchTheTable(t *testing.T) {
	body, err := os.ReadFile("testdata/food-safety.txt")
	if err != nil {
		t.Fatal(err)
	}
	var rows [][]string
	for line := range strings.Lines(string(body)) {
		if !strings.HasPrefix(line, "#") {
			fields := strings.Split(strings.TrimSpace(line), " | ")
			rows = append(rows, fields)
		}
	}
	limits := safety.Limits()
	if len(rows) != len(limits) {
		t.Fatalf("the table has %d rows, the room %d limits", len(rows), len(limits))
	}
	figure := func(n int) string {
		if n == 0 {
			return "-"
		}
		return fmt.Sprint(n)
	}
	for i, row := range rows {
		l := limits[i]
		t.Run(row[0], func(t *testing.T) {
			if got := []string{figure(l.Celsius), figure(l.Fahrenheit), figure(l.Seconds)}; strings.Join(got, " ") != strings.Join(row[1:4], " ") {
				t.Errorf("%s: °C, °F, seconds are %v, want %v", l.What, got, row[1:4])
			}
			if !strings.Contains(l.Source, row[4]) {
				t.Errorf("%s: source %q does not name %q", l.What, l.Source, row[4])
			}
		})
	}
}

// Both scales of a limit agree to the degree: °C = (°F − 32) × 5/9 (NIST SP 811,
// App. B); the Food Code rounds 155 °F and 57 °C its own way, by less than 1 °C.
func TestLimitsAgreeInBothScales(t *testing.T) {
	for _, l := range safety.Limits() {
		if l.Fahrenheit == 0 {
			continue
		}
		if exact := float64(l.Fahrenheit-32) * 5 / 9; math.Abs(exact-float64(l.Celsius)) > 0.6 {
			t.Errorf("%s: %d °F is %.1f °C, not %d", l.What, l.Fahrenheit, exact, l.Celsius)
		}
	}
}

func TestLimitTemperature(t *testing.T) {
	for want, l := range map[string]safety.Limit{
		"71\u00a0°C (160\u00a0°F)": safety.Custard,
		"8\u00a0°C":                safety.UKCold,
		"":                         safety.TimeAlone,
	} {
		if got := l.Temperature(); got != want {
			t.Errorf("%s: %q, want %q", l.What, got, want)
		}
	}
}
