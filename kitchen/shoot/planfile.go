package shoot

import (
	"encoding/json"
	"fmt"
	"slices"
	"sort"
	"strings"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/project"
)

// planFile is the shape of a plan's file.
type planFile struct {
	Stations map[string]fileStation `json:"stations"`
	Tasks    []fileTask             `json:"tasks"`
	Setups   *fileSetups            `json:"setups"`
}

// fileStation is a capacity, or a capacity that changes at given minutes.
type fileStation struct {
	Units   int         `json:"units"`
	Changes []fileLevel `json:"changes"`
}

type fileLevel struct {
	From  int `json:"from"`
	Units int `json:"units"`
}

type fileTask struct {
	ID        fileID         `json:"id"`
	Note      string         `json:"note"` // for people; not read
	Minutes   *int           `json:"minutes"`
	After     []fileAfter    `json:"after"`
	Uses      map[string]int `json:"uses"`
	At        *int           `json:"at"` // pinned start
	NotBefore int            `json:"notBefore"`
	LatestEnd *int           `json:"latestEnd"`
	Forbidden []fileSpan     `json:"forbidden"`
	Setup     string         `json:"setup"`
}

type fileSpan struct {
	From int `json:"from"`
	To   int `json:"to"`
}

type fileAfter struct {
	ID      fileID `json:"id"`
	AtLeast int    `json:"atLeast"`
	AtMost  *int   `json:"atMost"`
}

type fileSetups struct {
	Minutes map[string]int `json:"minutes"`
	Uses    map[string]int `json:"uses"`
}

// fileID is an id, written as text or as a number.
type fileID string

// UnmarshalJSON reads "mix" and 7 alike.
func (id *fileID) UnmarshalJSON(data []byte) error {
	var n json.Number
	if err := json.Unmarshal(data, &n); err == nil && len(data) > 0 && data[0] != '"' {
		*id = fileID(n)
		return nil
	}
	return json.Unmarshal(data, (*string)(id))
}

// UnmarshalJSON reads 2 as well as {"units":2,"changes":[…]}.
func (s *fileStation) UnmarshalJSON(data []byte) error {
	if len(data) > 0 && data[0] != '{' {
		return json.Unmarshal(data, &s.Units)
	}
	type plain fileStation
	return strict(data, (*plain)(s))
}

// UnmarshalJSON reads "mix" as well as {"id":"mix","atLeast":0,"atMost":30}.
func (a *fileAfter) UnmarshalJSON(data []byte) error {
	if len(data) > 0 && data[0] != '{' {
		return json.Unmarshal(data, &a.ID)
	}
	type plain fileAfter
	return strict(data, (*plain)(a))
}

// ReadPlan reads a plan's file: one JSON object with "stations", each a number
// of units or an object with "units" and "changes" (from a minute on, so many
// units), and "tasks", each with
//
//	"id"         unique
//	"minutes"    whole, 0 or more
//	"after"      ids, or objects with "id", "atLeast" and "atMost": the shortest
//	             and longest wait in minutes from that task's end to this start
//	"uses"       units by station
//	"at"         the one minute at which it may start
//	"notBefore"  the earliest start
//	"latestEnd"  the minute by which it has ended
//	"forbidden"  objects with "from" and "to": minutes in which it must not run
//	"setup"      the camera setup of a film task
//	"note"       words for people
//
// and "setups" with "minutes" by setup, for each that a task names, and what
// putting one up "uses". All but tasks, id and minutes may be left out. The error is fault.Invalid, names the tasks,
// and covers all that project.Check finds.
func ReadPlan(data []byte) (project.Project, error) {
	var file planFile
	if err := strict(data, &file); err != nil {
		return project.Project{}, fault.Invalidf("file", "The plan cannot be read: %s.", jsonCause(data, err))
	}
	if name := doubled(data); name != "" {
		return project.Project{}, fault.Invalidf("file", "The plan has %q twice in one object, and one of them would be lost. Write it once.", name)
	}
	if file.Tasks == nil {
		return project.Project{}, fault.Invalidf("file", "The plan has no \"tasks\". List them, each with its id and minutes.")
	}
	r := planReader{stations: map[string]int{}, tasks: map[string]int{}}
	if err := r.read(file); err != nil {
		return project.Project{}, err
	}
	return r.project, r.project.Check()
}

// planReader builds a project from a file.
type planReader struct {
	project         project.Project
	stations, tasks map[string]int
}

