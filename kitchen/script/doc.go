// Package script times narration at the host's pace, keeps the running order,
// reads captions, and finds the segments in the cut.
//
// # How a cut is read
//
// ReadCaptions reads WebVTT by the standard's parser (webvtt.go, vtttime.go),
// SRT and transcripts, and settles what tools add: repeated lines, marks of who
// speaks. What it gives, WriteVTT and WriteSRT write so that it reads the same.
//
// # How segments are found
//
// Align weighs the words that script and cut share (lexicon.go, wordkey.go),
// shares the recipe's steps out among segments without narration (shown.go), and
// tells where something new seems to begin: by silences, by how people begin and
// by a turn to other words, as was learnt (spot.go, opening.go, turn.go). It adds
// up all ways to part the cut among all segments at once (parting.go, way.go;
// weights.go says what weighs what), and puts each segment where most of them have
// it begin (place.go). What is little more than a guess is to be asked about: see
// LowConfidence. AlignCut gives what is worth keeping of it.
//
// # What it costs
//
// On one core of a shared server, a cut of an hour (9,000 words, 80
// segments) is read and aligned in 39 to 51 ms with 13 MiB at the most, one of four
// hours (36,000 words, 310 segments) in 135 to 222 ms with 28 MiB: go test -run XXX -bench
// 'ReadAndAlign|Memory'
package script
