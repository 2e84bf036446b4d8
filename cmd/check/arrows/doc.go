// Package arrows holds the house's plan: which room may import which. It reads
// no files; it is told of packages and their imports, and tells of every import
// that runs the wrong way.
package arrows
