package measure_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

var update = flag.Bool("update", false, "rewrite the golden files; read the difference before it is committed")

// golden compares got with testdata/name, or rewrites that with -update.
func golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("%s (-want +got):\n%s", name, diff)
	}
}

// The ladder of spoons and cups from an eighth of a teaspoon to two cups, as
// each system writes it: read it over when it changes.
func TestLadderOfSpoons(t *testing.T) {
	var text strings.Builder
	text.WriteString("# What Hand.Write makes of so many teaspoons, given in teaspoons.\n# Columns: teaspoons | US customary | metric | Australian | Japanese\n\n")
	var eighths []int64
	for n := int64(1); n <= 24; n++ {
		eighths = append(eighths, n)
	}
	for n := int64(28); n <= 96; n += 4 {
		eighths = append(eighths, n)
	}
	for n := int64(104); n <= 800; n += 8 {
		eighths = append(eighths, n)
	}
	for _, n := range eighths {
		tsp := measure.Ratio(n, 8)
		fmt.Fprintf(&text, "%s", tables.Plain(measure.FormatNumber(tsp)))
		for _, s := range []measure.System{measure.US, measure.Metric, measure.Australian, measure.Japanese} {
			shown := measure.Hand{System: s}.Write(measure.Of(tsp, measure.Teaspoon))
			off := ""
			if shown.IsOff() {
				off = " (" + measure.FormatDecimal(shown.ErrorPercent, 1) + " % off)"
			}
			fmt.Fprintf(&text, " | %s%s", tables.Plain(shown.Text), off)
		}
		text.WriteString("\n")
	}
	golden(t, "spoons.golden", text.String())
}

// Common amounts by weight and volume in each system's own measures.
func TestOneAmountInEverySystem(t *testing.T) {
	var text strings.Builder
	text.WriteString("# What Hand.InVolume and Hand.InMass make of so many mL and g.\n# Columns: mL or g | system | volume | mass\n\n")
	for _, n := range []int64{1, 2, 5, 7, 10, 15, 20, 25, 30, 40, 50, 60, 75, 80, 100, 120, 125, 150, 175, 200, 225, 240, 250, 300, 340, 375, 400, 450, 500, 568, 600, 750, 900, 1000, 1250, 1500, 2000, 2500, 4000, 10000} {
		r := measure.One(measure.Whole(n))
		for _, s := range measure.Systems() {
			h := measure.Hand{System: s}
			fmt.Fprintf(&text, "%d | %s | %s | %s\n", n, s, tables.Plain(h.InVolume(r).Text), tables.Plain(h.InMass(r).Text))
		}
	}
	golden(t, "systems.golden", text.String())
}

// Lines of a recipe scaled as a show scales them, in a US and a metric kitchen.
func TestScaledLines(t *testing.T) {
	var text strings.Builder
	text.WriteString("# What Hand.Write makes of an amount times a factor.\n# Columns: amount | factor | US customary | metric\n\n")
	factors := []string{"1/4", "1/3", "1/2", "2/3", "3/4", "1", "5/4", "4/3", "3/2", "2", "5/2", "3", "5", "12"}
	for _, exact := range []string{
		"1/8 tsp", "1/4 tsp", "1/2 tsp", "1 tsp", "3/2 tsp", "9/4 tsp", "1 tbsp", "2 tbsp", "1/4 cup", "1/3 cup", "1/2 cup", "3/4 cup", "1 cup", "9/4 cup",
		"2..3 tbsp", "1/4..1/2 tsp", "1..3/2 cup", "7 g", "125 g", "350 g", "1 kg", "200..250 g", "4 oz", "1 lb", "250 ml", "1 l", "1 pinch", "3 clove", "1 stick", "1 tin",
		"2", "3", "2..3", "1 sprig", "1 bunch",
	} {
		for _, by := range factors {
			a := amount(t, exact).Scale(num(t, by))
			fmt.Fprintf(&text, "%s | %s", tables.Plain(amount(t, exact).String()), by)
			for _, s := range []measure.System{measure.US, measure.Metric} {
				shown := measure.Hand{System: s}.Write(a)
				off := ""
				if shown.IsOff() {
					off = " (" + measure.FormatDecimal(shown.ErrorPercent, 1) + " % off)"
				}
				fmt.Fprintf(&text, " | %s%s", tables.Plain(shown.Text), off)
			}
			text.WriteString("\n")
		}
	}
	golden(t, "scaled.golden", text.String())
}
