package web

import (
	"fmt"
	"regexp"
	"strings"

	"github.com/bojanz/currency"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/shop"
)

// priceText writes money in English, with its sign: "€4.20", "$4.20"; "" for the
// zero Amount. A show has one currency, so the sign is the short one of that
// currency's own country.
func priceText(a currency.Amount) string {
	code := a.CurrencyCode()
	if code == "" {
		return ""
	}
	f := currency.NewFormatter(currency.NewLocale("en"))
	f.SymbolMap[code] = signOf(code)
	return f.Format(a)
}

// signOf is a currency's sign where it is spent: a code begins with the code of
// its country (ISO 4217).
func signOf(code string) string {
	if len(code) < 2 {
		return code
	}
	sign, _ := currency.GetSymbol(code, currency.NewLocale("en-"+code[:2]))
	return sign
}

// minorText writes minor units of a currency with its sign; "" for none.
func minorText(price int64, code string) string {
	a, err := currency.NewAmountFromInt64(price, code)
	if price == 0 || err != nil {
		return ""
	}
	return priceText(a)
}

// minorValue writes minor units as they are typed: "4.20"; "" for none.
func minorValue(price int64, code string) string {
	a, err := currency.NewAmountFromInt64(price, code)
	if price == 0 || err != nil {
		return ""
	}
	return a.Number()
}

// bareNumber is a price without sign or code: at most nine figures, then what
// a currency has behind the point.
var bareNumber = regexp.MustCompile(`^[0-9]{1,9}(?:[.,]([0-9]{1,4}))?$`)

// price gives a price in minor units of a currency, 0 for an empty field. It may
// be typed with the currency's sign or code, and with a comma for the point.
func (t *typed) price(name, code string) int64 {
	text := t.text(name)
	if text == "" {
		return 0
	}
	digits, _ := currency.GetDigits(code)
	number := withoutSign(text, code)
	parts := bareNumber.FindStringSubmatch(number)
	if parts == nil || len(parts[1]) > int(digits) {
		t.fail(name, "“%s” is not a price in %s. Write it like %s.", text, code, minorValue(249, code))
		return 0
	}
	a, err := currency.NewAmount(strings.Replace(number, ",", ".", 1), code)
	if err != nil {
		t.fail(name, "“%s” is not a price in %s. Write it like %s.", text, code, minorValue(249, code))
		return 0
	}
	minor, err := a.Int64()
	if err != nil || minor == 0 {
		t.fail(name, "A price is above 0. Leave it empty if you do not know it.")
	}
	return minor
}

// withoutSign takes a currency's sign and code, and blanks, off what was typed.
func withoutSign(text, code string) string {
	long, _ := currency.GetSymbol(code, currency.NewLocale("en")) // "$"
	for _, off := range []string{code, strings.ToLower(code), long, signOf(code), "\u00a0", " "} {
		text = strings.ReplaceAll(text, off, "")
	}
	return text
}

// unitPrice writes what a pack costs by the kilogram, the litre or the piece:
// "$4.20 a kg"; "" where that says nothing new.
func unitPrice(p shop.Pack, code string, system measure.System) string {
	per, word := measure.Whole(1), "each"
	var holds measure.Number
	switch p.Amount.Unit.Kind() {
	case measure.Mass:
		grams, _ := measure.Grams(p.Amount.Unit)
		holds, word = p.Amount.To.Mul(grams).Quo(measure.Whole(1000)), "a kg"
	case measure.Volume:
		millilitres, ok := system.Or(measure.US).Millilitres(p.Amount.Unit)
		if !ok {
			return ""
		}
		holds, word = p.Amount.To.Mul(millilitres).Quo(measure.Whole(1000)), "a litre"
	default:
		holds = p.Amount.To
	}
	if p.Price == 0 || holds.Sign() <= 0 || holds.Equal(per) {
		return ""
	}
	minor, ok := measure.Whole(p.Price).Quo(holds).Round(per).Int()
	if !ok || minor == 0 {
		return ""
	}
	return minorText(minor, code) + " " + word
}

// costText words what a list comes to: "$8.40", "for 6 of 9 items; 3 without a
// price". Both are "" where no price is known.
func costText(c shop.Cost) (sum, text string) {
	if c.Priced == 0 {
		return "", ""
	}
	all := count(c.Priced+c.Unpriced, "item", "items")
	if c.Unpriced == 0 {
		text = "for " + all
	} else {
		text = fmt.Sprintf("for %d of %s; %d without a price", c.Priced, all, c.Unpriced)
	}
	if c.Estimate {
		text += "; some packs by an estimated weight"
	}
	return priceText(c.Sum), text
}
