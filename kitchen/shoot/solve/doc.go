// Package solve plans projects: it looks for a plan whose last task ends as
// early as can be, and proves how early that could be at best.
//
// How it goes, each part in its file:
//
//   - bound: what no plan can beat, from chains of waits and from the load of
//     each station between heads and tails;
//   - decode, timeline: an order of tasks becomes a plan, each task as early as
//     the stations allow (serial schedule generation), or minute by minute
//     (parallel schedule generation);
//   - justify: a plan pushed to the right and back to the left, which often
//     shortens it (double justification);
//   - population: orders bred from the best ones found;
//   - turns: swaps of neighbours on the longest chain, where every station
//     serves one task at a time (tabu search);
//   - prove, setup: search with learned nogoods (package nogood), which shortens
//     the plan, raises the bound and in the end proves that the two meet;
//   - mend: the same search with most of a plan held (large-neighbourhood
//     search);
//   - impossible: which tasks together leave no plan.
//
// Where there are very many film tasks, set-ups by hand are left out of the
// proof: the bound then holds, but may stay below a best plan.
//
// What it costs: one core of a shared Intel Xeon, Go 1.26, measured with
// go test -run XXX -bench 'Published|Drawn|Replan' -benchtime 1x -cpu 1
//
//	24 instances of PSPLIB's J30   optimum of each in 20 ms; 23 proved in 40 ms
//	FT06                           55 proved in 10 ms
//	FT10                           930 in 0.2 to 2 s, bound 902 in 10 s
//	FT20                           1165 proved in 1.5 s
//	120 drawn tasks, four stations within 3 % of what 25 s find, in 2 s
//	80 tasks of a kitchen anew     0.1 to 0.2 s for 2,000 steps
//
// The literature, all from memory: R. Kolisch, "Serial and parallel
// resource-constrained project scheduling methods revisited", EJOR 90 (1996);
// V. Valls, F. Ballestín and S. Quintanilla, "Justification and RCPSP: a
// technique that pays", EJOR 165 (2005), and "A hybrid genetic algorithm for
// the resource-constrained project scheduling problem", EJOR 185 (2008);
// B. Franck, K. Neumann and C. Schwindt on time lags, OR Spektrum 23 (2001);
// A. Schutt, T. Feydt, P. Stuckey and M. Wallace, "Explaining the cumulative
// propagator", Constraints 16 (2011), and "Solving RCPSP/max by lazy clause
// generation", Journal of Scheduling 16 (2013).
package solve
