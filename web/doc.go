// Package web answers HTTP: routes, forms, sessions, share pages. A handler
// reads the request, calls one thing, draws one view; what can be decided
// without a response is decided apart and tested without one.
package web
