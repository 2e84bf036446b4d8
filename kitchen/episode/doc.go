// Package episode holds the plain nouns of a show: the show itself, pitches,
// episodes with their briefs, batches, trials, segments, shots, cuts and
// releases; and it computes what still stands between an episode and its
// release.
//
// Every noun that people edit has an ID, 0 before it is stored, and a
// Revision, which the store counts up at each save: a save that carries an old
// revision is refused with a Conflict.
package episode
