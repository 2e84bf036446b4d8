package shoot

import "benchproof/kitchen/shoot/project"

// Project is the day as the solver gets it, with what has been done of it.
func (d Day) Project() (project.Project, error) {
	r, err := d.rest()
	if err != nil {
		return project.Project{}, err
	}
	return r.project, nil
}

// Levels is the station with its capacities over the day.
func (s Station) Levels() project.Station { return s.levels() }
