package source

import (
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

var migrationName = regexp.MustCompile(`^([0-9]{5})_[a-z0-9]+(_[a-z0-9]+)*\.sql$`)

// Migrations gives what is wrong with the migrations among paths: a name that
// is not of the form 00012_add_share_link.sql, numbers that do not run from 1
// without doubles and gaps, a file that lacks its way up or its way down. No
// migration at all is a problem.
func Migrations(fsys fs.FS, paths []string) ([]string, error) {
	var problems []string
	byNumber := map[int][]string{}
	for _, p := range Ending(paths, ".sql") {
		parts := migrationName.FindStringSubmatch(path.Base(p))
		if parts == nil {
			problems = append(problems, fmt.Sprintf("%s: a migration is named like 00012_add_share_link.sql", p))
			continue
		}
		number, err := strconv.Atoi(parts[1])
		if err != nil {
			return nil, err
		}
		byNumber[number] = append(byNumber[number], p)
		text, err := fs.ReadFile(fsys, p)
		if err != nil {
			return nil, err
		}
		for _, way := range []string{"Up", "Down"} {
			if !strings.Contains(string(text), "-- +goose "+way+"\n") {
				problems = append(problems, fmt.Sprintf("%s: no line that reads %q", p, "-- +goose "+way))
			}
		}
	}
	return append(problems, numbering(byNumber)...), nil
}

func numbering(byNumber map[int][]string) []string {
	if len(byNumber) == 0 {
		return []string{"no migration found"}
	}
	var problems []string
	highest := 0
	for number := range byNumber {
		highest = max(highest, number)
	}
	if len(byNumber[0]) > 0 {
		problems = append(problems, fmt.Sprintf("%s: numbers begin with 00001", byNumber[0][0]))
	}
	for number := 1; number <= highest; number++ {
		files := byNumber[number]
		slices.Sort(files)
		switch len(files) {
		case 0:
			problems = append(problems, fmt.Sprintf("no migration %05d, though %05d is there", number, highest))
		case 1:
		default:
			problems = append(problems, fmt.Sprintf("migration %05d is there %d times: %s", number, len(files), strings.Join(files, ", ")))
		}
	}
	return problems
}
