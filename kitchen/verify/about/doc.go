// Package about tells what each number in a cut is about: an ingredient's line, a
// measure that a step states, a food that the recipe does not have, or something
// else altogether.
//
// Four things speak for a line: its food is named beside the number, the number
// is of a kind that can measure it, the talk is at the place in the recipe where
// it is used, the amounts agree. For a step's measure they are its verb, its
// other words, its place and the value. Room topic speaks for or against all of
// them: talk that is likely about something else ties nothing that it does not
// name outright. Where too little speaks, a number is left alone: a finding must
// be earned.
package about
