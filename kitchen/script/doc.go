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
// Align weighs the words that script and cut share (lexicon.go), shares the
// recipe's steps out among segments without narration (shown.go), and parts the
// cut among all segments at once by the heaviest way through its captions
// (parting.go, way.go). What is little more than a guess is to be asked about:
// see LowConfidence. AlignCut gives what is worth keeping of it.
//
// # What it costs
//
// On one core of a shared server, a cut of an hour (9,000 words, 90 segments) is
// read and aligned in 16 ms, one of four hours (36,000 words, 340 segments) in
// 130 ms, with 21 MiB at the most: go test -run XXX -bench 'ReadAndAlign|Memory'
package script
