package release_test

import (
	"bytes"
	"encoding/json"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/release"
)

// parents are the types that each type we write inherits from, as the head of
// testdata/schema-org.txt names them.
var parents = map[string][]string{
	"Recipe":       {"HowTo", "CreativeWork", "Thing"},
	"HowToStep":    {"CreativeWork", "ItemList", "Thing"},
	"HowToSection": {"CreativeWork", "ItemList", "Thing"},
	"VideoObject":  {"MediaObject", "CreativeWork", "Thing"},
	"Clip":         {"CreativeWork", "Thing"},
	"CreativeWork": {"Thing"},
	"Person":       {"Thing"},
	"Organization": {"Thing"},
}

// vocabulary is testdata/schema-org.txt: expected types by type and property.
func vocabulary(t *testing.T) map[[2]string][]string {
	t.Helper()
	body, err := os.ReadFile("testdata/schema-org.txt")
	if err != nil {
		t.Fatal(err)
	}
	all := map[[2]string][]string{}
	for line := range strings.Lines(string(body)) {
		if strings.HasPrefix(line, "#") {
			continue
		}
		fields := strings.Split(strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(line), "*")), " | ")
		all[[2]string{fields[0], fields[1]}] = strings.Split(fields[2], ", ")
	}
	return all
}

var (
	isDate     = regexp.MustCompile(`^\d{4}-\d{2}-\d{2}$`)
	isDuration = regexp.MustCompile(`^P(\d+D)?(T(\d+H)?(\d+M)?(\d+S)?)?$`)
	isURL      = regexp.MustCompile(`^https?://[^\s]+$`)
)

// fits tells whether a value is of one of the expected types.
func fits(value any, expected []string) bool {
	has := func(name string) bool { return slices.Contains(expected, name) }
	switch v := value.(type) {
	case string:
		return has("Text") || has("Date") && isDate.MatchString(v) || has("Duration") && isDuration.MatchString(v) || has("URL") && isURL.MatchString(v)
	case float64:
		return has("Number")
	case map[string]any:
		kind, _ := v["@type"].(string)
		return has(kind)
	case []any:
		for _, each := range v {
			if !fits(each, expected) {
				return false
			}
		}
		return len(v) > 0
	}
	return false
}

// checkNode holds every property of a node and of those below it against the
// vocabulary.
func checkNode(t *testing.T, node map[string]any, known map[[2]string][]string) {
	t.Helper()
	kind, _ := node["@type"].(string)
	above, ok := parents[kind]
	if !ok {
		t.Errorf("no type %q is known", kind)
	}
	for property, value := range node {
		if strings.HasPrefix(property, "@") {
			continue
		}
		var expected []string
		for _, on := range append([]string{kind}, above...) {
			expected = append(expected, known[[2]string{on, property}]...)
		}
		if len(expected) == 0 {
			t.Errorf("%s has no property %q", kind, property)
		} else if !fits(value, expected) {
			t.Errorf("%s of %s is %v, want one of %v", property, kind, value, expected)
		}
		list, isList := value.([]any)
		if !isList {
			list = []any{value}
		}
		for _, each := range list {
			if below, ok := each.(map[string]any); ok {
				checkNode(t, below, known)
			}
		}
	}
}

func parse(t *testing.T, in release.Input) map[string]any {
	t.Helper()
	body, err := release.JSONLD(in)
	if err != nil {
		t.Fatal(err)
	}
	var node map[string]any
	if err := json.Unmarshal(body, &node); err != nil {
		t.Fatalf("%v in %s", err, body)
	}
	return node
}

// TestJSONLDKeepsToTheVocabulary holds every property and its value against the
// schema.org vocabulary.
func TestJSONLDKeepsToTheVocabulary(t *testing.T) {
	known := vocabulary(t)
	one := full()
	one.Recipe.Components = one.Recipe.Components[:1]
	noHost := full()
	noHost.Show.Host, noHost.Episode.InspiredBy = "", ""
	noURL := full()
	noURL.Episode.InspiredURL = ""
	for name, in := range map[string]release.Input{"full": full(), "one component": one, "no host": noHost, "no address": noURL, "nothing": {}} {
		t.Run(name, func(t *testing.T) {
			node := parse(t, in)
			if node["@context"] != "https://schema.org" || node["@type"] != "Recipe" {
				t.Errorf("it is a %v of %v", node["@type"], node["@context"])
			}
			checkNode(t, node, known)
		})
	}
}

