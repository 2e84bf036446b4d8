package web_test

import (
	"net/http"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
	"benchproof/views"
	"benchproof/web"
)

func TestShopItemSaysWhatItIsAndWhatFor(t *testing.T) {
	for _, c := range []struct {
		name string
		item shop.Item
		want views.ShopItem
	}{
		{"plain", shop.Item{Key: "k", Name: "plain flour", Measure: "960 g", Small: "2 lb 2 oz"},
			views.ShopItem{Key: "k", Food: "plain flour", Measure: "960 g", Small: "2 lb 2 oz"}},
		{"every aside", shop.Item{Name: "salt", Small: "1 tsp", Optional: true, ToTaste: true, Estimate: true},
			views.ShopItem{Food: "salt", Small: "1 tsp · optional · to taste · weight estimated"}},
		{"an aside alone", shop.Item{Name: "salt", ToTaste: true}, views.ShopItem{Food: "salt", Small: "to taste"}},
		{"one use says nothing", shop.Item{Name: "egg", Measure: "6", Uses: []shop.Use{{Batch: "shoot", Measure: "6"}}},
			views.ShopItem{Food: "egg", Measure: "6"}},
		{"two uses", shop.Item{Name: "egg", Measure: "9", Uses: []shop.Use{{Batch: "shoot", Measure: "6"}, {Batch: "spare", Measure: "3"}}},
			views.ShopItem{Food: "egg", Measure: "9", Detail: "shoot\u00a06 · spare\u00a03"}},
		{"a use without an amount", shop.Item{Name: "salt", Uses: []shop.Use{{Batch: "shoot"}, {Batch: "spare", Measure: "3 g"}}},
			views.ShopItem{Food: "salt", Detail: "shoot · spare\u00a03\u00a0g"}},
		{"a question", shop.Item{Name: "lard", Question: "How much is a knob?"}, views.ShopItem{Food: "lard", Question: "How much is a knob?"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			if diff := cmp.Diff(c.want, web.ShopItem(today, c.item, false)); diff != "" {
				t.Errorf("ShopItem (-want +got):\n%s", diff)
			}
			if !web.ShopItem(today, c.item, true).Ticked {
				t.Error("a ticked item is drawn unticked")
			}
		})
	}
}

func TestShopListCountsWhatIsLeft(t *testing.T) {
	sheet := shop.Sheet{
		Aisles: []shop.Aisle{
			{Name: "Baking", Items: []shop.Item{{Key: "a", Name: "flour"}, {Key: "b", Name: "sugar"}}},
			{Name: "Dairy and eggs", Items: []shop.Item{{Key: "c", Name: "egg"}}},
		},
		Questions: []shop.Question{{Text: "2 zorbs", Reason: "No food of this name."}},
	}
	for _, c := range []struct {
		name   string
		ticked map[string]bool
		left   string
	}{
		{"nothing ticked", nil, "3 of 3 still to get"},
		{"one", map[string]bool{"b": true}, "2 of 3 still to get"},
		{"a tick of what is no longer needed", map[string]bool{"z": true}, "3 of 3 still to get"},
		{"all", map[string]bool{"a": true, "b": true, "c": true}, "0 of 3 still to get"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := web.ShopList(today, sheet, c.ticked, "/tick", "/recipe")
			if got.Left != c.left || got.TickAction != "/tick" || len(got.Aisles) != 2 {
				t.Errorf("left %q, action %q, %d aisles, want %q", got.Left, got.TickAction, len(got.Aisles), c.left)
			}
			for _, aisle := range got.Aisles {
				for _, item := range aisle.Items {
					if item.Ticked != c.ticked[item.Key] {
						t.Errorf("%s is ticked %v", item.Food, item.Ticked)
					}
				}
			}
			want := []views.OpenLink{{Text: "“2 zorbs”: No food of this name.", Path: "/recipe"}}
			if diff := cmp.Diff(want, got.Questions); diff != "" {
				t.Errorf("questions (-want +got):\n%s", diff)
			}
		})
	}
	if got := web.ShopList(today, shop.Sheet{}, nil, "", ""); got.Left != "" {
		t.Errorf("an empty list has %q", got.Left)
	}
}

// batch is one planned make.
func batch(kind episode.BatchKind, makes string) episode.Batch {
	return episode.Batch{Kind: kind, Makes: measure.MustNumber(makes)}
}

func TestMakesTotal(t *testing.T) {
	r := sconesRecipe(t) // makes 8
	for _, c := range []struct {
		name    string
		scale   string
		batches []episode.Batch
		want    string
	}{
		{"none", "1", nil, ""},
		{"one", "1", []episode.Batch{batch("shoot", "1")}, "1 make, 8 pieces"},
		{"two halves", "1", []episode.Batch{batch("shoot", "1/2"), batch("spare", "1/2")}, "1 make, 8 pieces"},
		{"at the episode's scale", "2", []episode.Batch{batch("shoot", "1"), batch("swap-out", "1/2")}, "1½ makes, 24 pieces"},
		{"half a make", "1", []episode.Batch{batch("trial", "1/2")}, "½ makes, 4 pieces"},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := web.NewDesk(newShow(), episode.Episode{ID: 7, Scale: measure.MustNumber(c.scale)}, "Scones", r)
			if got := web.MakesTotal(d, c.batches); got != c.want {
				t.Errorf("MakesTotal = %q, want %q", got, c.want)
			}
		})
	}
	d := web.NewDesk(newShow(), episode.Episode{ID: 7, Scale: measure.Whole(1)}, "", recipe.Recipe{})
	if got := web.MakesTotal(d, []episode.Batch{batch("shoot", "3")}); got != "3 makes" {
		t.Errorf("without a recipe: %q", got)
	}
}

