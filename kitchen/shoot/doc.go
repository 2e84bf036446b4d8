// Package shoot computes the shoot day: which step of which batch is done when,
// at which station, so that the day ends as early as can be, and what making
// some of it ahead (a swap-out) would save.
//
//   - ReadPlan reads a plain list of tasks and stations, as a file;
//   - Day turns batches of recipes, stations with their hours, and what the
//     creator has fixed, into a project, and a solved project into a Plan;
//   - SwapOuts compares the day with 0, 1, 2 … extra makes.
//
// The rooms below do the work: project is the plain scheduling problem, solve
// plans it, nogood is the search that proves, feasible checks a plan
// independently. Times are whole minutes; the clock belongs to the caller.
package shoot
