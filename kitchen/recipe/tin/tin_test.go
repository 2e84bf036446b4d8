package tin_test

import (
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/tin"
)

func parse(t testing.TB, text string) tin.Tin {
	t.Helper()
	got, err := tin.Parse(text)
	if err != nil {
		t.Fatalf("Parse(%q): %v", text, err)
	}
	return got
}

// TestPansByGeometry runs every row of testdata/pans.txt, which names its source.
func TestPansByGeometry(t *testing.T) {
	raw, err := os.ReadFile("testdata/pans.txt")
	if err != nil {
		t.Fatal(err)
	}
	rows := 0
	for row := range strings.Lines(string(raw)) {
		if row = strings.TrimSpace(row); row == "" || strings.HasPrefix(row, "#") {
			continue
		}
		rows++
		cols := strings.Split(row, " | ")
		t.Run(cols[0], func(t *testing.T) {
			ml, ok := parse(t, cols[0]).Volume()
			if !ok {
				t.Fatal("no volume")
			}
			wantCups, _ := strconv.ParseFloat(cols[1], 64)
			wantML, _ := strconv.ParseFloat(cols[2], 64)
			cups := ml.Quo(measure.MustNumber("236.5882365")).Float()
			if math.Abs(cups-wantCups) > 0.006 || math.Abs(ml.Float()-wantML) > 0.6 {
				t.Errorf("holds %.2f cups, %.0f mL; want %s cups, %s mL", cups, ml.Float(), cols[1], cols[2])
			}
		})
	}
	if rows != 11 {
		t.Errorf("ran %d rows, want 11", rows)
	}
}

// Worked volumes in mL: "Conical Frustum Formulas" for cone and frustum; the
// ring by definition, π (R² − r²) h.
func TestVolumes(t *testing.T) {
	for _, tt := range []struct {
		tin  string
		want float64
	}{
		{"20/16 x 5 cm round", 1277.6}, // frustum R 10, r 8, h 5
		{"10 x 12 cm cone", 314.2},     // cone r 5, h 12
		{"20 x 6 x 8 cm ring", 2287.1}, // ring R 10, r 3, h 8
		{"20 x 30 x 5 cm", 3000},       // definition
		{"200 x 300 x 50 mm", 3000},    // the same in millimetres
		{"20 x 5 cm square", 2000},     // definition
		{"two 20 x 5 cm square", 4000}, // twice
		{"3 tins of 20 x 5 cm square", 6000},
	} {
		t.Run(tt.tin, func(t *testing.T) {
			got, ok := parse(t, tt.tin).Volume()
			if !ok || math.Abs(got.Float()-tt.want) > 0.05 {
				t.Errorf("Volume = %.2f, %t; want %.1f", got.Float(), ok, tt.want)
			}
		})
	}
}

// Ratios of areas at the same depth, derived from the definitions: squares of
// the diameters for round tins, π/4 between round and square.
func TestRatioByArea(t *testing.T) {
	for _, tt := range []struct {
		from, to string
		want     float64
		within   float64
	}{
		{"20 cm round", "23 cm round", 1.3225, 0},
		{"20 cm round", "18 cm round", 0.81, 0},
		{"8 in round", "9 in round", 1.265625, 0},
		{"9 in round", "8 in square", 1.006, 0.0005},
		{"8 in square", "8 in round", 0.785, 0.0005},
		{"20 cm", "20 cm", 1, 0},
		{"20", "23", 1.3225, 0},
		{"8", "9", 1.265625, 0},
		{"20 cm square", "20 x 40 cm", 2, 0},
		{"20 cm round", "two 20 cm round", 2, 0},
	} {
		t.Run(tt.from+" to "+tt.to, func(t *testing.T) {
			got, by, err := tin.Ratio(parse(t, tt.from), parse(t, tt.to))
			if err != nil || by != "area" || math.Abs(got.Float()-tt.want) > tt.within+1e-12 {
				t.Errorf("Ratio = %v by %q, %v; want %v by area", got.Float(), by, err, tt.want)
			}
		})
	}
}

func TestRatioByVolume(t *testing.T) {
	got, by, err := tin.Ratio(parse(t, "20 x 5 cm round"), parse(t, "20 x 10 cm round"))
	if err != nil || by != "volume" || !got.Equal(measure.Whole(2)) {
		t.Errorf("Ratio = %v by %q, %v; want 2 by volume", got, by, err)
	}
	if _, _, err := tin.Ratio(parse(t, "5 cm cone"), parse(t, "20 cm round")); fault.KindOf(err) != fault.Invalid {
		t.Errorf("a cone without a depth was compared: %v", err)
	}
}

func TestShapes(t *testing.T) {
	for _, tt := range []struct {
		text         string
		shape        tin.Shape
		across, wide string
		deep, count  string
	}{
		{"23 cm tart tin", tin.Round, "23", "0", "0", "1"},
		{"23cm round cake tin", tin.Round, "23", "0", "0", "1"},
		{"9-inch springform", tin.Round, "1143/50", "0", "0", "1"},
		{"8 x 8 in square", tin.Square, "508/25", "0", "0", "1"},
		{"20 × 30 cm tray", tin.Rectangular, "20", "30", "0", "1"},
		{"13 x 9 x 2 in cake tin", tin.Rectangular, "1651/50", "1143/50", "127/25", "1"},
		{"23 by 13 by 7 cm loaf", tin.Loaf, "23", "13", "7", "1"},
		{"25 x 7 cm ring", tin.Ring, "25", "7", "0", "1"},
		{"12 cones 5 x 12 cm", tin.Cone, "5", "0", "12", "12"},
		{"two 20 cm round", tin.Round, "20", "0", "0", "2"},
		{`9" pie`, tin.Round, "1143/50", "0", "0", "1"},
	} {
		t.Run(tt.text, func(t *testing.T) {
			got := parse(t, tt.text)
			for _, side := range []struct {
				name string
				got  measure.Number
				want string
			}{{"across", got.Across, tt.across}, {"wide", got.Wide, tt.wide}, {"deep", got.Deep, tt.deep}, {"count", got.Count, tt.count}} {
				if side.got.String() != side.want {
					t.Errorf("%s = %s, want %s", side.name, side.got, side.want)
				}
			}
			if got.Shape != tt.shape {
				t.Errorf("shape %q, want %q", got.Shape, tt.shape)
			}
		})
	}
}

func TestNoTin(t *testing.T) {
	for _, text := range []string{"", "a tin", "round", "0 cm round", "-20 cm", "20 cm ring", "20 x 30 square", "7 x 25 cm ring x 3",
		"20 cm x 8 in", "1 x 2 x 3 x 4 cm", "20 x 20 cm ring", strings.Repeat("9", 200)} {
		t.Run(text, func(t *testing.T) {
			got, err := tin.Parse(text)
			if fault.KindOf(err) != fault.Invalid || fault.Say(err) == "" || fault.Field(err) != "tin" {
				t.Errorf("Parse = %+v, %v; want an Invalid fault on tin", got, err)
			}
		})
	}
}
