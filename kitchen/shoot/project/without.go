package project

// Without gives the project without some of its tasks and the waits that name
// them. isGone has one entry a task. Whatever is a plan of p is one of it.
func (p Project) Without(isGone []bool) Project {
	less := Project{Stations: p.Stations, Setups: p.Setups}
	place := make([]int, len(p.Tasks))
	for i, t := range p.Tasks {
		if !isGone[i] {
			place[i] = len(less.Tasks)
			less.Tasks = append(less.Tasks, t)
		}
	}
	for _, w := range p.Waits {
		if !isGone[w.Before] && !isGone[w.After] {
			w.Before, w.After = place[w.Before], place[w.After]
			less.Waits = append(less.Waits, w)
		}
	}
	return less
}
