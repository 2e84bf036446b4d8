package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// object runs a command with --json and reads the one object it prints.
func object(t *testing.T, in string, args ...string) map[string]any {
	t.Helper()
	out, errs, status := command(t, in, append(args, "--json")...)
	if status != 0 {
		t.Fatalf("%v ended with %d: %s", args, status, errs)
	}
	var v map[string]any
	decoder := json.NewDecoder(strings.NewReader(out))
	if err := decoder.Decode(&v); err != nil || decoder.More() {
		t.Fatalf("%v does not print one object: %v\n%s", args, err, out)
	}
	return v
}

// at follows keys and indexes into a JSON value.
func at(t *testing.T, v any, path ...any) any {
	t.Helper()
	for _, step := range path {
		switch step := step.(type) {
		case string:
			m, _ := v.(map[string]any)
			v = m[step]
		case int:
			list, _ := v.([]any)
			if step >= len(list) {
				t.Fatalf("there is no element %d in %v", step, v)
			}
			v = list[step]
		}
	}
	return v
}

// The weights are those of the USDA National Nutrient Database for Standard
// Reference, Release 26; the US cup is NIST Handbook 44's.
func TestConvert(t *testing.T) {
	for _, c := range []struct {
		line, to string
		more     []string
		amount   float64
		source   string
	}{
		{"1 cup honey", "g", nil, 339, "USDA SR 19296"},
		{"1½ sticks unsalted butter, softened", "g", nil, 169.5, "USDA SR 01145"},
		{"2 medium onions", "g", nil, 220, "USDA SR 11282"},
		{"1 cup brown sugar, packed", "g", nil, 220, "USDA SR 19334"},
		{"250 g plain flour", "cup", nil, 2, "USDA SR 20081"},
		{"1 lb beef", "kg", nil, 0.45, ""},
		{"1 pint stock", "ml", nil, 473.18, ""},
		{"1 pint stock", "ml", []string{"--system", "imperial"}, 568.26, ""},
		{"2 tbsp olive oil", "ml", []string{"--system", "australian"}, 40, ""},
		{"1 cup rice", "ml", []string{"--system", "japanese"}, 200, ""},
	} {
		got := object(t, "", append([]string{"convert", c.line, "--to", c.to}, c.more...)...)
		if got["amount"] != c.amount || got["source"] != c.source {
			t.Errorf("convert %q --to %s %v = %v from %q, want %v from %q", c.line, c.to, c.more, got["amount"], got["source"], c.amount, c.source)
		}
	}
	got := object(t, "", "convert", "1 cup honey", "--to", "g", "--system", "us")
	for key, want := range map[string]any{"unit": "g", "food": "honey", "assumed": "cup = 236.588 mL (US customary)"} {
		if got[key] != want {
			t.Errorf("convert 1 cup honey: %s = %v, want %v", key, got[key], want)
		}
	}
}

func TestReadPrintsTheReading(t *testing.T) {
	got := object(t, "", "read", filepath.Join("testdata", "typed", "plum-tart.txt"))
	for _, c := range []struct {
		path []any
		want any
	}{
		{[]any{"title"}, "Plum tart with almond pastry"},
		{[]any{"components", 0, "name"}, "Pastry"},
		{[]any{"components", 0, "lines", 0, "text"}, "200g plain flour"},
		{[]any{"components", 0, "lines", 0, "amount", "from"}, "200"},
		{[]any{"components", 0, "lines", 0, "unit"}, "g"},
		{[]any{"components", 0, "lines", 0, "food"}, "plain flour"},
		{[]any{"components", 0, "lines", 0, "read"}, true},
		{[]any{"components", 0, "lines", 6, "amount", "to"}, "2"},
		{[]any{"components", 1, "lines", 1, "amount", "from"}, "1/2"},
	} {
		if value := at(t, got, c.path...); value != c.want {
			t.Errorf("%v = %v, want %v", c.path, value, c.want)
		}
	}
	steps := 0
	for _, component := range got["components"].([]any) {
		list, _ := at(t, component, "steps").([]any)
		for _, step := range list {
			steps++
			for _, key := range []string{"text", "handsOn", "station"} {
				if at(t, step, key) == nil {
					t.Errorf("a step has no %q: %v", key, step)
				}
			}
		}
	}
	if steps < 8 {
		t.Errorf("%d steps, want at least the 8 numbered ones", steps)
	}
}

func TestScaleWaysAgree(t *testing.T) {
	const buns = "Buns\nMakes 12\n\n600 g flour\n3 eggs\n1 tsp salt\n\nBake for 20 minutes in a 20 cm round tin.\n"
	for _, c := range []struct {
		args []string
		want string // grams of flour, exact
	}{
		{[]string{"--by", "3/2"}, "900"},
		{[]string{"--by", "1.5"}, "900"},
		{[]string{"--pieces", "18"}, "900"},
		{[]string{"--have", "2 eggs"}, "400"},
		{[]string{"--tin", "20 cm round,23 cm round"}, "1587/2"}, // 1.3225, the ratio of the areas
	} {
		got := object(t, buns, append([]string{"scale", "-"}, c.args...)...)
		if value := at(t, got, "components", 0, "lines", 0, "amount", "from"); value != c.want {
			t.Errorf("scale %v: flour = %v, want %v", c.args, value, c.want)
		}
		line := at(t, got, "components", 0, "lines", 0)
		for _, key := range []string{"exact", "shown", "errorPercent"} {
			if at(t, line, key) == nil {
				t.Errorf("scale %v: the line has no %q: %v", c.args, key, line)
			}
		}
		if notes, _ := got["notes"].([]any); len(notes) == 0 {
			t.Errorf("scale %v says nothing of what does not scale", c.args)
		}
	}
}