func TestJSONLDOfEverything(t *testing.T) {
	node := parse(t, full())
	want := map[string]any{
		"name": "Candle Point knots", "description": "Sixteen knots, one tray, no hurry.", "url": "https://ferrystop.example/s/7Q2mXo4bTz",
		"inLanguage": "en", "datePublished": "2026-03-14", "recipeYield": "16 knots", "keywords": "rye knots, Ferry Stop Kitchen",
		"prepTime": "PT12M", "cookTime": "PT17M", "totalTime": "PT1H29M",
		"author":    map[string]any{"@type": "Person", "name": "Ottoline Brack"},
		"publisher": map[string]any{"@type": "Organization", "name": "Ferry Stop Kitchen"},
		"isBasedOn": map[string]any{"@type": "CreativeWork", "name": "the buns on the Candle Point pier", "url": "https://candlepoint.example"},
		"recipeInstructions": []any{
			map[string]any{"@type": "HowToSection", "name": "Dough", "itemListElement": []any{
				map[string]any{"@type": "HowToStep", "text": "Knead until smooth."}, map[string]any{"@type": "HowToStep", "text": "Prove until puffy."}}},
			map[string]any{"@type": "HowToSection", "name": "Honey butter", "itemListElement": []any{
				map[string]any{"@type": "HowToStep", "text": "Bake until gold."}, map[string]any{"@type": "HowToStep", "text": "Brush."}}},
		},
		"video": map[string]any{"@type": "VideoObject", "name": "Candle Point knots", "description": "Sixteen knots, one tray, no hurry.",
			"url": "https://video.example/w/31", "uploadDate": "2026-03-14", "hasPart": []any{
				map[string]any{"@type": "Clip", "name": "The pier", "startOffset": 0.0, "endOffset": 65.0},
				map[string]any{"@type": "Clip", "name": "Dough", "startOffset": 65.0, "endOffset": 3725.0},
				map[string]any{"@type": "Clip", "name": "Supper", "startOffset": 3725.0},
			}},
	}
	for property, value := range want {
		if diff := cmp.Diff(value, node[property]); diff != "" {
			t.Errorf("%s (-want +got):\n%s", property, diff)
		}
	}
	var lines []string
	for _, each := range node["recipeIngredient"].([]any) {
		lines = append(lines, strings.ReplaceAll(each.(string), "\u00a0", " "))
	}
	if diff := cmp.Diff([]string{"500 g bread flour", "2 large eggs", "a lump of <good> butter", "42 g honey", "salt, to taste"}, lines); diff != "" {
		t.Errorf("recipeIngredient (-want +got):\n%s", diff)
	}
}

func TestJSONLDCannotEndAScript(t *testing.T) {
	in := release.Input{Release: episode.Release{Title: "</script><!-- \u2028 & \"quoted\""}}
	body, err := release.JSONLD(in)
	if err != nil {
		t.Fatal(err)
	}
	if bytes.ContainsAny(body, "<>&\u2028") {
		t.Errorf("the data holds characters that HTML reads: %s", body)
	}
	if got := parse(t, in)["name"]; got != in.Release.Title {
		t.Errorf("name = %q, want %q", got, in.Release.Title)
	}
}

func TestJSONLDSections(t *testing.T) {
	steps := func(texts ...string) (list []recipe.Step) {
		for _, text := range texts {
			list = append(list, recipe.Step{Text: text})
		}
		return list
	}
	tests := []struct {
		name       string
		components []recipe.Component
		want       []string
	}{
		{"one component is a list of steps", []recipe.Component{{Name: "Dough", Steps: steps("Mix.", " ", "Bake.")}}, []string{"HowToStep Mix.", "HowToStep Bake."}},
		{"components without steps are no sections", []recipe.Component{{Name: "Salad"}, {Name: "Method", Steps: steps("Toss.")}}, []string{"HowToStep Toss."}},
		{"sections always have a name", []recipe.Component{{Steps: steps("Mix.")}, {Name: "Icing", Steps: steps("Spread.")}}, []string{"HowToSection Part 1", "HowToSection Icing"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			node := parse(t, release.Input{Recipe: recipe.Recipe{Components: test.components}})
			var got []string
			for _, each := range node["recipeInstructions"].([]any) {
				part := each.(map[string]any)
				name, _ := part["name"].(string)
				text, _ := part["text"].(string)
				got = append(got, strings.TrimSpace(part["@type"].(string)+" "+name+text))
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("recipeInstructions (-want +got):\n%s", diff)
			}
		})
	}
}

func TestJSONLDLeavesOutWhatIsNotKnown(t *testing.T) {
	node := parse(t, release.Input{Episode: episode.Episode{Title: "Soup", ReleaseOn: time.Time{}}})
	if diff := cmp.Diff(map[string]any{"@context": "https://schema.org", "@type": "Recipe", "name": "Soup"}, node); diff != "" {
		t.Errorf("JSONLD (-want +got):\n%s", diff)
	}
}

func TestJSONLDYield(t *testing.T) {
	for makes, want := range map[string]any{
		"makes 24 knots": "24 knots", "Makes 16": "16", "serves 6–8": "6–8 servings", "Serves 4 as a lunch": "Serves 4 as a lunch",
		"2 jars": "2 jars", "": nil, " ": nil,
	} {
		if got := parse(t, release.Input{Makes: makes})["recipeYield"]; got != want {
			t.Errorf("yield of %q is %v, want %v", makes, got, want)
		}
	}
}
