package shoot_test

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/project"
)

type object = map[string]any

// written is a project as a plan's file. bare says whether to write what may be
// written shorter so: a station's units, a task's id behind after, and a pin.
func written(p project.Project, bare bool) []byte {
	stations, tasks := object{}, []object{}
	for _, s := range p.Stations {
		changes := []object{}
		for _, c := range s.Changes {
			changes = append(changes, object{"from": c.From, "units": c.Capacity})
		}
		stations[s.Name] = object{"units": s.Capacity, "changes": changes}
		if bare && len(changes) == 0 {
			stations[s.Name] = s.Capacity
		}
	}
	for i := range p.Tasks {
		tasks = append(tasks, writtenTask(p, i, bare))
	}
	setups := object{"minutes": p.Setups.Minutes, "uses": writtenNeeds(p, p.Setups.Needs)}
	data, err := json.Marshal(object{"stations": stations, "tasks": tasks, "setups": setups})
	if err != nil {
		panic(err)
	}
	return data
}

func writtenTask(p project.Project, i int, bare bool) object {
	x := p.Tasks[i]
	task := object{"id": x.ID, "minutes": x.Minutes, "uses": writtenNeeds(p, x.Needs), "setup": x.Setup, "notBefore": x.NotBefore}
	if n, err := strconv.Atoi(x.ID); err == nil && bare && strconv.Itoa(n) == x.ID {
		task["id"] = n
	}
	if start, isPinned := x.Fixed(); isPinned && bare {
		task["at"] = start
	} else if x.LatestEnd != project.None {
		task["latestEnd"] = x.LatestEnd
	}
	forbidden, after := []object{}, []any{}
	for _, span := range x.Forbidden {
		forbidden = append(forbidden, object{"from": span.From, "to": span.To})
	}
	for _, w := range p.Waits {
		wait := object{"id": p.Tasks[w.Before].ID, "atLeast": w.AtLeast}
		if w.AtMost != project.None {
			wait["atMost"] = w.AtMost
		}
		switch {
		case w.After != i:
		case bare && w.AtLeast == 0 && w.AtMost == project.None:
			after = append(after, p.Tasks[w.Before].ID)
		default:
			after = append(after, wait)
		}
	}
	task["forbidden"], task["after"] = forbidden, after
	return task
}

func writtenNeeds(p project.Project, needs []project.Need) object {
	all := object{}
	for _, n := range needs {
		all[p.Stations[n.Station].Name] = n.Amount
	}
	return all
}

// drawFile draws a project as a file can say it, with names of all kinds. Waits
// stand in the order of the tasks that wait.
func drawFile(t *rapid.T) project.Project {
	names := []string{"Backofen", "hands", "it's \"hot\"", "ört", "烤箱"} // in the order of their letters
	p := project.Project{Setups: project.Setups{Minutes: map[string]int{"wide": rapid.IntRange(0, 20).Draw(t, "wide"), "close": 0}}}
	for _, name := range names[:rapid.IntRange(1, len(names)).Draw(t, "stations")] {
		s := project.Station{Name: name, Capacity: rapid.IntRange(1, 5).Draw(t, "units")}
		if rapid.Bool().Draw(t, "changes") {
			s.Changes = []project.Level{{From: rapid.IntRange(1, 99).Draw(t, "from"), Capacity: rapid.IntRange(0, 5).Draw(t, "then")}}
		}
		p.Stations = append(p.Stations, s)
	}
	ids := []string{"1", "02", "mix", "tempér", "4.5", "cut → serve"}
	for i, id := range ids[:rapid.IntRange(1, len(ids)).Draw(t, "tasks")] {
		p.Tasks = append(p.Tasks, drawFileTask(t, id, p.Stations))
		for j := range i {
			if !rapid.Bool().Draw(t, "follows") {
				continue
			}
			w := project.Wait{Before: j, After: i, AtLeast: rapid.IntRange(0, 9).Draw(t, "at least"), AtMost: project.None}
			if rapid.Bool().Draw(t, "hurries") {
				w.AtMost = w.AtLeast + rapid.IntRange(0, 200).Draw(t, "at most")
			}
			p.Waits = append(p.Waits, w)
		}
	}
	p.Setups.Needs = drawFileNeeds(t, p.Stations)
	return p
}