func (r *planReader) read(file planFile) error {
	for name, s := range file.Stations {
		station := project.Station{Name: name, Capacity: s.Units}
		for _, c := range s.Changes {
			station.Changes = append(station.Changes, project.Level{From: c.From, Capacity: c.Units})
		}
		r.project.Stations = append(r.project.Stations, station)
	}
	slices.SortFunc(r.project.Stations, func(a, b project.Station) int { return strings.Compare(a.Name, b.Name) })
	for i, s := range r.project.Stations {
		r.stations[s.Name] = i
	}
	for i, t := range file.Tasks {
		if t.ID == "" {
			return fault.Invalidf("tasks", "Task %d has no id. Give each task an id of its own.", i+1)
		}
		if _, twice := r.tasks[string(t.ID)]; twice {
			return fault.Invalidf(string(t.ID), "Two tasks have the id %q. Give each task an id of its own.", t.ID)
		}
		r.tasks[string(t.ID)] = i
	}
	for _, t := range file.Tasks {
		if err := r.task(t); err != nil {
			return err
		}
		if err := file.Setups.knows(t); err != nil {
			return err
		}
	}
	for i, t := range file.Tasks {
		if err := r.waits(i, t); err != nil {
			return err
		}
	}
	return r.setups(file.Setups)
}

func (r *planReader) task(t fileTask) error {
	id := string(t.ID)
	if t.Minutes == nil {
		return fault.Invalidf(id, "Task %q has no minutes. Write how long it takes, 0 for a moment.", id)
	}
	needs, err := r.needs(fmt.Sprintf("Task %q", id), id, t.Uses)
	if err != nil {
		return err
	}
	task := project.Task{ID: id, Minutes: *t.Minutes, Needs: needs, NotBefore: t.NotBefore, LatestEnd: project.None, Setup: t.Setup}
	if t.LatestEnd != nil {
		if *t.LatestEnd < 0 {
			return fault.Invalidf(id, "Task %q is to end by minute %d. Minutes are 0 or more.", id, *t.LatestEnd)
		}
		task.LatestEnd = *t.LatestEnd
	}
	for _, span := range t.Forbidden {
		task.Forbidden = append(task.Forbidden, project.Span{From: span.From, To: span.To})
	}
	if t.At != nil {
		if *t.At < 0 {
			return fault.Invalidf(id, "Task %q is to start at minute %d. Minutes are 0 or more.", id, *t.At)
		}
		if t.LatestEnd != nil && *t.LatestEnd < *t.At+task.Minutes || *t.At < t.NotBefore {
			return fault.Invalidf(id, "Task %q is to start at minute %d, which its other times do not allow. Change one of them.", id, *t.At)
		}
		task = task.Pin(*t.At)
	}
	r.project.Tasks = append(r.project.Tasks, task)
	return nil
}

// needs turns units by station name into needs, in the stations' order.
func (r *planReader) needs(who, field string, uses map[string]int) ([]project.Need, error) {
	names := make([]string, 0, len(uses))
	for name := range uses {
		names = append(names, name)
	}
	sort.Strings(names)
	var needs []project.Need
	for _, name := range names {
		station, known := r.stations[name]
		if !known {
			return nil, fault.Invalidf(field, "%s uses station %q, which is not listed. Add it to the stations or correct the name.", who, name)
		}
		if uses[name] != 0 {
			needs = append(needs, project.Need{Station: station, Amount: uses[name]})
		}
	}
	return needs, nil
}

func (r *planReader) waits(i int, t fileTask) error {
	for _, a := range t.After {
		before, known := r.tasks[string(a.ID)]
		if !known {
			return fault.Invalidf(string(t.ID), "Task %q comes after %q, which is not in the plan. Add that task or correct the id.", t.ID, a.ID)
		}
		wait := project.Wait{Before: before, After: i, AtLeast: a.AtLeast, AtMost: project.None}
		if a.AtMost != nil {
			if *a.AtMost < 0 {
				return fault.Invalidf(string(t.ID), "The longest wait between %q and %q is %d minutes. Waits are 0 or more.", a.ID, t.ID, *a.AtMost)
			}
			wait.AtMost = *a.AtMost
		}
		r.project.Waits = append(r.project.Waits, wait)
	}
	return nil
}

func (r *planReader) setups(s *fileSetups) error {
	if s == nil {
		return nil
	}
	needs, err := r.needs("Setting up", "setups", s.Uses)
	r.project.Setups = project.Setups{Minutes: s.Minutes, Needs: needs}
	return err
}

// knows tells whether a task's setup is listed, where setups are.
func (s *fileSetups) knows(t fileTask) error {
	if s == nil || t.Setup == "" || len(s.Minutes) == 0 {
		return nil
	}
	if _, ok := s.Minutes[t.Setup]; !ok {
		return fault.Invalidf(string(t.ID), "Task %q is filmed with setup %q, which has no minutes among the setups. Add it, with 0 if it takes none, or correct the name.", t.ID, t.Setup)
	}
	return nil
}
