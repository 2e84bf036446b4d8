package shoot

import (
	"cmp"
	"fmt"
	"slices"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot/project"
)

// workload is a day as a project, with what each of its tasks is.
type workload struct {
	day      Day
	project  project.Project
	tasks    []task
	place    map[Key]span // a step's tasks
	stations map[string]int
}

// span are the first and the last task of a step: its filmed beginning and the
// rest, or twice the same.
type span struct{ first, last int }

// part is what a task is of its step.
type part int

const (
	whole    part = iota
	opening       // its filmed beginning
	rest          // what follows on its filmed beginning
	cleaning      // cleaning down after it
	standing      // no task: where the camera stands when what is left is planned
)

// task is one task of the day.
type task struct {
	key     Key
	step    recipe.Step
	minutes Minutes
	part    part
	heldBy  string         // the moment by which it must have ended; "" for none
	after   string         // the moment before which it does not begin; "" for none
	setup   string         // with which it was filmed, if that is past
	givenTo string         // whom it is given to; "" for nobody
	own     []project.Need // what it needs if it is given to nobody
}

// newWorkload turns a day into a project. The error is fault.Invalid.
func newWorkload(d Day) (*workload, error) {
	w, err := newSteps(d)
	if err != nil {
		return nil, err
	}
	w.project.Setups.Minutes = d.Setups
	if hands, ok := w.stations[Hands]; ok && w.project.Stations[hands].Peak() > 0 {
		w.project.Setups.Needs = []project.Need{{Station: hands, Amount: 1}}
	}
	for _, add := range []func() error{w.addWaits, w.addMoments, w.addPins, w.addBars, w.addGiven} {
		if err := add(); err != nil {
			return nil, err
		}
	}
	if d.Begun {
		return w, nil // what its steps really took is not in it yet
	}
	return w, w.onSteps(w.project.Check())
}

// newSteps turns a day's batches into a project, without what is fixed.
func newSteps(d Day) (*workload, error) {
	w := &workload{day: d, place: map[Key]span{}, stations: map[string]int{}}
	for i, s := range d.Stations {
		w.stations[s.Name] = i
		w.project.Stations = append(w.project.Stations, s.levels())
	}
	names := map[string]bool{}
	for _, b := range d.Batches {
		if names[b.Name] {
			return nil, fault.Invalidf("batches", "Two batches are called %q. Give each a name of its own.", b.Name)
		}
		names[b.Name] = true
		w.addBatch(b)
	}
	for _, b := range d.Batches {
		w.linkBatch(b)
	}
	return w, nil
}

// steps gives the tasks of a batch's recipe that the batch does itself: up to
// Until, without what a swap-out has done, and then without what leads to
// nothing else and is not filmed.
func (b Batch) steps() []recipe.Task {
	all := b.Recipe.Sequence()
	wanted := map[recipe.Position]bool{}
	follows := map[recipe.Position]bool{} // some step waits for it
	for _, t := range all {
		for _, p := range t.After {
			follows[p] = true
		}
	}
	for _, t := range all {
		isFilmed := b.isFilmed(t.At)
		switch {
		case b.Until != nil:
			if t.At == *b.Until {
				b.want(wanted, all, t.At)
			}
		case len(b.Swaps) == 0 || isFilmed || !follows[t.At]:
			b.want(wanted, all, t.At)
		}
	}
	return slices.DeleteFunc(all, func(t recipe.Task) bool { return !wanted[t.At] })
}

// isFilmed tells whether anything of a step is filmed.
func (b Batch) isFilmed(at recipe.Position) bool {
	_, whole := b.Film[at]
	_, opening := b.Opens[at]
	return whole || opening
}

// want marks a step and all that must be done before it, as far as the batch
// does it itself. Of a step that a swap-out has done, only a filmed beginning is.
func (b Batch) want(wanted map[recipe.Position]bool, all []recipe.Task, at recipe.Position) {
	if _, isSwapped := b.Swaps[at]; isSwapped && !b.isFilmed(at) || wanted[at] {
		return
	}
	wanted[at] = true
	for _, t := range all {
		if t.At == at {
			for _, p := range t.After {
				b.want(wanted, all, p)
			}
		}
	}
}

// addBatch adds the steps of a batch as tasks.
func (w *workload) addBatch(b Batch) {
	for k, t := range b.steps() {
		step := b.Recipe.Components[t.At.Component].Steps[t.At.Step]
		minutes := MinutesOf(step)
		added := project.Task{
			ID: fmt.Sprintf("%s %d: %s", b.Name, k+1, short(step.Text)), Minutes: minutes.Likely,
			Needs: w.needs(b, step), LatestEnd: project.None,
		}
		if !b.Ahead {
			added.NotBefore = w.day.From
		}
		done := task{key: Key{b.Name, t.At}, step: step, minutes: minutes}
		if setup, ok := b.Opens[t.At]; ok && minutes.Likely > w.day.opening() {
			w.addOpening(b, done, added, setup)
			continue
		}
		if setup := cmp.Or(b.Film[t.At], b.Opens[t.At]); b.isFilmed(t.At) {
			added.Setup = setup
			added.Needs = w.withFilm(added.Needs)
		}
		w.add(done, added)
	}
}

