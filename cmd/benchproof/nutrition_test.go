package main

import (
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

var update = flag.Bool("update", false, "rewrite the golden files")

// figures is the part of the JSON that the documentation promises.
type figures struct {
	EnergyKcal, ProteinG, FatG, SaturatedG, CarbohydrateG, SugarsG, FibreG, SodiumMg *float64
}

type nutritionPromise struct {
	Recipe    figures
	PerPiece  *figures
	Per100g   figures
	Covered   *float64
	Allergens struct{ EU, US, ANZ, Unsure []string }
	PerWhat   string `json:"per100gOf"`
	Notes     []string
}

// nutritionOf runs the command with --json.
func nutritionOf(t *testing.T, in string, args ...string) nutritionPromise {
	t.Helper()
	out, errs, status := command(t, in, append([]string{"nutrition", "--json"}, args...)...)
	if status != 0 || errs != "" {
		t.Fatalf("status %d, %s", status, errs)
	}
	var got nutritionPromise
	if err := json.Unmarshal([]byte(out), &got); err != nil {
		t.Fatalf("%v in:\n%s", err, out)
	}
	return got
}

// TestNutritionGolden: what the command prints of one recipe, in JSON and in
// text. -update rewrites the files.
func TestNutritionGolden(t *testing.T) {
	folder := filepath.Join("testdata", "nutrition")
	file := filepath.Join(folder, "buns.txt")
	for _, tc := range []struct {
		golden string
		args   []string
	}{
		{"buns.json", []string{"nutrition", "--json", file}},
		{"buns.text.golden", []string{"nutrition", file}},
		{"buns.baked.golden", []string{"nutrition", "--finished", "650 g", file}},
	} {
		t.Run(tc.golden, func(t *testing.T) {
			out, errs, status := command(t, "", tc.args...)
			if status != 0 || errs != "" {
				t.Fatalf("status %d, %s", status, errs)
			}
			path := filepath.Join(folder, tc.golden)
			if *update {
				if err := os.WriteFile(path, []byte(out), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			if d := cmp.Diff(string(want), out); d != "" {
				t.Errorf("(-want +got):\n%s", d)
			}
		})
	}
}

// The keys and their spelling are a promise to other programs: nothing may be
// named otherwise, and a list is never null.
func TestNutritionKeys(t *testing.T) {
	out, _, _ := command(t, "Buns\nMakes 4\n\n400 g plain flour\n", "nutrition", "--json", "-")
	var got map[string]any
	if err := json.Unmarshal([]byte(out), &got); err != nil {
		t.Fatal(err)
	}
	nutrients := []string{"energyKcal", "proteinG", "fatG", "saturatedG", "carbohydrateG", "sugarsG", "fibreG", "sodiumMg"}
	for _, part := range []string{"recipe", "perPiece", "per100g"} {
		figures, ok := got[part].(map[string]any)
		if !ok || len(figures) != len(nutrients) {
			t.Errorf("%s is %v", part, got[part])
		}
		for _, key := range nutrients {
			if _, ok := figures[key].(float64); !ok {
				t.Errorf("%s.%s is %v, want a number", part, key, figures[key])
			}
		}
	}
	if covered, ok := got["covered"].(float64); !ok || covered != 1 {
		t.Errorf("covered is %v, want 1", got["covered"])
	}
	allergens, _ := got["allergens"].(map[string]any)
	for _, key := range []string{"eu", "us", "anz", "unsure"} {
		if _, ok := allergens[key].([]any); !ok {
			t.Errorf("allergens.%s is %v, want a list", key, allergens[key])
		}
	}
	for _, key := range []string{"missing", "notes"} {
		if list, ok := got[key].([]any); !ok || len(list) != 0 {
			t.Errorf("%s is %v, want an empty list", key, got[key])
		}
	}
}

// Flour: 364 kcal in 100 g, USDA SR 20081.
func TestNutritionFigures(t *testing.T) {
	const buns = "Buns\nMakes 4\n\n400 g plain flour\n"
	whole := nutritionOf(t, buns, "-")
	baked := nutritionOf(t, buns, "--finished", "500g", "-")
	for _, tc := range []struct {
		name string
		got  *float64
		want float64
	}{
		{"the whole", whole.Recipe.EnergyKcal, 1456}, {"a piece", whole.PerPiece.EnergyKcal, 364}, {"100 g raw", whole.Per100g.EnergyKcal, 364},
		{"100 g baked", baked.Per100g.EnergyKcal, 291.2}, {"a piece baked", baked.PerPiece.EnergyKcal, 364},
	} {
		if tc.got == nil || *tc.got != tc.want {
			t.Errorf("%s has %v kcal, want %g", tc.name, tc.got, tc.want)
		}
	}
	if whole.PerWhat != "100 g of the raw mixture" || baked.PerWhat != "100 g of the finished 500 g" {
		t.Errorf("100 g are of %q and %q", whole.PerWhat, baked.PerWhat)
	}
	if d := cmp.Diff([]string{"cereals containing gluten (wheat)"}, whole.Allergens.EU); d != "" {
		t.Errorf("EU allergens (-want +got):\n%s", d)
	}
}

func TestNutritionWithoutAYield(t *testing.T) {
	out, _, _ := command(t, "Buns\n\n400 g plain flour\n", "nutrition", "--json", "-")
	if !strings.Contains(out, `"perPiece": null`) || !strings.Contains(out, `"makes": null`) || !strings.Contains(out, `"us": null`) {
		t.Errorf("without a yield:\n%s", out)
	}
	text, _, status := command(t, "Buns\n\n400 g plain flour\n", "nutrition", "-")
	if status != 0 || strings.Contains(text, "US LABEL") || !strings.Contains(text, "EU LABEL") {
		t.Errorf("status %d:\n%s", status, text)
	}
}

// A cup of milk is 244 g in the US (USDA SR 01077), 257.83 g where it holds 250
// ml; the recipe's own word goes before the flag.
func TestNutritionSystem(t *testing.T) {
	for _, tc := range []struct {
		name, text string
		args       []string
		want       float64
	}{
		{"US", "Milk\n\n1 cup whole milk\n", []string{"--system", "us"}, 148.84},
		{"metric by itself", "Milk\n\n1 cup whole milk\n", nil, 157.28},
		{"the recipe's own", "Milk\n(US cups)\n\n1 cup whole milk\n", []string{"--system", "metric"}, 148.84},
	} {
		t.Run(tc.name, func(t *testing.T) {
			got := nutritionOf(t, tc.text, append(tc.args, "-")...).Recipe.EnergyKcal
			if got == nil || *got != tc.want {
				t.Errorf("%v kcal, want %g", got, tc.want)
			}
		})
	}
}

func TestNutritionRefuses(t *testing.T) {
	for _, tc := range []struct {
		name, in string
		args     []string
		status   int
		say      string
	}{
		{"no such file", "", []string{"nowhere.txt"}, exitInput, "Cannot read nowhere.txt"},
		{"an empty text", "", []string{"-"}, exitInput, "No ingredient was found in the recipe. Write one on a line"},
		{"a text without ingredients", "A title\n", []string{"--json", "-"}, exitInput, "No ingredient was found"},
		{"no file at all", "", nil, exitUsage, "expected"},
		{"an unknown flag", "", []string{"--vitamins", "-"}, exitUsage, "unknown flag"},
		{"an unknown system", "1 egg", []string{"--system", "klingon", "-"}, exitUsage, "is no measuring system"},
		{"a finished weight in words", "1 egg", []string{"--finished", "heavy", "-"}, exitUsage, "--finished"},
		{"a finished volume", "1 egg", []string{"--finished", "1 l", "-"}, exitUsage, "is not a weight above 0"},
		{"a finished range", "1 egg", []string{"--finished", "1-2 kg", "-"}, exitUsage, "is not a weight above 0"},
		{"a finished nothing", "1 egg", []string{"--finished", "0 g", "-"}, exitUsage, "is not a weight above 0"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			out, errs, status := command(t, tc.in, append([]string{"nutrition"}, tc.args...)...)
			if status != tc.status || !strings.Contains(errs, tc.say) {
				t.Errorf("status %d, want %d; said %q, want %q", status, tc.status, errs, tc.say)
			}
			if status == exitInput && out != "" {
				t.Errorf("and printed %q", out)
			}
		})
	}
}

// Every recipe of the demo show through the command.
func TestNutritionOfTheDemo(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("..", "..", "seed", "demo", "recipes", "*.txt"))
	if err != nil || len(files) == 0 {
		t.Fatalf("%d recipes, %v", len(files), err)
	}
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			got := nutritionOf(t, "", file)
			if got.Covered == nil || *got.Covered < 0.9 || *got.Covered > 1 {
				t.Errorf("covered %v, want 0.9 to 1", got.Covered)
			}
			if got.PerPiece == nil || got.Recipe.EnergyKcal == nil {
				t.Error("it has no pieces, or no energy")
			}
		})
	}
}