func drawFileTask(t *rapid.T, id string, stations []project.Station) project.Task {
	x := project.Task{ID: id, Minutes: rapid.IntRange(0, 90).Draw(t, "minutes"), NotBefore: rapid.IntRange(0, 50).Draw(t, "not before"), LatestEnd: project.None}
	x.Needs = drawFileNeeds(t, stations)
	x.Setup = rapid.SampledFrom([]string{"", "wide", "close"}).Draw(t, "setup")
	if rapid.Bool().Draw(t, "is barred") {
		from := rapid.IntRange(0, 80).Draw(t, "barred from")
		x.Forbidden = []project.Span{{From: from, To: from + rapid.IntRange(1, 30).Draw(t, "barred for")}}
	}
	switch rapid.IntRange(0, 3).Draw(t, "limit") {
	case 0:
		return x.Pin(x.NotBefore)
	case 1:
		x.LatestEnd = x.NotBefore + x.Minutes + rapid.IntRange(0, 500).Draw(t, "room")
	}
	return x
}

func drawFileNeeds(t *rapid.T, stations []project.Station) (all []project.Need) {
	for r, s := range stations {
		if amount := rapid.IntRange(0, s.Capacity).Draw(t, "amount"); amount > 0 {
			all = append(all, project.Need{Station: r, Amount: amount})
		}
	}
	return all
}

// What is written is read back the same, the long way and the short way; if it
// contradicts itself, it is refused with the words of Check.
func TestAPlanFileReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawFile(t)
		for _, bare := range []bool{false, true} {
			data := written(p, bare)
			got, err := shoot.ReadPlan(data)
			if want := p.Check(); want != nil || err != nil {
				if fault.Say(err) != fault.Say(want) {
					t.Fatalf("%s\nis refused: %v\nwant %v", data, err, want)
				}
				continue
			}
			if diff := cmp.Diff(p, got, cmpopts.EquateEmpty()); diff != "" {
				t.Fatalf("%s\n(-written +read):\n%s", data, diff)
			}
		}
	})
}

