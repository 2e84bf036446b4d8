package web_test

import (
	"fmt"
	"net/url"
	"strings"
	"testing"

	"github.com/bojanz/currency"
	"pgregory.net/rapid"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/shop"
	"benchproof/web"
)

// Decimals by currency: ISO 4217, two for most, none for the yen, three for the
// dinar of Bahrain (from memory).
func TestAPriceIsReadInTheShowsCurrency(t *testing.T) {
	for _, c := range []struct {
		typed, code string
		want        int64
		says        string // of a refusal
	}{
		{"", "NZD", 0, ""},
		{"2.49", "NZD", 249, ""},
		{"2,49", "EUR", 249, ""},
		{" 2.5 ", "NZD", 250, ""},
		{"3", "NZD", 300, ""},
		{"$3.10", "NZD", 310, ""},
		{"NZ$3.10", "NZD", 310, ""},
		{"NZD 3.10", "NZD", 310, ""},
		{"3.10 nzd", "NZD", 310, ""},
		{"€ 2,49", "EUR", 249, ""},
		{"2.49 €", "EUR", 249, ""},
		{"£0.85", "GBP", 85, ""},
		{"kr 24,90", "SEK", 2490, ""},
		{"249", "JPY", 249, ""},
		{"0.249", "BHD", 249, ""},
		{"999999999.99", "NZD", 99999999999, ""},
		{"2.499", "NZD", 0, "is not a price in NZD. Write it like 2.49."},
		{"2.49", "JPY", 0, "is not a price in JPY. Write it like 249."},
		{"1,000", "NZD", 0, "is not a price in NZD"}, // a thousand, or one?
		{"1,000.50", "NZD", 0, "is not a price in NZD"},
		{"1000000000", "NZD", 0, "is not a price in NZD"},
		{"-2", "NZD", 0, "is not a price in NZD"},
		{"2.", "NZD", 0, "is not a price in NZD"},
		{".5", "NZD", 0, "is not a price in NZD"},
		{"1e3", "NZD", 0, "is not a price in NZD"},
		{"€2.49", "NZD", 0, "“€2.49” is not a price in NZD"},
		{"two", "NZD", 0, "“two” is not a price in NZD"},
		{"0", "NZD", 0, "A price is above 0"},
		{"0.00", "NZD", 0, "A price is above 0"},
	} {
		form := web.NewTyped(url.Values{"price": {c.typed}})
		got, err := form.Price("price", c.code), form.Err()
		if got != c.want || (err == nil) != (c.says == "") || err != nil && !strings.Contains(err.Error(), c.says) {
			t.Errorf("%q in %s is read as %d, %v; want %d, %q", c.typed, c.code, got, err, c.want, c.says)
		}
		if err != nil && web.FieldError(err, "price") == "" {
			t.Errorf("%q in %s: the refusal does not stand at its field", c.typed, c.code)
		}
	}
}

// What a price's field shows is read back as the same price.
func TestAPriceIsReadAsItIsWritten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		code := rapid.SampledFrom(currency.GetCurrencyCodes()).Draw(t, "currency")
		price := rapid.Int64Range(1, 99_999_999).Draw(t, "price")
		form := web.NewTyped(url.Values{"price": {web.MinorValue(price, code)}})
		if got := form.Price("price", code); got != price || form.Err() != nil {
			t.Fatalf("%d in %s is written %q and read as %d, %v", price, code, web.MinorValue(price, code), got, form.Err())
		}
	})
	if got := web.MinorValue(0, "NZD"); got != "" {
		t.Errorf("no price is written %q", got)
	}
}

func TestPricesAreWrittenWithTheirSign(t *testing.T) {
	for code, want := range map[string]string{
		"NZD": "$1,234.50", "USD": "$1,234.50", "EUR": "€1,234.50", "GBP": "£1,234.50", "JPY": "¥123,450", "CHF": "CHF\u00a01,234.50", "BHD": "BHD\u00a0123.450",
	} {
		a, err := currency.NewAmountFromInt64(123450, code)
		if err != nil {
			t.Fatal(err)
		}
		if got := web.PriceText(a); got != want {
			t.Errorf("123450 minor units of %s are written %q, want %q", code, got, want)
		}
	}
	if got := web.PriceText(currency.Amount{}); got != "" {
		t.Errorf("no money is written %q", got)
	}
}

func TestUnitPrices(t *testing.T) {
	for _, c := range []struct {
		n, price string
		unit     measure.Unit
		want     string
	}{
		{"500", "210", measure.Gram, "$4.20 a kg"},
		{"1.5", "330", measure.Kilogram, "$2.20 a kg"},
		{"1", "330", measure.Kilogram, ""},
		{"1000", "330", measure.Gram, ""},
		{"1", "500", measure.Pound, "$11.02 a kg"}, // 453.59237 g, NIST SP 811
		{"330", "420", measure.Millilitre, "$12.73 a litre"},
		{"2", "480", measure.Litre, "$2.40 a litre"},
		{"1", "300", measure.Pint, "$5.28 a litre"}, // in a metric house the imperial pint, 568.26125 mL
		{"12", "980", measure.Each, "$0.82 each"},
		{"1", "95", measure.Each, ""},
		{"12", "150", measure.Clove, "$0.13 each"},
		{"500", "0", measure.Gram, ""},
		{"1000000", "1", measure.Kilogram, ""},
	} {
		price, _ := measure.MustNumber(c.price).Int()
		p := shop.Pack{Amount: measure.Of(measure.MustNumber(c.n), c.unit), Price: price}
		if got := web.UnitPrice(p, "NZD", measure.Metric); got != c.want {
			t.Errorf("%s at %d: %q, want %q", p.Amount, price, got, c.want)
		}
	}
}

func TestCostText(t *testing.T) {
	sum, _ := currency.NewAmount("8.40", "EUR")
	for _, c := range []struct {
		cost shop.Cost
		want string
	}{
		{shop.Cost{}, "|"},
		{shop.Cost{Unpriced: 9}, "|"},
		{shop.Cost{Sum: sum, Priced: 6, Unpriced: 3}, "€8.40|for 6 of 9 items; 3 without a price"},
		{shop.Cost{Sum: sum, Priced: 9}, "€8.40|for 9 items"},
		{shop.Cost{Sum: sum, Priced: 1}, "€8.40|for 1 item"},
		{shop.Cost{Sum: sum, Priced: 2, Unpriced: 1, Estimate: true}, "€8.40|for 2 of 3 items; 1 without a price; some packs by an estimated weight"},
	} {
		sum, text := web.CostText(c.cost)
		if got := fmt.Sprint(sum, "|", text); got != c.want {
			t.Errorf("%+v is worded %q, want %q", c.cost, got, c.want)
		}
	}
}
