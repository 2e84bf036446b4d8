// Package fault is how every room says that something went wrong: a kind,
// a sentence for the person, and a cause for the log.
package fault
