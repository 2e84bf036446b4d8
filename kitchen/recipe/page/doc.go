// Package page sorts the lines of a pasted recipe: which is the title, the
// yield, a heading, an ingredient, a step, a note. It reads no amounts beyond
// telling that a line begins or ends with one.
//
// Every line that is not blank comes back as exactly one Row.
package page
