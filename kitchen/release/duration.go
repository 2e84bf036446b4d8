package release

import (
	"strconv"
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
)

// ISODuration writes minutes as an ISO 8601 duration of days, hours, minutes and
// seconds, zero parts left out: "PT1H30M", "P1DT2H", "PT45S"; "PT0S" for 0.
// Parts of a second are rounded; less than 0 is 0.
func ISODuration(minutes measure.Number) string {
	seconds, _ := minutes.Mul(measure.Whole(60)).Round(measure.Whole(1)).Int()
	if seconds <= 0 {
		return "PT0S"
	}
	var b strings.Builder
	b.WriteByte('P')
	part := func(size int64, letter byte) {
		if n := seconds / size; n > 0 {
			b.WriteString(strconv.FormatInt(n, 10))
			b.WriteByte(letter)
		}
		seconds %= size
	}
	part(24*60*60, 'D')
	if seconds > 0 {
		b.WriteByte('T')
	}
	part(60*60, 'H')
	part(60, 'M')
	part(1, 'S')
	return b.String()
}

// Times are what a recipe takes, in minutes; of a range the longer.
type Times struct {
	Prepare measure.Number // hands at work, off the heat
	Cook    measure.Number // on the hob, in the oven, in hot oil, under the grill
	Total   measure.Number // all steps one after another, waits too
}

// TimesOf adds up the minutes that the steps state. A step without minutes adds
// nothing, so that each figure is a least one.
func TimesOf(r recipe.Recipe) Times {
	var t Times
	for _, component := range r.Components {
		for _, step := range component.Steps {
			if !step.HasMinutes {
				continue
			}
			minutes := step.Minutes.To
			t.Total = t.Total.Add(minutes)
			switch {
			case cooks(step.Station):
				t.Cook = t.Cook.Add(minutes)
			case step.HandsOn:
				t.Prepare = t.Prepare.Add(minutes)
			}
		}
	}
	return t
}

func cooks(station string) bool {
	switch station {
	case "hob", "oven", "fryer", "grill":
		return true
	}
	return false
}
