// Package food is the larder's knowledge: what foods are called, what a
// measure of each weighs, its water, nutrients, allergens, aisle and packs.
// The facts themselves stand in seed/; this room reads and answers.
//
// A written name finds its food through Larder.Match; an amount of it becomes
// grams through Food.Grams, which says what it assumed and where the figure is
// from. Totals adds foods up to a recipe; USFacts and EUDeclaration word it as
// the labelling rules round it; Allergens lists what is in it by each law.
//
// What a label or an allergen list says here is worked out from a table of
// usual foods. The pack in the hand goes before it, and the rules of the place
// where the food is sold.
//
// Weighing one line takes about 1.6 µs and 11 allocations (BenchmarkGrams,
// Intel Xeon, Go 1.26); for Match see package naming.
package food
