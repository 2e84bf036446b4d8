package solve_test

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"benchproof/kitchen/shoot/feasible"
	"benchproof/kitchen/shoot/project"
)

// referenceFolder finds the published instances beside the project.
func referenceFolder(t testing.TB) string {
	t.Helper()
	folder, err := filepath.Abs(".")
	if err != nil {
		t.Fatal(err)
	}
	for ; folder != filepath.Dir(folder); folder = filepath.Dir(folder) {
		at := filepath.Join(folder, "shared", "reference", "scheduling")
		if _, err := os.Stat(at); err == nil {
			return at
		}
	}
	t.Skip("the published instances are not at hand")
	return ""
}

// readJ30 reads an instance of PSPLIB in its .sm format.
func readJ30(t testing.TB, file string) project.Project {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var p project.Project
	block, needs := "", [][]int{}
	for scanner := bufio.NewScanner(strings.NewReader(string(text))); scanner.Scan(); {
		fields := strings.Fields(scanner.Text())
		if len(fields) == 0 {
			continue
		}
		figures := wholes(fields)
		switch {
		case strings.HasPrefix(fields[0], "PRECEDENCE"), strings.HasPrefix(fields[0], "REQUESTS"), strings.HasPrefix(fields[0], "RESOURCEAVAIL"):
			block = fields[0][:3]
		case len(figures) < len(fields):
			continue
		case block == "PRE":
			for _, after := range figures[3:] {
				p.Waits = append(p.Waits, project.Wait{Before: figures[0] - 1, After: after - 1, AtMost: project.None})
			}
		case block == "REQ":
			p.Tasks = append(p.Tasks, project.Task{ID: fields[0], Minutes: figures[2], LatestEnd: project.None})
			needs = append(needs, figures[3:])
		case block == "RES":
			for r, capacity := range figures {
				p.Stations = append(p.Stations, project.Station{Name: fmt.Sprintf("R%d", r+1), Capacity: capacity})
			}
		}
	}
	for i, amounts := range needs {
		for r, amount := range amounts {
			if amount > 0 {
				p.Tasks[i].Needs = append(p.Tasks[i].Needs, project.Need{Station: r, Amount: amount})
			}
		}
	}
	return p
}

func wholes(fields []string) []int {
	var all []int
	for _, f := range fields {
		n, err := strconv.Atoi(f)
		if err != nil {
			return all
		}
		all = append(all, n)
	}
	return all
}

// readJobShop reads jobs and machines, then a line of machine and minutes a job.
func readJobShop(t testing.TB, file string) project.Project {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSpace(string(text)), "\n")
	var p project.Project
	for m := range wholes(strings.Fields(lines[0]))[1] {
		p.Stations = append(p.Stations, project.Station{Name: fmt.Sprint("machine ", m), Capacity: 1})
	}
	for j, line := range lines[1:] {
		figures := wholes(strings.Fields(line))
		for k := 0; k+1 < len(figures); k += 2 {
			p.Tasks = append(p.Tasks, project.Task{
				ID: fmt.Sprintf("%d.%d", j, k/2), Minutes: figures[k+1], LatestEnd: project.None,
				Needs: []project.Need{{Station: figures[k], Amount: 1}},
			})
			if last := len(p.Tasks) - 1; k > 0 {
				p.Waits = append(p.Waits, project.Wait{Before: last - 1, After: last, AtMost: project.None})
			}
		}
	}
	return p
}

// j30 is one published instance with its shortest makespan.
type j30 struct {
	name    string
	optimum int
}

// readOptima reads the table of the published optima.
func readOptima(t testing.TB, folder string) []j30 {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(folder, "optimum.csv"))
	if err != nil {
		t.Fatal(err)
	}
	var all []j30
	for _, line := range strings.Split(strings.TrimSpace(string(text)), "\n")[1:] {
		name, optimum, _ := strings.Cut(line, ",")
		n, err := strconv.Atoi(optimum)
		if err != nil {
			t.Fatalf("%s: %v", line, err)
		}
		all = append(all, j30{name, n})
	}
	return all
}

// mustBeFeasible fails the test for every rule that a plan breaks.
func mustBeFeasible(t interface{ Errorf(string, ...any) }, p project.Project, starts []int) {
	for _, broken := range feasible.Check(p, starts) {
		t.Errorf("not feasible: %s", broken)
	}
}
