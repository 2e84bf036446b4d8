// Package tally reads what go test -json prints, keeps count, and writes it
// out for people: a line for each package, everything a failing test printed,
// and each skipped test with its reason.
package tally
