// Package topic weighs whether a number of the talk is about the dish or about
// something else: a story, a price, a guest, another recipe.
//
// The rules of room about know many ways to speak of something else, and every
// host has more. So here all words around a number speak, each with a weight that
// was learnt: a logistic regression over the traits of traits.go. The weights stand
// in weights.txt and are learnt from the cuts and scenes of
// ../testdata that the rules are tuned on:
//
//	go test ./kitchen/verify -run TestTopicWeights -update
//
// Source of the method: D. R. Cox, "The regression analysis of binary sequences",
// Journal of the Royal Statistical Society B 20 (1958).
package topic
