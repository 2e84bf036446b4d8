// Package feasible checks a plan against its project, minute by minute and rule
// by rule, in the plainest way there is. It shares no code with the solver and
// uses none of the project's own computing, so that a mistake there shows here.
package feasible
