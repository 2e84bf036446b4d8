package web

import (
	"regexp"
	"strconv"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
)

// planMinute is how the plan's own sentences give a time.
var planMinute = regexp.MustCompile(`\bminute (\d+)\b`)

// say is what a refused plan asks for, with its times on the clock. What stands
// between quotation marks is a step's own words and stays.
func (p *shootPlan) say(err error) string {
	text := fault.Say(err)
	if p.day.Finish > 0 && !p.countsForwards(err) && planMinute.MatchString(text) {
		return "The day does not fit between " + episode.Clock(p.settings.Begin) + " and " + episode.Clock(p.settings.DoneBy) +
			". Begin earlier, be done later, or make some of it ahead."
	}
	parts := strings.Split(text, `"`)
	for i := 0; i < len(parts); i += 2 {
		parts[i] = planMinute.ReplaceAllStringFunc(parts[i], func(found string) string {
			minute, err := strconv.Atoi(strings.TrimPrefix(found, "minute "))
			if err != nil || minute > 7*episode.DayMinutes {
				return found
			}
			return p.at(minute)
		})
	}
	return strings.Join(parts, `"`)
}

// countsForwards tells whether an error's minutes are those of the day: a search
// backwards from a finish counts its own.
func (p *shootPlan) countsForwards(err error) bool {
	for _, f := range fault.All(err) {
		if f.Field != "finish" {
			return false
		}
	}
	return true
}

// onClock is a refusal in the words of say; other errors stay as they are.
func (p *shootPlan) onClock(err error) error {
	if kind := fault.KindOf(err); kind == fault.Invalid || kind == fault.Busy {
		return &fault.Error{Kind: kind, Say: p.say(err), Err: err}
	}
	return err
}
