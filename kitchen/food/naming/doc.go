// Package naming finds what a cook's written name means among the names of
// foods: exact, by another name, among words that do not change the food, by
// its noun, or with a slip of the pen. It knows nothing of foods but their
// names, and the words that stand beside them.
//
// Case, accents, hyphens, singular and plural, US and UK spelling make no
// difference. Where several fit, or a word may make another food of it, it asks
// rather than guesses: "butter beans" are never butter.
//
// Names are filed by their rarest word, so that a phrase is held against few of
// them, and under themselves with letters dropped, so that a slip is met
// half-way. Among the names of 2,000 foods one Find takes, in processor time on
// a 2026 server core (Intel Xeon, Go 1.26; go test -bench Match -cpuprofile in
// kitchen/food): a whole name 0.8 µs, one among modifiers 4 µs, by its noun or
// not at all 2 µs, with a slip 9 µs, the worst phrase tried 15 µs; 5 to 80
// allocations.
package naming
