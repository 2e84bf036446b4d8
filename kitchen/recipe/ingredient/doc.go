// Package ingredient reads one ingredient line as cooks write it: amounts
// before or after the name, packs, alternatives, what is done to the food and
// what is remarked about it.
//
// Everything comes from the words of the line: no amount is invented, and a
// line that holds more than this grammar understands is marked not read.
package ingredient
