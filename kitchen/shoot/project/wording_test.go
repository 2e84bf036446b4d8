package project_test

import (
	"errors"
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/project"
)

// A person reads these sentences beside the step; each says what to change.
func TestWhatCheckSays(t *testing.T) {
	oven := func(amount int) []project.Need { return []project.Need{{Station: 0, Amount: amount}} }
	for _, c := range []struct {
		name   string
		change func(*project.Project)
		field  string
		want   string
	}{
		{"an id twice", func(p *project.Project) { p.Tasks[2].ID = "a" }, "a", `Two tasks have the id "a". Give each task an id of its own.`},
		{"minutes below zero", func(p *project.Project) { p.Tasks[1].Minutes = -4 }, "b", `Task "b" takes -4 minutes. Minutes are from 0 to 600000.`},
		{"more than a year", func(p *project.Project) { p.Tasks[1].Minutes = 600_001 }, "b", `Task "b" takes 600001 minutes. Minutes are from 0 to 600000.`},
		{"a start in another year", func(p *project.Project) { p.Tasks[1].NotBefore = 600_001 }, "b",
			`Task "b" is not to start before minute 600001. Minutes are from 0 to 600000.`},
		{"no time for the task itself: 7 + 10 > 16", func(p *project.Project) { p.Tasks[1].NotBefore, p.Tasks[1].LatestEnd = 7, 16 }, "b",
			`Task "b" takes 10 minutes and starts at minute 7 or later, so it cannot have ended by minute 16. Give it more time.`},
		{"a forbidden time the wrong way round", func(p *project.Project) { p.Tasks[1].Forbidden = []project.Span{{From: 9, To: 4}} }, "b",
			`Task "b" has a forbidden time from minute 9 to minute 4. It must end after it begins, by minute 600000.`},
		{"a set-up below zero", func(p *project.Project) { p.Setups.Minutes = map[string]int{"wide": -3} }, "setups",
			`Setup "wide" takes -3 minutes. Minutes are from 0 to 600000.`},
		{"two stations of one name", func(p *project.Project) { p.Stations = append(p.Stations, project.Station{Name: "oven"}) }, "stations",
			`Station "oven" has no name of its own. Name each station once.`},
		{"a station of more than there can be", func(p *project.Project) { p.Stations[0].Capacity = 1_000_001 }, "stations",
			`Station "oven" has a capacity of 1000001. Capacities are from 0 to 1000000.`},
		{"changes out of order", func(p *project.Project) { p.Stations[0].Changes[1].From = 10 }, "stations",
			`Station "oven" changes to 1 at minute 10. Changes come in order of time, from minute 1 to 600000, to 0 or more.`},
		{"a station that is not there", func(p *project.Project) { p.Tasks[1].Needs = []project.Need{{Station: 7, Amount: 1}} }, "b",
			`Task "b" uses a station that is not listed. Add it to the stations or correct the name.`},
		{"a station twice", func(p *project.Project) { p.Tasks[1].Needs = append(oven(1), oven(1)...) }, "b",
			`Task "b" names station "oven" twice. Name it once with the whole amount.`},
		{"a need of nothing", func(p *project.Project) { p.Tasks[1].Needs = oven(0) }, "b",
			`Task "b" needs 0 of station "oven". Need 1 or more, or leave the station out.`},
		{"a need above the peak", func(p *project.Project) { p.Tasks[1].Needs = oven(3) }, "b",
			`Task "b" needs 3 of station "oven", which never has more than 2. Need less or add to the station.`},
		{"setting up needs too much", func(p *project.Project) { p.Setups.Needs = oven(3) }, "setting up",
			`Task "setting up" needs 3 of station "oven", which never has more than 2. Need less or add to the station.`},
		{"a wait below zero", func(p *project.Project) { p.Waits[0].AtLeast = -1 }, "b", `The wait between "a" and "b" is not from 0 to 600000 minutes.`},
		{"a longest wait below the shortest", func(p *project.Project) { p.Waits[1].AtMost = 2 }, "c",
			`"c" is to wait at least 3 and at most 2 minutes after "b": that cannot be met. Make the longest wait the longer one.`},
		{"a ring", func(p *project.Project) { p.Waits = append(p.Waits, after(2, 1, 0, project.None)) }, "b",
			`These tasks wait for each other in a cycle: "b" → "c" → "b". Remove one of the waits.`},
		{"a task after itself", func(p *project.Project) { p.Waits = append(p.Waits, after(0, 0, 0, project.None)) }, "a",
			`These tasks wait for each other in a cycle: "a" → "a". Remove one of the waits.`},
		{"an end before all that comes first: 5 + 10 > 14", func(p *project.Project) { p.Tasks[1].LatestEnd = 14 }, "a",
			`The waits and times of these tasks cannot all be met: "a", "b". Allow a longer wait or a later end.`},
		{"15 minutes of two tasks within 12 of a longest wait", func(p *project.Project) { p.Waits = append(p.Waits, after(0, 2, 0, 12)) }, "b",
			`The waits and times of these tasks cannot all be met: "b", "c", "a". Allow a longer wait or a later end.`},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := chain()
			c.change(&p)
			err := p.Check()
			if got := fault.Say(err); got != c.want {
				t.Errorf("it says\n%s\nwant\n%s", got, c.want)
			}
			if got := fault.Field(err); got != c.field {
				t.Errorf("the field is %q, want %q", got, c.field)
			}
		})
	}
}

