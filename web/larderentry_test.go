package web_test

import (
	"net/http"
	"net/url"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
	"benchproof/web"
)

// entryCase is one kind of thing noted of a food: a good form, and one with a
// mistake.
type entryCase struct {
	name, many  string
	good        []string
	shows       string
	wrongField  string
	wrong, says string
}

var entryCases = []entryCase{
	{"pack", "packs", []string{"amount", "1.5 kg", "price", "3.30"}, "€2.20 a kg", "price", "cheap", "“cheap” is not a price in EUR. Write it like 2.49."},
	{"pack", "packs", []string{"amount", "1.5 kg", "price", "3.30"}, "1.5 kg", "amount", "a bit", "“a bit” is not one amount"},
	{"stock", "stock", []string{"amount", "800 g", "useby", "2027-03-28"}, "use by 28 Mar", "useby", "soon", "“soon” is not a date"},
	{"stock", "stock", []string{"amount", "800 g", "useby", "2027-03-28"}, "800 g", "amount", "", "Write what is there"},
}

func TestEntriesAreAddedChangedDeletedAndHadBack(t *testing.T) {
	for _, c := range entryCases {
		t.Run(c.name, func(t *testing.T) {
			s := newSite(t)
			const food = "/larder/plain-flour"
			s.shows(food, "None is noted", "No packs are noted", "Usual: 500 g bag")
			if got := s.post(food+"/"+c.many, c.good...); got.to != food+"#"+c.name {
				t.Fatalf("add = %d to %q\n%s", got.status, got.to, words(got.body))
			}
			s.shows(food, c.shows)
			form := s.shows(food+"?change="+c.name+"-1", "Change this "+c.name)
			for i := 0; i < len(c.good); i += 2 {
				if got := value(t, form[strings.Index(form, `id="`+c.name+`"`):], c.good[i]); got != c.good[i+1] {
					t.Errorf("%s stands in its form as %q, want %q", c.good[i], got, c.good[i+1])
				}
			}
			saved := append([]string{"revision", value(t, form, "revision")}, c.good...)
			if got := s.post(food+"/"+c.many+"/1", append(saved, "amount", "2 kg")...); got.to != food+"#"+c.name {
				t.Fatalf("save = %d\n%s", got.status, words(got.body))
			}
			s.shows(food, "2 kg")
			if got := s.post(food + "/" + c.many + "/1/delete"); got.to != food {
				t.Fatalf("delete = %d to %q", got.status, got.to)
			}
			if page := s.shows(food, "The "+c.name+" is deleted"); !strings.Contains(page, "/deleted/"+c.name+"/1/restore") {
				t.Error("the page offers no undo")
			}
			s.shows("/deleted", "2 kg plain flour")
			if again := s.post(food + "/" + c.many + "/1/delete"); again.status != http.StatusNotFound {
				t.Errorf("deleted twice = %d, want 404", again.status)
			}
			s.post("/deleted/" + c.name + "/1/restore")
			s.shows(food, "2 kg")
		})
	}
}

func TestARefusedEntryKeepsWhatWasTyped(t *testing.T) {
	for _, c := range entryCases {
		t.Run(c.name+" "+c.wrongField, func(t *testing.T) {
			s := newSite(t)
			s.post("/larder/plain-flour/"+c.many, c.good...)
			for _, path := range []string{"/larder/plain-flour/" + c.many, "/larder/plain-flour/" + c.many + "/1"} {
				got := s.post(path, append(append([]string{"revision", "1"}, c.good...), c.wrongField, c.wrong)...)
				if got.status != http.StatusUnprocessableEntity || !strings.Contains(words(got.body), c.says) {
					t.Errorf("POST %s = %d and does not say %q", path, got.status, c.says)
				}
				if !strings.Contains(got.body, `id="`+c.name+`-`+c.wrongField+`-error"`) {
					t.Errorf("POST %s: the error does not stand beside the field", path)
				}
				for i := 0; i < len(c.good); i += 2 {
					if name, typed := c.good[i], c.good[i+1]; name != c.wrongField && !strings.Contains(got.body, `value="`+typed+`"`) {
						t.Errorf("POST %s: %s %q is lost", path, name, typed)
					}
				}
			}
			s.shows("/larder/plain-flour", c.shows)
		})
	}
}

func TestTheSecondOfTwoStaleEntriesShowsBothTexts(t *testing.T) {
	for _, c := range entryCases {
		s := newSite(t)
		const food = "/larder/plain-flour"
		s.post(food+"/"+c.many, c.good...)
		if got := s.post(food+"/"+c.many+"/1", append([]string{"revision", "1"}, c.good...)...); got.status != http.StatusSeeOther {
			t.Fatalf("first save = %d", got.status)
		}
		late := s.post(food+"/"+c.many+"/1", append([]string{"revision", "1"}, append(c.good, "amount", "9 kg")...)...)
		if late.status != http.StatusConflict || !strings.Contains(late.body, "9 kg") || !strings.Contains(words(late.body), "this "+c.name) {
			t.Fatalf("second save = %d, want 409 with both texts", late.status)
		}
		if got := s.post(food+"/"+c.many+"/1", append([]string{"revision", value(t, late.body, "revision")}, append(c.good, "amount", "9 kg")...)...); got.to != food+"#"+c.name {
			t.Errorf("mine over it = %d", got.status)
		}
		s.shows(food, "9 kg")
	}
}

