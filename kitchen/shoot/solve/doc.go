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
//   - prove: search with learned nogoods (package nogood), which shortens the
//     plan, raises the bound and in the end proves that the two meet.
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
