// Package naming finds what a cook's written name means among the names of
// foods: exact, by another name, among words that do not change the food, by
// its noun, or with a slip of the pen. It knows nothing of foods but their
// names, and the words that stand beside them.
//
// Case, accents, hyphens, singular and plural, US and UK spelling make no
// difference. Where several fit, or a word may make another food of it, it asks
// rather than guesses: "butter beans" are never butter.
package naming
