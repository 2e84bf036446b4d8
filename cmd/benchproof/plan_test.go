package main

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"
)

// The dough is mixed, proves two hours, and is shaped within half an hour.
const loafPlan = `{"stations":{"hands":1,"oven":1},
 "tasks":[{"id":"mix","minutes":10,"uses":{"hands":1}},
          {"id":"prove","minutes":120,"after":["mix"]},
          {"id":"shape","minutes":20,"after":[{"id":"prove","atLeast":0,"atMost":30}],"uses":{"hands":1}}]}`

func TestPlanPrintsTheAnswer(t *testing.T) {
	got := object(t, loafPlan, "plan", "-")
	want := map[string]any{"makespan": 150.0, "bound": 150.0, "optimal": true, "starts": map[string]any{"mix": 0.0, "prove": 10.0, "shape": 130.0}}
	if fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("plan = %v, want %v", got, want)
	}
	out, errs, status := command(t, loafPlan, "plan", "-")
	if status != 0 || !strings.Contains(out, "130–150 │ shape") || !strings.Contains(out, "150 min") {
		t.Errorf("status %d\n%s%s", status, out, errs)
	}
}

// Backwards the dough waits for the shaping, which ends with the plan: longer than
// it must, and no longer than it may.
func TestPlanBackwards(t *testing.T) {
	got := object(t, loafPlan, "plan", "-", "--finish", "480")
	want := map[string]any{"makespan": 150.0, "bound": 150.0, "optimal": true, "starts": map[string]any{"mix": 330.0, "prove": 340.0, "shape": 460.0}}
	if fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("plan = %v, want %v", got, want)
	}
	guests := `{"stations":{"hands":1},"tasks":[{"id":"bake","minutes":40},{"id":"lay","minutes":30,"uses":{"hands":1}},
		{"id":"ice","minutes":20,"after":["bake"],"uses":{"hands":1},"forbidden":[{"from":90,"to":120}]}]}`
	out, errs, status := command(t, guests, "plan", "-", "--finish", "120")
	if status != 0 || !strings.Contains(out, "30–70 │ bake") || !strings.Contains(out, "70–90 │ ice") || !strings.Contains(out, "90–120 │ lay") || !strings.Contains(out, "90 min │ proved: no plan begins later") {
		t.Errorf("status %d\n%s%s", status, out, errs)
	}
}

// The job shop of 6 jobs and 6 machines of H. Fisher and G. L. Thompson,
// "Probabilistic learning combinations of local job-shop scheduling rules"
// (1963): machine and minutes in order, a line a job. Shortest makespan 55.
const ft06 = `2 1 0 3 1 6 3 7 5 3 4 6
1 8 2 5 4 10 5 10 0 10 3 4
2 5 3 4 5 8 0 9 1 1 4 7
1 5 0 5 2 5 3 3 4 8 5 9
2 9 1 3 4 5 5 4 0 3 3 1
1 3 3 3 5 9 0 10 4 4 2 1`

func TestPlanProvesAPublishedJobShop(t *testing.T) {
	type planned struct {
		ID      string         `json:"id"`
		Minutes int            `json:"minutes"`
		After   []string       `json:"after,omitempty"`
		Uses    map[string]int `json:"uses"`
	}
	file := map[string]any{"stations": map[string]int{"m0": 1, "m1": 1, "m2": 1, "m3": 1, "m4": 1, "m5": 1}}
	var tasks []planned
	for j, line := range strings.Split(ft06, "\n") {
		in := strings.NewReader(line)
		for k := 0; k < 6; k++ {
			task := planned{ID: fmt.Sprint(j, ".", k), Uses: map[string]int{}}
			var machine int
			if _, err := fmt.Fscan(in, &machine, &task.Minutes); err != nil {
				t.Fatal(err)
			}
			task.Uses[fmt.Sprint("m", machine)] = 1
			if k > 0 {
				task.After = []string{tasks[len(tasks)-1].ID}
			}
			tasks = append(tasks, task)
		}
	}
	file["tasks"] = tasks
	text, err := json.Marshal(file)
	if err != nil {
		t.Fatal(err)
	}
	got := object(t, string(text), "plan", "-", "--budget", "1m")
	if got["makespan"] != 55.0 || got["bound"] != 55.0 || got["optimal"] != true || len(got["starts"].(map[string]any)) != 36 {
		t.Errorf("plan = %v, want the published 55, proved", got)
	}
}

func TestPlanRefuses(t *testing.T) {
	for _, c := range []struct {
		name   string
		in     string
		more   []string
		status int
		says   []string
	}{
		{"a cycle", `{"tasks":[{"id":"mix","minutes":5,"after":["rest"]},{"id":"rest","minutes":5,"after":["mix"]}]}`, nil, exitInput, []string{"mix", "rest"}},
		{"an unknown id", `{"tasks":[{"id":"mix","minutes":5,"after":["sift"]}]}`, nil, exitInput, []string{"mix", "sift"}},
		{"a need above the capacity", `{"stations":{"oven":1},"tasks":[{"id":"bake","minutes":5,"uses":{"oven":3}}]}`, nil, exitInput, []string{"bake", "oven"}},
		{"waits against each other", `{"tasks":[{"id":"mix","minutes":5},{"id":"rest","minutes":40,"after":["mix"]},{"id":"roll","minutes":5,"after":["rest",{"id":"mix","atMost":30}]}]}`,
			nil, exitInput, []string{"mix", "rest", "roll"}},
		{"waits that one pair of hands cannot keep", `{"stations":{"hands":1},"tasks":[{"id":"prove","minutes":60},{"id":"mix","minutes":5,"uses":{"hands":1}},
			{"id":"roll","minutes":5,"uses":{"hands":1},"after":[{"id":"prove","atMost":0}]},{"id":"glaze","minutes":5,"uses":{"hands":1},"after":[{"id":"prove","atMost":0}]}]}`,
			nil, exitInput, []string{"roll", "glaze"}},
		{"no JSON", `tasks`, nil, exitInput, []string{"line 1"}},
		{"no time to look", loafPlan, []string{"--budget", "0s"}, exitUsage, []string{"--budget"}},
		{"a budget that is no time", loafPlan, []string{"--budget", "soon"}, exitUsage, []string{"--budget"}},
		{"a finish too early", loafPlan, []string{"--finish", "149"}, exitInput, []string{"minute 150", "minute 149"}},
		{"a finish before the start", loafPlan, []string{"--finish", "0"}, exitUsage, []string{"--finish"}},
		{"an unknown flag", loafPlan, []string{"--fast"}, exitUsage, []string{"--fast"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			out, errs, status := command(t, c.in, append([]string{"plan", "-"}, c.more...)...)
			if status != c.status || out != "" && status == exitInput {
				t.Errorf("status %d, want %d\n%s", status, c.status, out)
			}
			for _, s := range c.says {
				if !strings.Contains(errs, s) {
					t.Errorf("standard error does not name %q: %s", s, errs)
				}
			}
		})
	}
	if _, errs, status := command(t, "", "plan", "no-such.json"); status != exitInput || !strings.Contains(errs, "no-such.json") {
		t.Errorf("status %d: %s", status, errs)
	}
}
