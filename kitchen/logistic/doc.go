// Package logistic weighs how likely something is by the traits that it has: the
// likelihood is 1 / (1 + e^−sum), where the sum is that of the weights of its traits.
// Weights are learnt from examples by room fit and stand in text files of the rooms that
// use them.
//
// Source: D. R. Cox, "The regression analysis of binary sequences", Journal of the
// Royal Statistical Society B 20 (1958).
package logistic
