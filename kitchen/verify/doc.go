// Package verify compares what is said in a cut with what is written in its
// recipe: amounts, counts, times, temperatures and lengths.
//
// Room speech finds the numbers in the captions, room topic weighs from the words
// round each whether it is about the dish at all, and room about ties it to the
// ingredient line or step of room written that it is about. Here what is tied is
// judged (judge.go), and what nothing ties is set against what nobody says (stray.go).
// What disagrees becomes a Finding unless it is more likely false, by its traits
// (doubt.go), and so does what nobody seems to say (silence.go). How likely that is, was
// learnt (room learnt).
//
// # What agrees
//
// A said value agrees with a written one if both are equal within rounding:
// exactly in one unit, within 3 % between units of mass or between units of
// volume whose size does not depend on a system, 8 % where it does, 15 %
// between mass and volume, and 12 % more where either side says "about". A said
// value agrees with a written range that holds it; a said range agrees with a
// written range that holds it, and with a written single value that it holds.
// Two ranges that only overlap differ. An oven's setting agrees with any of the
// settings written together, or with what the published table makes of one.
//
// Uses in parts add up: of one food, several amounts whose sum is the line's
// agree, and so does a part before "the rest".
//
// # How good it is
//
// testdata/cuts/README.md tells what is found on cuts that were tuned on, and on
// cuts that were not.
//
// # What it costs
//
// Processor time on one core of a shared Intel Xeon, Go 1.26, against a recipe
// of 14 lines and 7 steps: go test -run XXX -bench . -cpu 1
//
//	an hour's cut, 9,000 words        42 ms,  10 MB allocated
//	four hours, 36,000 words         224 ms,  44 MB
//	100,000 words                    1.1 s, 145 MB
package verify
