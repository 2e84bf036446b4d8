// Package topic weighs whether a number of the talk is about the dish or about
// something else: a story, a price, a guest, another recipe.
//
// The rules of room about know many ways to speak of something else, and every
// host has more. So here all words around a number speak, each with a weight that
// was learnt (room learnt): the traits of traits.go.
package topic
