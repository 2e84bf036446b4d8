// Package written is a recipe as what is said is looked up in it: its ingredient
// lines, the measures that its steps state, the words of each place in the
// method, and the names by which hosts speak of its foods.
package written
