// Package recipe reads recipes as people write them, and computes with what it
// read: scaling, what changed between versions, writing lines for hands.
//
// No line is ever dropped and no amount invented: what cannot be read is kept
// as written and marked not read, with the reason.
//
// # How a text is read
//
// Reader.Read hands the text down, room by room, and puts together what comes
// back:
//
//   - page sorts its lines: title, yield, headings, ingredients, steps, notes;
//   - ingredient reads one ingredient line, method one line of the method;
//   - mention finds what a step's words name among the ingredients.
//
// Recipe.Placed tells for every line that is not blank where it went. The larder
// names the foods and compares what only a food's own weight can ("1 stick (200
// g) butter"); a Correction by a person wins over everything.
//
// # How a recipe is written
//
// A Writer writes lines for the gutter, in the recipe's own measures or in
// metric, US or imperial ones; the cook's own figure ("7 oz (200 g)") goes before
// a computed one. Scale multiplies exactly and rounds in the writing only. Text
// writes plain text that reads the same again, Document the shape printed as
// JSON. Room tin knows the moulds that FactorForTins compares; room align
// matches the lists that Changes compares.
//
// # What it costs
//
// Processor time on one core of a shared Intel Xeon, Go 1.26, with the built-in
// larder of some 1,300 foods: go test -run XXX -bench . -cpu 1
//
//	read a recipe of 60 lines (32 ingredients)       1.1 ms, 2,400 allocations
//	scale and write it, two systems a line          0.13 ms,   480 allocations
//	scale and write a stew of 12 ingredients        0.05 ms,   180 allocations
//	compare two versions of the 60 lines             0.6 ms, 2,200 allocations
package recipe
