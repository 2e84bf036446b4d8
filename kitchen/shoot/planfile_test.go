package shoot_test

import (
	"context"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/feasible"
	"benchproof/kitchen/shoot/project"
	"benchproof/kitchen/shoot/solve"
)

const loafPlan = `{"stations":{"hands":1,"oven":1},
 "tasks":[{"id":"mix","minutes":10,"uses":{"hands":1}},
          {"id":"prove","minutes":120,"after":["mix"]},
          {"id":"shape","minutes":20,"after":[{"id":"prove","atLeast":0,"atMost":30}],"uses":{"hands":1}}]}`

func TestReadPlan(t *testing.T) {
	p, err := shoot.ReadPlan([]byte(loafPlan))
	if err != nil {
		t.Fatal(err)
	}
	hands := []project.Need{{Station: 0, Amount: 1}}
	want := project.Project{
		Stations: []project.Station{{Name: "hands", Capacity: 1}, {Name: "oven", Capacity: 1}},
		Tasks: []project.Task{
			{ID: "mix", Minutes: 10, Needs: hands, LatestEnd: project.None},
			{ID: "prove", Minutes: 120, LatestEnd: project.None},
			{ID: "shape", Minutes: 20, Needs: hands, LatestEnd: project.None},
		},
		Waits: []project.Wait{{Before: 0, After: 1, AtMost: project.None}, {Before: 1, After: 2, AtMost: 30}},
	}
	if diff := cmp.Diff(want, p); diff != "" {
		t.Error(diff)
	}
}

func TestReadPlanWithAllThereIs(t *testing.T) {
	p, err := shoot.ReadPlan([]byte(`{
		"stations": {"hands": {"units": 2, "changes": [{"from": 240, "units": 1}]}, "camera": 1},
		"setups": {"minutes": {"overhead": 8}, "uses": {"hands": 1}},
		"tasks": [
			{"id": 7, "note": "on the tray", "minutes": 5, "at": 30, "setup": "overhead", "uses": {"camera": 1, "hands": 0}},
			{"id": "b", "minutes": 0, "notBefore": 3, "latestEnd": 90, "forbidden": [{"from": 10, "to": 20}], "after": [7]}
		]}`))
	if err != nil {
		t.Fatal(err)
	}
	want := project.Project{
		Stations: []project.Station{{Name: "camera", Capacity: 1}, {Name: "hands", Capacity: 2, Changes: []project.Level{{From: 240, Capacity: 1}}}},
		Setups:   project.Setups{Minutes: map[string]int{"overhead": 8}, Needs: []project.Need{{Station: 1, Amount: 1}}},
		Tasks: []project.Task{
			{ID: "7", Minutes: 5, NotBefore: 30, LatestEnd: 35, Setup: "overhead", Needs: []project.Need{{Station: 0, Amount: 1}}},
			{ID: "b", NotBefore: 3, LatestEnd: 90, Forbidden: []project.Span{{From: 10, To: 20}}},
		},
		Waits: []project.Wait{{Before: 0, After: 1, AtMost: project.None}},
	}
	if diff := cmp.Diff(want, p); diff != "" {
		t.Error(diff)
	}
}

