// Package migrations holds the steps that bring a database from empty to what
// this program needs, as goose SQL files, embedded.
//
// One change a file. A file that has been released is never edited: the next
// change gets the next number.
package migrations

import "embed"

// Files are the migrations, named 00001_add_show.sql and so on.
//
//go:embed *.sql
var Files embed.FS
