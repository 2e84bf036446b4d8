package shoot

import "benchproof/kitchen/shoot/project"

// ProjectOf is what a day's plan is solved from, with one task a start of
// Kept.Starts.
func ProjectOf(d Day) (project.Project, error) {
	r, err := d.rest()
	if err != nil {
		return project.Project{}, err
	}
	return r.project, nil
}
