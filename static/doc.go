// Package static holds what browsers fetch beside the pages: stylesheets, a
// little JavaScript, fonts and icons, all embedded. Each is served under an
// address that carries the hash of its content, so that it may be cached for
// good.
package static
