package web_test

import (
	"context"
	"fmt"
	"html"
	"net/http"
	"net/url"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"
)

// fieldsOf are the values that a browser would send back from a page's fields,
// by name: inputs, text areas, and what is chosen in selects.
func fieldsOf(page string) url.Values {
	values := url.Values{}
	for _, tag := range regexp.MustCompile(`<input[^>]*>`).FindAllString(page, -1) {
		name := regexp.MustCompile(` name="([^"]*)"`).FindStringSubmatch(tag)
		text := regexp.MustCompile(` value="([^"]*)"`).FindStringSubmatch(tag)
		if name != nil && text != nil {
			values.Add(name[1], html.UnescapeString(text[1]))
		}
	}
	for _, area := range regexp.MustCompile(`(?s)<textarea[^>]* name="([^"]*)"[^>]*>(.*?)</textarea>`).FindAllStringSubmatch(page, -1) {
		// A browser drops the first line end after the tag.
		values.Add(area[1], strings.TrimPrefix(html.UnescapeString(area[2]), "\n"))
	}
	return values
}

// hostile draws texts that try to break out of where they are drawn.
var hostile = rapid.OneOf(
	rapid.String(),
	rapid.SampledFrom([]string{
		`"><script>alert(1)</script>`, `</textarea><script>alert(1)</script>`, `' onfocus='alert(1)`, `&lt;b&gt;`, `&amp;`, "\n\nleading line ends", " edges ",
		`</title></head><img src=x onerror=alert(1)>`, "a\tb", "zero\u200bwidth", "\u202eright to left", "=1+1", `\`, `{{.}}`, `%s%d`,
	}),
)

// plain makes two texts comparable: HTML knows no CR of its own and no NUL.
func plain(text string) string {
	text = strings.ReplaceAll(strings.ReplaceAll(text, "\r\n", "\n"), "\r", "\n")
	return strings.ToValidUTF8(strings.ReplaceAll(text, "\x00", "\ufffd"), "\ufffd")
}

// The forms here are refused for a number that is a word; whatever else was
// typed must stand in the page that comes back.
func TestTheTypedTextOfARefusedFormComesBack(t *testing.T) {
	s := furnished(t)
	for _, c := range []struct {
		path, wrong string
		texts       []string
	}{
		{"/pitches", "times", []string{"dish", "who", "place", "note"}},
		{"/pitches/1", "times", []string{"dish", "who", "place", "note"}},
		{"/larder/plain-flour/packs", "price", []string{"amount"}},
		{"/larder/plain-flour/packs/1", "price", []string{"amount"}},
		{"/larder/plain-flour/stock", "useby", []string{"amount"}},
		{"/larder/plain-flour/stock/1", "useby", []string{"amount"}},
		{"/show", "pace", []string{"name", "host", "zone", "currency", "disclosure", "links"}},
		{"/episodes/1/brief", "number", []string{"title", "dish", "inspired", "link", "look", "hook", "notes"}},
		{"/episodes/1/segments", "planned", []string{"title", "narration"}},
		{"/episodes/1/segments/1", "planned", []string{"title", "narration"}},
		{"/episodes/1/shots", "kind", []string{"title", "setup", "note"}},
		{"/episodes/1/batches", "makes", []string{"note"}},
		{"/episodes/1/trials", "pieces", []string{"setting", "note"}},
		{"/episodes/1/corrections", "at", []string{"said", "right"}},
		{"/episodes/1/release", "video", []string{"title", "opening", "equipment", "credits", "disclosure"}},
		{"/episodes/1/cut", "length", []string{"name", "captions"}},
	} {
		t.Run(c.path, func(t *testing.T) {
			rapid.Check(t, func(rt *rapid.T) {
				pairs := []string{c.wrong, "nonsense", "revision", "1"}
				typed := map[string]string{}
				for _, name := range c.texts {
					typed[name] = hostile.Draw(rt, name)
					pairs = append(pairs, name, typed[name])
				}
				got := s.post(c.path, pairs...)
				if got.status != http.StatusUnprocessableEntity {
					rt.Fatalf("POST %s = %d, want 422", c.path, got.status)
				}
				if strings.Contains(got.body, "<script>alert") || strings.Contains(got.body, "<img src=x") {
					rt.Errorf("POST %s: typed text is drawn as markup", c.path)
				}
				back := fieldsOf(got.body)
				for name, text := range typed {
					if !holds(back[name], text) {
						rt.Errorf("POST %s: %s %q comes back as %q", c.path, name, text, back[name])
					}
				}
				if !holds(back[c.wrong], "nonsense") && c.wrong != "kind" {
					rt.Errorf("POST %s: the wrong %s comes back as %q", c.path, c.wrong, back[c.wrong])
				}
			})
		})
	}
}

func holds(list []string, text string) bool {
	for _, each := range list {
		if plain(each) == plain(text) {
			return true
		}
	}
	return false
}

// structured is a block of data, not markup; it ends at the first end tag.
var structured = regexp.MustCompile(`(?s)<script type="application/ld\+json">.*?</script>`)

// A recipe of any bytes is kept exactly as it was typed, and no page that
// shows it breaks.
func TestARecipeOfAnyBytesIsKeptAndShown(t *testing.T) {
	line := rapid.OneOf(
		hostile,
		rapid.SampledFrom([]string{"250 g flour", "Makes 8", "Bake at 220 °C for 12 minutes.", "2 eggs", "# Pastry", "Notes", "½ tsp salt", "", "1/0 cups milk", "99999999999999999999 g sugar"}),
		rapid.Map(rapid.SliceOfN(rapid.Byte(), 0, 30), func(b []byte) string { return string(b) }),
	)
	s := newSite(t)
	rapid.Check(t, func(rt *rapid.T) {
		text := strings.Join(rapid.SliceOfN(line, 0, 12).Draw(rt, "lines"), rapid.SampledFrom([]string{"\n", "\r\n", "\n\n"}).Draw(rt, "line end"))
		if strings.TrimSpace(text) == "" {
			return // no recipe at all
		}
		at := s.start("Any bytes", text)
		id, err := strconv.ParseInt(strings.TrimPrefix(at, "/episodes/"), 10, 64)
		if err != nil {
			rt.Fatal(err)
		}
		version, err := s.store.Version(context.Background(), id) // each episode here brings one recipe of one version
		if err != nil {
			rt.Fatalf("%q is not kept: %v", text, err)
		}
		recipe := fmt.Sprintf("/recipes/%d", version.RecipeID)
		if version.Text != text {
			rt.Errorf("typed %q, kept %q", text, version.Text)
		}
		paths := []string{recipe, recipe + "?factor=2&measure=us", recipe + "/edit", recipe + "/changes", at + "/recipe", at + "/shop",
			at + "/shots", at + "/shoot-day", at + "/release", at + "/card", at + "/cut", s.share(at)}
		for _, path := range paths {
			got := s.get(path)
			if got.status != http.StatusOK {
				rt.Errorf("GET %s = %d for %q", path, got.status, text)
			}
			marked := structured.ReplaceAllString(got.body, "")
			if strings.Contains(marked, "<script>alert") || strings.Contains(marked, "<img src=x") || strings.Contains(marked, "onfocus='") {
				rt.Errorf("GET %s draws the recipe as markup: %q", path, text)
			}
			if !strings.HasSuffix(strings.TrimSpace(got.body), "</html>") {
				rt.Errorf("GET %s ends early", path)
			}
			if !utf8.ValidString(got.body) && utf8.ValidString(text) {
				rt.Errorf("GET %s is not UTF-8", path)
			}
		}
		if got := s.get(at + "/card.pdf"); got.status != http.StatusOK || !strings.HasPrefix(got.body, "%PDF-") {
			rt.Errorf("the card = %d for %q", got.status, text)
		}
	})
}
