package episode_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
)

// constants reads from the room's own source the values of all constants of a
// type, in their order.
func constants(t *testing.T, named string) []string {
	t.Helper()
	files, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	var values []string
	for _, f := range files {
		if !strings.HasSuffix(f.Name(), ".go") || strings.HasSuffix(f.Name(), "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), f.Name(), nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			spec, ok := n.(*ast.ValueSpec)
			if !ok {
				return true
			}
			if kind, ok := spec.Type.(*ast.Ident); !ok || kind.Name != named {
				return true
			}
			for _, v := range spec.Values {
				if literal, ok := v.(*ast.BasicLit); ok {
					value, err := strconv.Unquote(literal.Value)
					if err != nil {
						t.Fatal(err)
					}
					values = append(values, value)
				}
			}
			return true
		})
	}
	return values
}

func words[T ~string](list []T) []string {
	var all []string
	for _, v := range list {
		all = append(all, string(v))
	}
	return all
}

// Forms offer the lists, so each value of a kind must be in its list, once, and
// in the order in which it is declared.
func TestListsHoldEveryValue(t *testing.T) {
	for name, list := range map[string][]string{
		"Stage":      words(episode.Stages),
		"BatchKind":  words(episode.BatchKinds),
		"ShotStatus": words(episode.ShotStatuses),
		"Settlement": words(episode.Settlements),
		"Hold":       words(episode.Holds),
	} {
		if diff := cmp.Diff(constants(t, name), list); diff != "" {
			t.Errorf("the list of each %s (-constants +listed):\n%s", name, diff)
		}
	}
}

// What people read is plain words, each different.
func TestListsAreReadable(t *testing.T) {
	for name, list := range map[string][]string{
		"stages": words(episode.Stages), "kinds of batch": words(episode.BatchKinds), "settlements": words(episode.Settlements),
		"verdicts": episode.Verdicts, "kinds of shot": episode.ShotKinds, "sheets": episode.SheetNames, "states of shots": words(episode.ShotStatuses),
	} {
		sorted := slices.Sorted(slices.Values(list))
		if len(slices.Compact(sorted)) != len(list) || len(list) < 3 {
			t.Errorf("%s: %q are not different, or too few", name, list)
		}
		for _, word := range list {
			if word == "" || word != strings.TrimSpace(word) || word != strings.ToLower(word) {
				t.Errorf("%s: %q is not plain words", name, word)
			}
		}
	}
}

// The week as the design tells it.
func TestTheWeek(t *testing.T) {
	sheets := []string{"brief", "recipe", "trials", "shop", "shoot day", "script", "shots", "cut", "release"}
	if diff := cmp.Diff(sheets, episode.SheetNames); diff != "" {
		t.Error(diff)
	}
	stages := []episode.Stage{"pitched", "in development", "ready to shoot", "in the edit", "released"}
	if diff := cmp.Diff(stages, episode.Stages); diff != "" {
		t.Error(diff)
	}
}