// FuzzPlanReadsBack: whatever can be read is read the same when it is written
// again.
func FuzzPlanReadsBack(f *testing.F) {
	f.Add([]byte(loafPlan))
	f.Add([]byte(`{"stations":{"h":{"units":2,"changes":[{"from":9,"units":1}]},"a":7},"setups":{"minutes":{"o":4},"uses":{"h":1,"a":0}},"tasks":[{"id":1,"minutes":5,"setup":"o","uses":{"h":1}},{"id":"2","note":"x","minutes":3,"at":20,"notBefore":2,"forbidden":[{"from":-1,"to":4}]},{"id":-3e2,"minutes":2,"latestEnd":40,"after":[1,{"id":2,"atLeast":1,"atMost":9}]}]}`))
	f.Add([]byte(`{"tasks":[{"id":"","minutes":0}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := shoot.ReadPlan(data)
		if err != nil {
			return
		}
		for _, bare := range []bool{false, true} {
			again, err := shoot.ReadPlan(written(p, bare))
			if err != nil {
				t.Fatalf("written again it is refused: %v", err)
			}
			byWait := cmpopts.SortSlices(func(a, b project.Wait) bool { return fmt.Sprint(a.After, a) < fmt.Sprint(b.After, b) })
			if diff := cmp.Diff(p, again, cmpopts.EquateEmpty(), byWait); diff != "" {
				t.Fatalf("(-first +again):\n%s", diff)
			}
		}
	})
}

// Blanks, line ends and the order of names in an object are nothing.
func TestHowAPlanFileIsLaidOutIsNothing(t *testing.T) {
	want, err := shoot.ReadPlan([]byte(loafPlan))
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{
		"on one line":   strings.ReplaceAll(loafPlan, "\n", " "),
		"blanks around": "\n\t " + loafPlan + "\r\n",
		"tasks first":   `{"tasks":` + loafPlan[strings.Index(loafPlan, "[{"):len(loafPlan)-1] + `,"stations":{"oven":1,"hands":1}}`,
		"empty set-ups": strings.TrimSuffix(loafPlan, "}") + `,"setups":{}}`,
		"no set-ups":    strings.TrimSuffix(loafPlan, "}") + `,"setups":null}`,
	} {
		got, err := shoot.ReadPlan([]byte(text))
		if err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

func TestWhatReadPlanSays(t *testing.T) {
	for _, c := range []struct {
		name, file, field, want string
	}{
		{"nothing", ``, "file", `The plan cannot be read: the text ends too early.`},
		{"no JSON, on line 3", "{\n\"tasks\": [\n{id: 7}]}", "file", `The plan cannot be read: line 3 is no JSON (invalid character 'i' looking for beginning of object key string).`},
		{"two objects", `{"tasks":[]} {}`, "file", `The plan cannot be read: something follows the object.`},
		{"a name that means nothing", `{"task":[]}`, "file", `The plan cannot be read: unknown field "task".`},
		{"half a minute", `{"tasks":[{"id":"mix","minutes":2.5}]}`, "file",
			`The plan cannot be read: “tasks.minutes” must not be a number 2.5; minutes, waits and units are whole numbers, names are text in quotes.`},
		{"minutes as text", `{"tasks":[{"id":"mix","minutes":"ten"}]}`, "file",
			`The plan cannot be read: “tasks.minutes” must not be a string; minutes, waits and units are whole numbers, names are text in quotes.`},
		{"no minutes", `{"tasks":[{"id":"mix"}]}`, "mix", `Task "mix" has no minutes. Write how long it takes, 0 for a moment.`},
		{"an id twice", `{"tasks":[{"id":7,"minutes":5},{"id":"7","minutes":6}]}`, "7", `Two tasks have the id "7". Give each task an id of its own.`},
		{"an unknown id", `{"tasks":[{"id":"shape","minutes":5,"after":["prove"]}]}`, "shape",
			`Task "shape" comes after "prove", which is not in the plan. Add that task or correct the id.`},
		{"an unknown station", `{"tasks":[{"id":"bake","minutes":5,"uses":{"oven":1}}]}`, "bake",
			`Task "bake" uses station "oven", which is not listed. Add it to the stations or correct the name.`},
		{"a set-up that uses one", `{"setups":{"uses":{"crane":1}},"tasks":[]}`, "setups",
			`Setting up uses station "crane", which is not listed. Add it to the stations or correct the name.`},
		{"a need above the capacity", `{"stations":{"oven":1},"tasks":[{"id":"bake","minutes":5,"uses":{"oven":2}}]}`, "bake",
			`Task "bake" needs 2 of station "oven", which never has more than 1. Need less or add to the station.`},
		{"a pin before it may start", `{"tasks":[{"id":"bake","minutes":5,"at":10,"notBefore":12}]}`, "bake",
			`Task "bake" is to start at minute 10, which its other times do not allow. Change one of them.`},
		{"a pin too late: 10 + 5 > 14", `{"tasks":[{"id":"bake","minutes":5,"at":10,"latestEnd":14}]}`, "bake",
			`Task "bake" is to start at minute 10, which its other times do not allow. Change one of them.`},
		{"an end before the day", `{"tasks":[{"id":"bake","minutes":0,"latestEnd":-2}]}`, "bake", `Task "bake" is to end by minute -2. Minutes are 0 or more.`},
		{"a wait below zero", `{"tasks":[{"id":"a","minutes":5},{"id":"b","minutes":5,"after":[{"id":"a","atMost":-3}]}]}`, "b",
			`The longest wait between "a" and "b" is -3 minutes. Waits are 0 or more.`},
		{"a cycle", `{"tasks":[{"id":"a","minutes":5,"after":["b"]},{"id":"b","minutes":5,"after":["a"]}]}`, "a",
			`These tasks wait for each other in a cycle: "a" → "b" → "a". Remove one of the waits.`},
		{"waits that cannot be met", `{"tasks":[{"id":"a","minutes":5},{"id":"b","minutes":40,"after":["a"]},{"id":"c","minutes":5,"after":["b",{"id":"a","atMost":30}]}]}`, "b",
			`The waits and times of these tasks cannot all be met: "b", "c", "a". Allow a longer wait or a later end.`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := shoot.ReadPlan([]byte(c.file))
			if fault.Say(err) != c.want || fault.Field(err) != c.field {
				t.Errorf("%s: %s\nwant\n%s: %s", fault.Field(err), fault.Say(err), c.field, c.want)
			}
		})
	}
}