// add adds a task that is a step, or the next part of one.
func (w *workload) add(t task, planned project.Task) {
	at := len(w.tasks)
	place, ok := w.place[t.key]
	if !ok {
		place.first = at
	}
	w.place[t.key] = span{place.first, at}
	w.tasks = append(w.tasks, t)
	w.project.Tasks = append(w.project.Tasks, planned)
}

// addOpening adds a step of which only the beginning is filmed: that, and right
// on it the rest, unless a swap-out has done the step.
func (w *workload) addOpening(b Batch, t task, planned project.Task, setup string) {
	filmed, minutes := planned, w.day.opening()
	filmed.Minutes, filmed.Setup, filmed.Needs = minutes, setup, w.withFilm(slices.Clone(planned.Needs))
	begun := t
	begun.part, begun.minutes = opening, Minutes{From: minutes, Likely: minutes, To: minutes}
	w.add(begun, filmed)
	if _, isSwapped := b.Swaps[t.key.At]; isSwapped {
		return
	}
	t.part, t.minutes = rest, t.minutes.less(minutes)
	planned.ID += " (the rest)"
	planned.Minutes -= minutes
	w.project.Waits = append(w.project.Waits, project.Wait{Before: len(w.tasks) - 1, After: len(w.tasks)})
	w.add(t, planned)
}

// short cuts a step's text to what fits into a message.
func short(text string) string {
	const most = 40
	letters := []rune(text)
	if len(letters) <= most {
		return text
	}
	return string(letters[:most-1]) + "…"
}

// needs are what a step occupies: hands if it is hands-on, and its station, of
// those that the day has.
func (w *workload) needs(b Batch, s recipe.Step) []project.Need {
	var needs []project.Need
	if s.HandsOn {
		needs = w.withNeed(needs, Hands, 1)
	}
	units := 1
	if share, ok := b.Shares[s.Station]; ok {
		units = share
	}
	if s.Station != Hands {
		needs = w.withNeed(needs, s.Station, units)
	}
	return needs
}

// withFilm adds what filming takes: camera, light, and the hands in the shot.
func (w *workload) withFilm(needs []project.Need) []project.Need {
	for _, name := range []string{Hands, Camera, Light} {
		needs = w.withNeed(needs, name, 1)
	}
	return needs
}

// withNeed adds a need of a station that the day has, unless it is there.
func (w *workload) withNeed(needs []project.Need, station string, units int) []project.Need {
	at, ok := w.stations[station]
	if !ok || units <= 0 || slices.ContainsFunc(needs, func(n project.Need) bool { return n.Station == at }) {
		return needs
	}
	return append(needs, project.Need{Station: at, Amount: units})
}

// linkBatch adds the waits between a batch's steps, and the cleaning down.
func (w *workload) linkBatch(b Batch) {
	for _, t := range b.steps() {
		at := w.place[Key{b.Name, t.At}].first
		for _, p := range t.After {
			key := Key{b.Name, p}
			if other, isSwapped := b.Swaps[p]; isSwapped {
				key.Batch = other
			}
			if before, ok := w.place[key]; ok {
				w.project.Waits = append(w.project.Waits, project.Wait{Before: before.last, After: at, AtMost: project.None})
			}
		}
	}
	for _, t := range b.steps() {
		w.addClean(b, Key{b.Name, t.At})
	}
}

// addClean adds the cleaning of a step's station right after it, unless the
// batch goes on there.
func (w *workload) addClean(b Batch, key Key) {
	at := w.place[key].last
	station, ok := w.stations[w.tasks[at].step.Station]
	if !ok || w.day.Stations[station].Clean <= 0 || w.goesOn(at) {
		return
	}
	before := w.project.Tasks[at]
	clean := project.Task{
		ID: before.ID + " (clean down)", Minutes: w.day.Stations[station].Clean, LatestEnd: project.None,
		Needs: w.withNeed([]project.Need{{Station: station, Amount: before.Units(station)}}, Hands, 1), NotBefore: before.NotBefore,
	}
	minutes := Minutes{From: clean.Minutes, Likely: clean.Minutes, To: clean.Minutes}
	w.project.Waits = append(w.project.Waits, project.Wait{Before: at, After: len(w.tasks)})
	w.project.Tasks = append(w.project.Tasks, clean)
	w.tasks = append(w.tasks, task{key: key, step: w.tasks[at].step, minutes: minutes, part: cleaning})
}

// goesOn tells whether a step that waits for this one is of the same batch and
// at the same station.
func (w *workload) goesOn(at int) bool {
	for _, wait := range w.project.Waits {
		after := w.tasks[wait.After]
		if wait.Before == at && after.part != cleaning && after.key.Batch == w.tasks[at].key.Batch && after.step.Station == w.tasks[at].step.Station {
			return true
		}
	}
	return false
}