func TestDescribeADemoEpisode(t *testing.T) {
	out, errs, status := command(t, "", "describe", "19", "--demo")
	if status != 0 {
		t.Fatalf("describe ended with %d: %s", status, errs)
	}
	for _, text := range []string{"INGREDIENTS", "500 g (", "CHAPTERS\n0:00 ", "Contains", "/s/"} {
		if !strings.Contains(plain(out), text) {
			t.Errorf("the description does not hold %q:\n%s", text, out)
		}
	}
}

func TestBadInputAndBadUsage(t *testing.T) {
	recipe := filepath.Join("testdata", "typed", "plum-tart.txt")
	for _, c := range []struct {
		name   string
		args   []string
		status int
		says   string
	}{
		{"no command", nil, exitUsage, ""},
		{"unknown command", []string{"boil"}, exitUsage, "boil"},
		{"unknown flag", []string{"read", recipe, "--loud"}, exitUsage, "--loud"},
		{"no such file", []string{"read", "no-such.txt"}, exitInput, "no-such.txt"},
		{"wrong factor", []string{"scale", recipe, "--by", "lots"}, exitUsage, "--by"},
		{"factor of nothing", []string{"scale", recipe, "--by", "0"}, exitUsage, "--by"},
		{"wrong pieces", []string{"scale", recipe, "--pieces", "x"}, exitUsage, "--pieces"},
		{"wrong tin", []string{"scale", recipe, "--tin", "a bucket,a pan"}, exitUsage, "--tin"},
		{"one tin", []string{"scale", recipe, "--tin", "20 cm round"}, exitUsage, "--tin"},
		{"no way to scale", []string{"scale", recipe}, exitUsage, "--by"},
		{"two ways to scale", []string{"scale", recipe, "--by", "2", "--pieces", "3"}, exitUsage, "--pieces"},
		{"have what is not in it", []string{"scale", recipe, "--have", "3 herrings"}, exitInput, "herring"},
		{"unknown unit", []string{"convert", "1 cup honey", "--to", "parsec"}, exitUsage, "--to"},
		{"unknown system", []string{"convert", "1 cup honey", "--to", "g", "--system", "roman"}, exitUsage, "--system"},
		{"unknown food", []string{"convert", "1 cup zorb", "--to", "g"}, exitInput, "zorb"},
		{"no amount", []string{"convert", "honey", "--to", "g"}, exitInput, "honey"},
		{"no such episode", []string{"describe", "99", "--demo"}, exitInput, "99"},
	} {
		t.Run(c.name, func(t *testing.T) {
			out, errs, status := command(t, "", c.args...)
			if status != c.status {
				t.Errorf("status %d, want %d\n%s%s", status, c.status, out, errs)
			}
			if !strings.Contains(errs, c.says) {
				t.Errorf("standard error does not name %q: %s", c.says, errs)
			}
		})
	}
}

func TestBackupAndRestore(t *testing.T) {
	from, to, file := t.TempDir(), t.TempDir(), filepath.Join(t.TempDir(), "kitchen.backup")
	if _, errs, status := command(t, "a short sentence\n", "user", "add", "Ottoline", "--data", from); status != 0 {
		t.Fatal(errs)
	}
	if _, errs, status := command(t, "", "backup", file, "--data", from); status != 0 {
		t.Fatal(errs)
	}
	if _, _, status := command(t, "", "backup", file, "--data", from); status != exitInput {
		t.Errorf("a backup is written over: status %d, want %d", status, exitInput)
	}
	if _, errs, status := command(t, "", "restore", file, "--data", to); status != 0 {
		t.Fatal(errs)
	}
	if out, _, _ := command(t, "", "user", "list", "--data", to); out != "Ottoline\n" {
		t.Errorf("the restored data has the people %q, want Ottoline", out)
	}
	if _, _, status := command(t, "", "restore", file, "--data", to); status != exitInput {
		t.Errorf("data is restored over: status %d, want %d", status, exitInput)
	}
	if err := os.WriteFile(file, []byte("not a backup"), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, _, status := command(t, "", "restore", file, "--data", t.TempDir()); status != exitInput {
		t.Errorf("a broken backup is restored: status %d, want %d", status, exitInput)
	}
}

func TestTheDemoTakesAFreePort(t *testing.T) {
	first := start(t, 2, "demo", "--addr", "127.0.0.1:0")
	second := start(t, 2, "demo", "--addr", strings.TrimPrefix(first.address, "http://"))
	if second.address == "" || second.address == first.address {
		t.Errorf("the second demo is at %q, the first at %q", second.address, first.address)
	}
	if _, _, status := command(t, "", "demo", "--addr", "0.0.0.0:8080"); status != exitUsage {
		t.Errorf("the demo would listen for everybody: status %d", status)
	}
}
