// Package nogood searches for whole numbers that satisfy constraints, and
// learns from every contradiction it meets a rule that keeps it from the same
// one again (lazy clause generation). It knows variables with a lower and an
// upper bound, rules "at least one of these bounds holds", differences between
// two variables that hold always or if some bound holds, and the load of a
// station over time: what surely runs at once (timetable), and what must lie in
// a stretch of time (overload).
//
// All that it reasons about are bounds: a Lit says that a variable is at least,
// or at most, a number. A learned rule is a set of Lits of which one must hold.
// There are no other unknowns, so a variable of a thousand values costs no more
// than one of two.
//
// From memory: O. Ohrimenko, P. Stuckey and M. Codish, "Propagation via lazy
// clause generation", Constraints 14 (2009), for the principle; A. Schutt,
// T. Feydt, P. Stuckey and M. Wallace, "Explaining the cumulative propagator",
// Constraints 16 (2011), for the station; P. Baptiste, C. Le Pape and W. Nuijten,
// "Constraint-Based Scheduling" (2001), for its overload; M. Moskewicz and others, "Chaff"
// (2001), and N. Eén and N. Sörensson, "An extensible SAT-solver" (2003), for
// watched rules, activities and first unique implication points.
package nogood