func TestAnEntryOfAnotherFoodIsNotFound(t *testing.T) {
	s := newSite(t)
	s.post("/larder/plain-flour/packs", "amount", "1 kg")
	s.post("/larder/plain-flour/stock", "amount", "1 kg")
	for _, path := range []string{
		"/larder/egg/packs/1", "/larder/egg/packs/1/delete", "/larder/egg/stock/1", "/larder/egg/stock/1/delete", "/larder/zorb/packs", "/larder/zorb/stock",
		"/larder/plain-flour/packs/2", "/larder/plain-flour/packs/x", "/larder/plain-flour/stock/0", "/larder/plain-flour/stock/2/delete",
	} {
		if got := s.post(path, "amount", "2 kg", "revision", "1"); got.status != http.StatusNotFound {
			t.Errorf("POST %s = %d, want 404", path, got.status)
		}
	}
	for _, path := range []string{"/larder/egg?change=pack-1", "/larder/egg?change=stock-1", "/larder/plain-flour?change=pack-2"} {
		if got := s.get(path); got.status != http.StatusNotFound {
			t.Errorf("GET %s = %d, want 404", path, got.status)
		}
	}
	s.shows("/larder/plain-flour", "1 kg")
	s.shows("/larder/plain-flour?change=nothing", "Add pack", "Add stock")
}

func TestYolksAreNotedAsEggsAndWaterNotAtAll(t *testing.T) {
	s := newSite(t)
	if page := s.shows("/larder/egg-yolk", "Bought as egg"); !strings.Contains(page, `href="/larder/egg"`) || strings.Contains(page, "/packs") {
		t.Error("egg yolks take packs of their own")
	}
	if page := s.get("/larder/water").body; strings.Contains(page, "/packs") {
		t.Error("water takes packs")
	}
}

func TestWhatIsInStockIsListedWithItsDate(t *testing.T) {
	s := newSite(t)
	s.shows("/larder?aisle=stock", "Nothing is noted yet", "0 foods in stock")
	s.post("/larder/plain-flour/stock", "amount", "800 g")
	s.post("/larder/plain-flour/stock", "amount", "200 g", "useby", "2027-04-01")
	s.post("/larder/whole-milk/stock", "amount", "1 L", "useby", "2027-03-01")
	s.shows("/larder?aisle=stock", "2 foods in stock", "200 g plain flour use by 1 Apr; 800 g, no use-by date", "1 L whole milk use by 1 Mar ? past its date")
	s.shows("/larder/whole-milk", "past its date: not counted")
}

func TestAmountsOfPacksAndStock(t *testing.T) {
	for _, c := range []struct {
		typed, want string // "" is refused
	}{
		{"500 g", "500 g"},
		{"500g", "500 g"},
		{"1½ kg", "1.5 kg"},
		{"1.5 kg", "1.5 kg"},
		{"1 L", "1 L"},
		{"12", "12"},
		{"a dozen", "12"},
		{"6 pieces", "6 pieces"},
		{"1 bunch", "1 bunch"}, {"a bag", "1 bag"},
		{"1 lb", "1 lb"},
		{"1 lb 4 oz", "20 oz"},
		{"453.59237 g", "453.59 g"},
		{"1 US pint", "473.18 mL"}, // 473.176473 mL, NIST Handbook 44 App. C
		{"2 tbsp", "2 tbsp"},
		{"", ""}, {"0 g", ""}, {"-1 kg", ""}, {"2–3 kg", ""}, {"some", ""}, {"500 g bag", ""}, {"2 x 400 g", ""},
		{"20 °C", ""}, {"5 cm", ""}, {"10 min", ""}, {"heaped 2 tbsp", ""}, {"500", "500"},
	} {
		form := web.NewTyped(url.Values{"amount": {c.typed}})
		got := form.Amount("amount", "Write 500 g.")
		text := strings.ReplaceAll(got.String(), "\u00a0", " ")
		if text != c.want || (form.Err() != nil) != (c.want == "") {
			t.Errorf("%q is read as %q, %v; want %q", c.typed, text, form.Err(), c.want)
		}
		if err := form.Err(); err != nil && !strings.Contains(web.FieldError(err, "amount"), "Write 500 g.") {
			t.Errorf("%q: the refusal %v does not say what to type", c.typed, err)
		}
	}
}

// What the field of an amount shows is read back as the same amount.
func TestAnAmountIsReadAsItIsWritten(t *testing.T) {
	units := []measure.Unit{measure.Gram, measure.Kilogram, measure.Millilitre, measure.Litre, measure.Each, measure.Pound, measure.Bunch, measure.Piece, measure.Tablespoon}
	rapid.Check(t, func(t *rapid.T) {
		n := measure.Ratio(rapid.Int64Range(1, 99_999).Draw(t, "n"), rapid.SampledFrom([]int64{1, 2, 3, 4, 8, 10, 16, 100, 1000, 10_000}).Draw(t, "of"))
		a := measure.Of(n, rapid.SampledFrom(units).Draw(t, "unit"))
		form := web.NewTyped(url.Values{"amount": {web.AmountValue(a)}})
		if got := form.Amount("amount", "?"); !got.To.Equal(n) || got.Unit != a.Unit {
			t.Fatalf("%s %s is written %q and read as %s %s, %v", n, a.Unit, web.AmountValue(a), got.To, got.Unit, form.Err())
		}
	})
}
