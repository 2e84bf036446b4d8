// Package scan reads numbers in running text: a cursor that walks through it
// without copying, numbers in figures and in words, fractions in all their
// spellings, dozens, and the signs that part the ends of a range.
package scan
