// Package fit learns the weights of a logistic model from examples. Only tests use it: what
// it finds is written to files that the program reads.
package fit
