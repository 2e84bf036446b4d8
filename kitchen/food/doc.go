// Package food is the larder's knowledge: what foods are called, what a
// measure of each weighs, its water, nutrients, allergens, aisle and packs.
// The facts themselves stand in seed/; this room reads and answers.
//
// A written name finds its food through Larder.Match; an amount of it becomes
// grams through Food.Grams, which says what it assumed and where the figure is
// from. Totals adds foods up to a recipe; USFacts and EUDeclaration word it as
// the labelling rules round it; Allergens lists what is in it by each law.
package food