// The limits themselves are allowed.
func TestWhatIsJustAllowed(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*project.Project)
	}{
		{"nothing at all", func(p *project.Project) { *p = project.Project{} }},
		{"moments", func(p *project.Project) { p.Tasks[1].Minutes = 0 }},
		{"a year", func(p *project.Project) { p.Tasks[2].Minutes = project.MaxMinutes }},
		{"an end with no minute to spare: 5 + 10", func(p *project.Project) { p.Tasks[1].LatestEnd = 15 }},
		{"a need of all there ever is", func(p *project.Project) { p.Tasks[1].Needs = []project.Need{{Station: 0, Amount: 2}} }},
		{"a need of what there is later", func(p *project.Project) {
			p.Stations[0] = project.Station{Name: "oven", Changes: []project.Level{{From: 20, Capacity: 2}}}
			p.Tasks[1].Needs = []project.Need{{Station: 0, Amount: 2}}
		}},
		{"a station that has none, which nobody needs", func(p *project.Project) { p.Stations[0] = project.Station{Name: "oven"} }},
		{"a change to the same", func(p *project.Project) { p.Stations[0].Changes[0].Capacity = 2 }},
		{"a wait of just so long", func(p *project.Project) { p.Waits[1].AtMost = 3 }},
		{"a longest wait over the whole: 10 + 3", func(p *project.Project) { p.Waits = append(p.Waits, after(0, 2, 0, 13)) }},
		{"the same wait twice", func(p *project.Project) { p.Waits = append(p.Waits, p.Waits[0]) }},
		{"forbidden before zero, too", func(p *project.Project) { p.Tasks[1].Forbidden = []project.Span{{From: -5, To: 3}} }},
		{"forbidden times that overlap", func(p *project.Project) { p.Tasks[1].Forbidden = []project.Span{{From: 5, To: 9}, {From: 1, To: 6}} }},
		{"a setup without minutes", func(p *project.Project) { p.Tasks[1].Setup = "wide" }},
		{"as many tasks as can be", func(p *project.Project) {
			for len(p.Tasks) < project.MaxTasks {
				p.Tasks = append(p.Tasks, task(string(rune(0x4e00+len(p.Tasks))), 1))
			}
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := chain()
			c.change(&p)
			if err := p.Check(); err != nil {
				t.Errorf("it is refused: %v", err)
			}
		})
	}
}

// A refusal is one error, not several: the first that stands in the way.
func TestCheckGivesOneFault(t *testing.T) {
	p := chain()
	p.Tasks[0].Minutes, p.Tasks[1].Minutes, p.Waits[0].AtLeast = -1, -1, -1
	err := p.Check()
	var one *fault.Error
	if !errors.As(err, &one) || len(fault.All(err)) != 1 || one.Field != "a" {
		t.Errorf("%v, want one fault about a", err)
	}
	var refused *project.Refusal
	if !errors.As(err, &refused) || len(refused.Tasks) != 1 || refused.Tasks[0] != 0 {
		t.Errorf("%+v, want a refusal about the first task", refused)
	}
}
