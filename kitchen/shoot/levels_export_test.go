package shoot

import "benchproof/kitchen/shoot/project"

// Levels is the station with its capacities over the day.
func (s Station) Levels() project.Station { return s.levels() }
