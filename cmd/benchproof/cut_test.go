package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

const (
	demoRecipe   = "../../seed/demo/recipes/tart-v2.txt"
	demoCaptions = "../../seed/demo/captions/21-saint-ebble-tart.vtt"
	demoScript   = "../../seed/demo/narration/21-saint-ebble-tart.txt"
)

// The second cut of the demo's tart says 180 °C for the fan once, where the
// recipe says 170 °C: its one planned slip.
func TestVerifyTheDemo(t *testing.T) {
	got := object(t, "", "verify", "--recipe", demoRecipe, "--captions", demoCaptions)
	findings, _ := got["findings"].([]any)
	slips := 0
	for _, f := range findings {
		switch kind := at(t, f, "kind"); kind {
		case "not said":
			if at(t, f, "said") != "" || at(t, f, "line") == "" {
				t.Errorf("not said: %v", f)
			}
		case "differs", "pair":
			slips++
			if at(t, f, "at") != "00:02:26.600" || !strings.Contains(at(t, f, "said").(string), "180 with a fan") ||
				at(t, f, "line") != "Heat the oven to 190 °C / 170 °C fan / gas 5." || !strings.Contains(at(t, f, "written").(string), "170 °C fan") {
				t.Errorf("a finding that is no slip: %v", f)
			}
		default:
			t.Errorf("a finding of kind %v: %v", kind, f)
		}
	}
	if slips != 1 { // that the pair disagrees with itself, told once
		t.Errorf("%d findings of the one slip, want one", slips)
	}
	text, _, status := command(t, "", "verify", "--recipe", demoRecipe, "--captions", demoCaptions)
	if status != 0 || !strings.Contains(text, "00:02:26.600  pair") || !strings.Contains(text, "I say “190 degrees, 180 with a fan”; the right measure is 190 °C / 170 °C fan / gas 5.") {
		t.Errorf("status %d:\n%s", status, text)
	}
}

