// Command check runs everything that must hold before a change is published:
//
//	go run ./cmd/check                  every check
//	go run ./cmd/check fmt vet          those named
//	go run ./cmd/check help             the list
//	go run ./cmd/check look DIR         no check: photographs every page of the demo
//
// It works from any folder of the module. It ends with status 1 when a check
// fails, and its last line names those that did. The check "tools" installs
// what the tests need from outside the module where it may (as root on Debian),
// and says how to get it where it may not.
package main
