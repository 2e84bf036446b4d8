package nutrition

import (
	"regexp"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// retained is the share of alcohol that stays after some minutes of heat,
// stirred in. Source: USDA Table of Nutrient Retention Factors, Release 6
// (2007), from memory.
var retained = []struct {
	minutes int64
	share   measure.Number
}{
	{150, measure.Ratio(5, 100)}, {120, measure.Ratio(10, 100)}, {90, measure.Ratio(20, 100)}, {60, measure.Ratio(25, 100)},
	{30, measure.Ratio(35, 100)}, {15, measure.Ratio(40, 100)}, {0, measure.Ratio(85, 100)},
}

// The same table's share for a dish that is set alight.
var retainedFlamed = measure.Ratio(75, 100)

// AlcoholLeft gives the share, 0 to 1, of the alcohol stirred into something
// that is left after so many minutes at the boil or in the oven. Between the
// rows of the table the shorter time counts, under 15 minutes that of a hot
// liquid off the heat; with less than 0 minutes there was no heat.
func AlcoholLeft(minutes measure.Number) measure.Number {
	for _, r := range retained {
		if minutes.Cmp(measure.Whole(r.minutes)) >= 0 {
			return r.share
		}
	}
	return measure.Whole(1)
}

var (
	leastAlcohol = measure.Whole(2)           // g in a line, from which on it is worth a word
	alcoholKcal  = measure.MustNumber("6.93") // per g, as in USDA's figures
	flamedWords  = regexp.MustCompile(`(?i)\b(flamb|flam(e|ing)\b.*(brandy|rum|cognac|spirit|alcohol)|set .*(alight|on fire)|ignite|light (it|the (brandy|rum|cognac|spirit|alcohol)))`)
)

// boilOff takes off the alcohol that heat drives out, by how long the steps
// cook from the first on that names the line.
func (c *count) boilOff() {
	for i := range c.entries {
		e := &c.entries[i]
		if e.Food == nil || e.Food.Per100.Alcohol == nil {
			continue
		}
		if why := c.boilOffLine(e); e.alcohol().Cmp(leastAlcohol) >= 0 {
			e.because(why)
		}
	}
}

// boilOffLine does so for one line and says what it assumed; "" if nothing.
func (c *count) boilOffLine(e *entry) string {
	at, ok := c.steps().firstUse(e.place())
	if !ok {
		return "all its alcohol is counted, because no step says when it goes in."
	}
	minutes, hot := c.steps().heatFrom(at)
	flamed := flamedWords.MatchString(c.steps().step(at).Text)
	if !hot && !flamed {
		return ""
	}
	how := "after " + measure.FormatMinutes(measure.One(minutes)) + " of heat"
	if hot {
		e.kept = AlcoholLeft(minutes)
	}
	if minutes.IsZero() {
		how = "in something hot"
	}
	if flamed && e.kept.Cmp(retainedFlamed) > 0 {
		e.kept, how = retainedFlamed, "once it is set alight"
	}
	return "about " + percent(e.kept) + " of its alcohol is taken to be left " + how + "."
}

// alcohol is what an entry holds before it is heated, in grams.
func (e *entry) alcohol() measure.Number {
	return e.Food.Per100.Alcohol.Mul(e.Eaten).Quo(measure.Whole(100))
}

// boiled is the entry's food with the alcohol that stays.
func (e *entry) boiled() *food.Food {
	alcohol := e.Food.Per100.Alcohol
	if alcohol == nil || e.kept.Equal(measure.Whole(1)) {
		return e.Food
	}
	f := *e.Food
	left := alcohol.Mul(e.kept)
	f.Per100.Alcohol = &left
	if f.Per100.EnergyKcal != nil {
		energy := f.Per100.EnergyKcal.Sub(alcohol.Sub(left).Mul(alcoholKcal))
		if energy.Sign() < 0 {
			energy = measure.Number{}
		}
		f.Per100.EnergyKcal = &energy
	}
	return &f
}
