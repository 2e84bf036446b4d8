// Package source looks at the module's files as text: the numbers of the
// migrations, the size of files and functions, words that must not stand in
// anything that is published.
package source