// write puts text into a file of the test's folder.
func write(t *testing.T, name, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestVerifyPrintsTheShapeAsPromised(t *testing.T) {
	recipe := write(t, "r.txt", "Bread\n\n2½ cups bread flour\n1 tsp salt\n\nMix and knead for 10 minutes.\n")
	cut := "WEBVTT\n\n00:01:23.450 --> 00:01:26.000\nTwo cups of bread flour\n\n00:01:26.000 --> 00:01:29.000\nand a teaspoon of salt, and fifty grams of raisins\n\n00:01:29.000 --> 00:01:31.000\nknead for ten minutes\n"
	got := object(t, cut, "verify", "--recipe", recipe, "--captions", "-")
	if n := len(got["findings"].([]any)); n != 2 {
		t.Fatalf("%d findings, want 2: %v", n, got)
	}
	for _, want := range []struct {
		index              int
		kind, at, said     string
		written, line, key string
	}{
		{0, "differs", "00:01:23.450", "Two cups", "2½ cups", "2½ cups bread flour", "differs|2½ cups bread flour|two cups"},
		{1, "not written", "00:01:26.000", "fifty grams", "", "", ""},
	} {
		f := at(t, got, "findings", want.index)
		for key, value := range map[string]string{"kind": want.kind, "at": want.at, "said": want.said, "written": want.written, "line": want.line} {
			if at(t, f, key) != value {
				t.Errorf("finding %d: %s is %q, want %q", want.index, key, at(t, f, key), value)
			}
		}
		if want.key != "" && at(t, f, "key") != want.key {
			t.Errorf("key is %q, want %q", at(t, f, "key"), want.key)
		}
		if words := at(t, f, "words").(string); !strings.Contains(words, want.said) {
			t.Errorf("words %q do not hold %q", words, want.said)
		}
	}
	fine := object(t, strings.ReplaceAll(strings.ReplaceAll(cut, "Two cups", "Two and a half cups"), "and fifty grams of raisins", ""), "verify", "--recipe", recipe, "--captions", "-")
	if list, ok := fine["findings"].([]any); !ok || len(list) != 0 {
		t.Errorf("nothing is wrong, and findings are %v, want an empty list", fine["findings"])
	}
}

func TestChaptersOfTheDemo(t *testing.T) {
	got := object(t, "", "chapters", "--script", demoScript, "--captions", demoCaptions)
	chapters, _ := got["chapters"].([]any)
	if len(chapters) != 8 {
		t.Fatalf("%d chapters, want 8: %v", len(chapters), got)
	}
	if at(t, got, "chapters", 0, "at") != "0:00" || at(t, got, "chapters", 0, "title") != "The window on the quay" {
		t.Errorf("the first chapter is %v", chapters[0])
	}
	// Where the captions first say what these segments' narrations begin with.
	for i, want := range map[int]string{1: "0:47", 2: "1:39", 3: "2:26"} {
		if at(t, got, "chapters", i, "at") != want {
			t.Errorf("chapter %d is at %v, want %s", i, at(t, got, "chapters", i, "at"), want)
		}
	}
	if _, ok := got["problems"].([]any); !ok {
		t.Errorf("problems are %v, want a list", got["problems"])
	}
	text, _, status := command(t, "", "chapters", "--script", demoScript, "--captions", demoCaptions)
	if status != 0 || !strings.HasPrefix(text, "0:00 The window on the quay\n0:47 Pastry first\n") {
		t.Errorf("status %d:\n%s", status, text)
	}
}

// Without narration the titles and the recipe's steps tell where segments begin.
func TestChaptersOfTitlesAlone(t *testing.T) {
	full := object(t, "", "chapters", "--script", demoScript, "--captions", demoCaptions)
	var titles strings.Builder
	for i := range full["chapters"].([]any) {
		titles.WriteString(at(t, full, "chapters", i, "title").(string) + "\n\n")
	}
	got := object(t, titles.String(), "chapters", "--script", "-", "--captions", demoCaptions, "--recipe", demoRecipe)
	for i := range full["chapters"].([]any) {
		if want := at(t, full, "chapters", i, "at"); at(t, got, "chapters", i, "at") != want {
			t.Errorf("chapter %d is at %v, want %v as by its narration", i, at(t, got, "chapters", i, "at"), want)
		}
	}
}

// A caption that looks wrong is told, and read.
func TestCutCommandsTellWhatLooksWrong(t *testing.T) {
	recipe := write(t, "r.txt", "Bread\n\n500 g flour\n")
	out, errs, status := command(t, "WEBVTT\n\n00:02.000 --> 00:01.000\nfive hundred grams of flour\n", "verify", "--recipe", recipe, "--captions", "-")
	if status != 0 || !strings.Contains(errs, "Line 3: the caption ends at 00:00:01.000") || !strings.Contains(out, "1 amounts said") {
		t.Errorf("status %d, %q, %q", status, out, errs)
	}
}

func TestCutCommandsRefuse(t *testing.T) {
	recipe, script := write(t, "r.txt", "Bread\n\n500 g flour\n"), write(t, "s.txt", "One\nHello.\n")
	tests := []struct {
		name, in string
		args     []string
		status   int
		says     string
	}{
		{"verify without captions", "", []string{"verify", "--recipe", recipe}, exitUsage, "--captions"},
		{"verify both from standard input", "", []string{"verify", "--recipe", "-", "--captions", "-"}, exitUsage, "both"},
		{"an unknown system", "", []string{"verify", "--recipe", recipe, "--captions", "-", "--system", "martian"}, exitUsage, "martian"},
		{"no captions", "just words", []string{"verify", "--recipe", recipe, "--captions", "-"}, exitInput, "no captions"},
		{"broken captions name the line", "WEBVTT\n\n00:01.000 --> 00:xx.000\nA\n", []string{"verify", "--recipe", recipe, "--captions", "-"}, exitInput, "Line 3"},
		{"no such recipe", "", []string{"verify", "--recipe", "nowhere.txt", "--captions", "-"}, exitInput, "nowhere.txt"},
		{"chapters without a script", "", []string{"chapters", "--captions", "-"}, exitUsage, "--script"},
		{"chapters of nothing", "", []string{"chapters", "--script", script, "--captions", "-"}, exitInput, "no captions"},
		{"an empty script", "", []string{"chapters", "--script", "-", "--captions", demoCaptions}, exitInput, "no segments"},
		{"both from standard input", "", []string{"chapters", "--script", "-", "--captions", "-"}, exitUsage, "only one"},
		{"recipe and script from standard input", "", []string{"chapters", "--script", "-", "--captions", demoCaptions, "--recipe", "-"}, exitUsage, "only one"},
		{"a recipe that is not there", "", []string{"chapters", "--script", demoScript, "--captions", demoCaptions, "--recipe", "nowhere.txt"}, exitInput, "nowhere.txt"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			_, errs, status := command(t, test.in, test.args...)
			if status != test.status || !strings.Contains(errs, test.says) {
				t.Errorf("status %d, %q, want %d and %q", status, errs, test.status, test.says)
			}
		})
	}
}
