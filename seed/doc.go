// Package seed holds what a fresh Benchproof starts with: the larder's table of
// foods, read from the text files beside it, and the demo show, whose words
// stand in the folder demo.
package seed
