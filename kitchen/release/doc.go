// Package release writes what is published: the description block, the recipe
// page's structured data and the printed card.
package release