func TestNeedsAreTheBatchesAtTheEpisodesScale(t *testing.T) {
	r := sconesRecipe(t)
	r.Title = ""
	d := web.NewDesk(newShow(), episode.Episode{ID: 7, Scale: measure.Whole(2)}, "Quay scones", r)
	got := web.Needs(d, []episode.Batch{batch("shoot", "1"), batch("swap-out", "3/2")})
	if len(got) != 2 || got[0].Batch != "shoot" || !got[0].Makes.Equal(measure.Whole(2)) || got[1].Batch != "swap-out" || !got[1].Makes.Equal(measure.Whole(3)) {
		t.Errorf("needs %+v", got)
	}
	if got[0].Recipe.Title != "Quay scones" || got[0].System != "metric" {
		t.Errorf("the need is for %q in %q", got[0].Recipe.Title, got[0].System)
	}
	if got := web.Needs(web.NewDesk(newShow(), episode.Episode{}, "", recipe.Recipe{}), []episode.Batch{batch("shoot", "1")}); got != nil {
		t.Errorf("an episode without a recipe needs %v", got)
	}
}

func TestTicksAreKeptWhateverIsPressedTwice(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	key := value(t, s.shows(at+"/shop", "4 of 4 still to get", "250 g"), "item")
	for range 2 {
		if got := s.post(at+"/ticks", "item", key, "ticked", "yes"); got.to != at+"/shop" {
			t.Fatalf("tick = %d to %q", got.status, got.to)
		}
		s.shows(at+"/shop", "3 of 4 still to get")
	}
	for range 2 {
		s.post(at+"/ticks", "item", key, "ticked", "no")
		s.shows(at+"/shop", "4 of 4 still to get")
	}
	for _, pairs := range [][]string{{"item", key, "ticked", "perhaps"}, {"item", "", "ticked", "yes"}, {"item", key}, {}} {
		if got := s.post(at+"/ticks", pairs...); got.status != http.StatusUnprocessableEntity {
			t.Errorf("%q = %d, want 422", pairs, got.status)
		}
	}
	if got := s.post("/episodes/77/ticks", "item", key, "ticked", "yes"); got.status != http.StatusNotFound {
		t.Errorf("a tick in no episode = %d, want 404", got.status)
	}
	s.shows(at+"/shop", "4 of 4 still to get")
}

func TestShoppingAcrossEpisodes(t *testing.T) {
	s := newSite(t)
	s.shows("/shopping", "No coming episode has anything to buy")
	one, two := s.start("Scones", scones), s.start("More scones", "More scones\n\n100 g self-raising flour\n1 lemon\n")
	s.start("An idea", "")
	page := s.shows("/shopping", "350 g", "Scones", "More scones")
	if strings.Contains(words(page), "An idea") {
		t.Error("an episode without a recipe is shopped for")
	}
	key := keyOf(t, s.get(two+"/shop").body, "self-raising flour")
	if got := s.post("/shopping/ticks", "item", key, "ticked", "yes"); got.to != "/shopping" {
		t.Fatalf("tick = %d to %q", got.status, got.to)
	}
	s.shows(one+"/shop", "3 of 4 still to get")
	s.shows(two+"/shop", "1 of 2 still to get")
	s.shows("/shopping", "4 of 5 still to get")
	s.post(one+"/ticks", "item", key, "ticked", "no") // one of the two still needs it
	s.shows("/shopping", "5 of 5 still to get")
	for _, pairs := range [][]string{{"item", key, "ticked", "perhaps"}, {"ticked", "yes"}} {
		if got := s.post("/shopping/ticks", pairs...); got.status != http.StatusUnprocessableEntity {
			t.Errorf("%q = %d, want 422", pairs, got.status)
		}
	}
}

func TestAReleasedEpisodeIsNotShoppedFor(t *testing.T) {
	s := newSite(t)
	at := s.start("Scones", scones)
	s.post(at+"/brief", "revision", value(t, s.get(at+"/brief").body, "revision"), "title", "Scones", "stage", "released")
	s.shows("/shopping", "No coming episode has anything to buy")
}

// keyOf is the tick's key of a food on a page.
func keyOf(t testing.TB, page, food string) string {
	t.Helper()
	before, _, found := strings.Cut(page, food)
	if !found {
		t.Fatalf("the list has no %s", food)
	}
	const field = `name="item" value="`
	at := strings.LastIndex(before, field)
	if at < 0 {
		t.Fatalf("%s has no tick", food)
	}
	key, _, _ := strings.Cut(before[at+len(field):], `"`)
	return key
}