func TestReadPlanNamesWhatIsWrong(t *testing.T) {
	for _, c := range []struct {
		name string
		file string
		says []string
	}{
		{"nothing", ``, []string{"ends too early"}},
		{"cut off", `{"tasks":[{"id":"mix"`, []string{"ends too early"}},
		{"no JSON", "{\n  tasks: []\n}", []string{"line 2"}},
		{"two objects", `{} {}`, []string{"follows"}},
		{"a list", `[]`, []string{"cannot be read", "array", "object"}},
		{"a word", `"tasks"`, []string{"cannot be read", "string", "object"}},
		{"no tasks", `{"stations":{"oven":1}}`, []string{`"tasks"`}},
		{"null", `null`, []string{`"tasks"`}},
		{"a task of nothing", `{"tasks":[{"id":"a","minutes":1},null]}`, []string{"Task 2", "id"}},
		{"minutes twice", `{"tasks":[{"id":"a","minutes":1,"after":[],"minutes":2}]}`, []string{`"minutes"`, "twice"}},
		{"a station twice", `{"stations":{"oven":1,"hands":{"units":1},"oven":2},"tasks":[]}`, []string{`"oven"`, "twice"}},
		{"tasks twice", `{"tasks":[{"id":"a","minutes":1}],"tasks":[]}`, []string{`"tasks"`, "twice"}},
		{"a setup that is not listed", `{"setups":{"minutes":{"wide":5}},"tasks":[{"id":"pour","minutes":1,"setup":"wdie"}]}`, []string{`"pour"`, `"wdie"`}},
		{"half a minute", `{"tasks":[{"id":"mix","minutes":2.5}]}`, []string{"minutes", "whole"}},
		{"minutes as text", `{"tasks":[{"id":"mix","minutes":"10"}]}`, []string{"minutes"}},
		{"a slip of the pen", `{"tasks":[{"id":"mix","minutes":5,"uess":{}}]}`, []string{"uess"}},
		{"a slip in a wait", `{"tasks":[{"id":"a","minutes":5},{"id":"b","minutes":5,"after":[{"id":"a","atmots":3}]}]}`, []string{"atmots"}},
		{"no minutes", `{"tasks":[{"id":"mix"}]}`, []string{`"mix"`}},
		{"minutes below zero", `{"tasks":[{"id":"mix","minutes":-1}]}`, []string{`"mix"`, "-1"}},
		{"no id", `{"tasks":[{"minutes":5}]}`, []string{"Task 1"}},
		{"an id twice", `{"tasks":[{"id":"mix","minutes":5},{"id":"mix","minutes":6}]}`, []string{`"mix"`, "Two"}},
		{"an unknown id", `{"tasks":[{"id":"shape","minutes":5,"after":["prove"]}]}`, []string{`"shape"`, `"prove"`}},
		{"an unknown station", `{"tasks":[{"id":"bake","minutes":5,"uses":{"oven":1}}]}`, []string{`"bake"`, `"oven"`}},
		{"a need above the capacity", `{"stations":{"oven":1},"tasks":[{"id":"bake","minutes":5,"uses":{"oven":2}}]}`, []string{`"bake"`, `"oven"`, "2"}},
		{"a need below zero", `{"stations":{"oven":1},"tasks":[{"id":"bake","minutes":5,"uses":{"oven":-2}}]}`, []string{`"bake"`, `"oven"`}},
		{"a cycle", `{"tasks":[{"id":"a","minutes":5,"after":["c"]},{"id":"b","minutes":5,"after":["a"]},{"id":"c","minutes":5,"after":["b"]},{"id":"d","minutes":5,"after":["c"]}]}`,
			[]string{"cycle", `"a" → "b" → "c" → "a"`}},
		{"a task after itself", `{"tasks":[{"id":"a","minutes":5,"after":["a"]}]}`, []string{"cycle", `"a" → "a"`}},
		{"a cycle of moments", `{"tasks":[{"id":"a","minutes":0,"after":["b"]},{"id":"b","minutes":0,"after":["a"]}]}`, []string{"cycle", `"a"`, `"b"`}},
		{"a longest wait below the shortest", `{"tasks":[{"id":"a","minutes":5},{"id":"b","minutes":5,"after":[{"id":"a","atLeast":10,"atMost":5}]}]}`, []string{`"a"`, `"b"`}},
		{"a longest wait below zero", `{"tasks":[{"id":"a","minutes":5},{"id":"b","minutes":5,"after":[{"id":"a","atMost":-1}]}]}`, []string{`"a"`, `"b"`}},
		{"a shortest wait below zero", `{"tasks":[{"id":"a","minutes":5},{"id":"b","minutes":5,"after":[{"id":"a","atLeast":-1}]}]}`, []string{`"a"`, `"b"`}},
		{"a longest wait shorter than what is between", `{"tasks":[{"id":"a","minutes":5},{"id":"b","minutes":40,"after":["a"]},{"id":"c","minutes":5,"after":["b",{"id":"a","atMost":30}]},{"id":"d","minutes":5}]}`,
			[]string{`"a"`, `"b"`, `"c"`}},
		{"an end too early", `{"tasks":[{"id":"a","minutes":5},{"id":"b","minutes":40,"after":["a"],"latestEnd":44}]}`, []string{`"b"`}},
		{"a pin outside its time", `{"tasks":[{"id":"a","minutes":5,"at":10,"latestEnd":12}]}`, []string{`"a"`}},
		{"a pin before zero", `{"tasks":[{"id":"a","minutes":5,"at":-10}]}`, []string{`"a"`, "-10", "0 or more"}},
		{"an end before zero", `{"tasks":[{"id":"a","minutes":0,"latestEnd":-1}]}`, []string{`"a"`}},
		{"a forbidden time the wrong way round", `{"tasks":[{"id":"a","minutes":5,"forbidden":[{"from":20,"to":10}]}]}`, []string{`"a"`}},
		{"changes out of order", `{"stations":{"hands":{"units":1,"changes":[{"from":20,"units":2},{"from":10,"units":1}]}},"tasks":[]}`, []string{`"hands"`}},
		{"a capacity below zero", `{"stations":{"hands":-1},"tasks":[]}`, []string{`"hands"`}},
		{"a setup nobody puts up", `{"setups":{"uses":{"hands":1}},"tasks":[]}`, []string{`"hands"`}},
		{"more minutes than a year", `{"tasks":[{"id":"a","minutes":9000000000}]}`, []string{`"a"`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := shoot.ReadPlan([]byte(c.file))
			if fault.KindOf(err) != fault.Invalid {
				t.Fatalf("the error is %v, want a fault.Invalid", err)
			}
			for _, s := range c.says {
				if !strings.Contains(fault.Say(err), s) {
					t.Errorf("%q does not say %q", fault.Say(err), s)
				}
			}
		})
	}
}

