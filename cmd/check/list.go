package main

import "context"

// check is one thing that must hold. Its run writes what a person needs to know
// to j.out; the error says in a few words what is wrong.
type check struct {
	name  string
	about string
	alone bool // it takes both cores and its output is followed as it comes
	run   func(ctx context.Context, j *job) error
}

// checks lists every check in the order in which their output is shown: what is
// quick first, the tests, which take longest, last.
func checks() []check {
	return []check{
		{name: "fmt", about: "every Go file is as gofmt writes it", run: checkFormat},
		{name: "arrows", about: "no package imports against the plan of the house", run: checkArrows},
		{name: "migrations", about: "migrations are numbered without doubles and gaps, each with its way down", run: checkMigrations},
		{name: "size", about: "no file over 400 lines, no function over 60, but for a stated reason", run: checkSize},
		{name: "larder", about: "the larder's figures are those of USDA SR 26, where that is at hand", run: checkLarder},
		{name: "words", about: "no paths of one machine, no unfinished thoughts, no registry hosts", run: checkWords},
		{name: "generated", about: "the Go files made from templates are there and current", run: checkGenerated},
		{name: "tidy", about: "go.mod and go.sum are as go mod tidy writes them, and modules unchanged", run: checkTidy},
		{name: "vet", about: "go vet finds nothing", run: checkVet},
		{name: "staticcheck", about: "staticcheck finds nothing", run: checkStatic},
		{name: "govulncheck", about: "no known hole in a module that is used, where its database can be reached", run: checkHoles},
		{name: "tools", about: "what the tests need from outside is there; installs it as root on Debian", run: checkTools},
		{name: "tests", about: "every test passes under the race detector, those in the browser too", alone: true, run: checkTests},
	}
}
