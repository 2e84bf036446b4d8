// Package measure holds amounts as a kitchen uses them: exact rationals, units
// with their kinds, the measuring systems that give a cup its size, oven
// settings, and the reading and writing of all of these.
//
// Nothing here is rounded before the last step, the writing for hands.
//
// # Parts
//
// exact has the numbers, scan reads them in text, oven knows temperatures. This
// package stands on the three, names what others need of them, and adds units
// (unit.go, vocabulary.go), systems (system.go), amounts and their conversion,
// the reading of amounts (reading.go and, in the order of use, wording.go,
// span.go, unitread.go) and of times (duration.go), and the writing (hand.go,
// spoons.go, jugs.go, shown.go).
//
// # Which system
//
// A line's own system comes before its recipe's, and that before the show's:
// line.Or(recipe).Or(show). Where none is said nothing is assumed: Millilitres
// and Convert then refuse cups, spoons, pints and fluid ounces. A system that
// lacks a unit borrows it, and Describe says from whom. Only Hand, which must
// write something, takes US spoons where no system is said.
//
// # Speed
//
// Each of these runs once a line of a recipe, BenchmarkFind once a step. On an
// Intel Xeon of two cores, Go 1.26.8, go test -bench . -cpu 1:
//
//	ReadAmount  plain 0.6 µs, mixed fraction 1.1, wordy 1.4; 0 to 2 allocations
//	Write       grams 0.4 µs, kilograms 0.5, cups 0.6, sums 1.2; 2 to 5 allocations
//	Find        30 µs for a step of 200 characters with four heats and two times
//	Number      80 ns a product and a sum in machine words, 0.9 µs beyond them
package measure