// The same name in two objects is not twice the same, nor is a name that is also
// a value.
func TestNamesThatAreNotTwiceTheSame(t *testing.T) {
	for _, file := range []string{
		`{"tasks":[{"id":"minutes","minutes":1,"note":"minutes"},{"id":"id","minutes":1,"after":["minutes",{"id":"minutes"}]}]}`,
		`{"stations":{"tasks":{"units":1,"changes":[{"from":1,"units":2},{"from":2,"units":2}]},"units":1},"tasks":[]}`,
		`{"stations":{"a":1,"b":1},"setups":{"minutes":{"a":1,"b":1},"uses":{"a":1,"b":1}},"tasks":[{"id":"a","minutes":1,"uses":{"a":1,"b":1},"setup":"a"}]}`,
		`{"tasks":[{"id":"pour","minutes":1,"setup":"wide"}]}`,
	} {
		if _, err := shoot.ReadPlan([]byte(file)); err != nil {
			t.Errorf("%s: %v", file, err)
		}
	}
}

func TestAnEmptyPlanIsAPlan(t *testing.T) {
	p, err := shoot.ReadPlan([]byte(`{"stations":{},"tasks":[]}`))
	if err != nil {
		t.Fatal(err)
	}
	r, err := solve.Plan(context.Background(), p, solve.Options{})
	if err != nil || r.Makespan != 0 || !r.Optimal {
		t.Errorf("%+v, %v", r, err)
	}
}

// FuzzReadPlan: whatever is read is refused with a sentence, or planned
// feasibly and never below the bound.
func FuzzReadPlan(f *testing.F) {
	f.Add([]byte(loafPlan))
	f.Add([]byte(`{"stations":{"h":{"units":2,"changes":[{"from":9,"units":1}]}},"setups":{"minutes":{"o":4,"p":2},"uses":{"h":1}},"tasks":[{"id":1,"minutes":5,"setup":"o","uses":{"h":1}},{"id":2,"minutes":3,"setup":"p","at":20,"forbidden":[{"from":1,"to":4}]},{"id":3,"minutes":2,"latestEnd":40,"after":[1,{"id":2,"atLeast":1,"atMost":9}]}]}`))
	f.Add([]byte(`{"stations":{"h":1},"tasks":[{"id":"a","minutes":5,"uses":{"h":1}},{"id":"b","minutes":5,"after":[{"id":"a","atMost":0}],"uses":{"h":1}},{"id":"c","minutes":5,"after":[{"id":"a","atMost":0}],"uses":{"h":1}}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := shoot.ReadPlan(data)
		if err != nil {
			if fault.KindOf(err) != fault.Invalid || fault.Say(err) == "" {
				t.Fatalf("%v", err)
			}
			return
		}
		if len(p.Tasks) > 12 || p.Horizon() > 3000 {
			return // the checker goes minute by minute
		}
		r, err := solve.Plan(context.Background(), p, solve.Options{Steps: 500})
		if err != nil {
			if fault.Say(err) == "" {
				t.Fatalf("%v", err)
			}
			return
		}
		if broken := feasible.Check(p, r.Starts); broken != nil || r.Bound > r.Makespan {
			t.Fatalf("bound %d, makespan %d, %v", r.Bound, r.Makespan, broken)
		}
	})
}
