package web_test

import (
	"net/http"
	"strings"
	"testing"
)

func TestTheLarderIsSearchedByEveryNameOfAFood(t *testing.T) {
	s := newSite(t)
	for query, want := range map[string]string{"cornstarch": "cornflour", "rocket": "rocket", "bicarb": "bicarbonate of soda", "plain flour": "plain flour"} {
		s.shows("/larder?q="+strings.ReplaceAll(query, " ", "+"), want)
	}
	s.shows("/larder?q=zorb", "no food of this name")
	s.shows("/larder", "Fruit and vegetables", "onion")
	if strings.Contains(words(s.get("/larder").body), "plain flour") {
		t.Error("the larder begins with every aisle at once")
	}
	s.shows("/larder?aisle=all", "plain flour", "onion")
}

// The weight is USDA SR 26 20081, the allergens those of wheat.
func TestAFoodTellsItsWeightsWithTheirSource(t *testing.T) {
	s := newSite(t)
	s.shows("/larder/plain-flour", "125 g", "1 cup", "USDA SR 20081", "wheat", "all-purpose flour")
	if got := s.get("/larder/zorb"); got.status != http.StatusNotFound {
		t.Errorf("an unknown food = %d, want 404", got.status)
	}
}

func TestATaughtNameIsReadFromThenOn(t *testing.T) {
	s := newSite(t)
	if got := s.post("/larder/plain-flour/names", "name", "gran's flour"); got.to != "/larder/plain-flour" {
		t.Fatalf("teaching = %d to %q", got.status, got.to)
	}
	episode := s.start("Buns", "Buns\n\n200 g gran's flour\n1 egg\n")
	s.shows(episode+"/shop", "200 g plain flour")
	if got := s.post("/larder/plain-flour/names", "name", " "); got.status != http.StatusUnprocessableEntity {
		t.Errorf("an empty name = %d, want 422", got.status)
	}
}
