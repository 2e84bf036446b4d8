// Package learnt holds what was learnt from the invented cuts of ../testdata: the
// weights of traits, in text files that are part of the program.
//
// Every model is a logistic regression: the likelihood is that of the sum of the
// weights of the traits that something has. Its source: D. R. Cox, "The regression
// analysis of binary sequences", Journal of the Royal Statistical Society B 20 (1958).
// What the traits are stands with those who tell them: in room topic, and in
// ../doubt.go and ../silence.go. Learn the weights anew, after a change of those or of the
// cuts that are tuned on:
//
//	go test ./kitchen/verify -run TestWeights -update
package learnt
