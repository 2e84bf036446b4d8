package tally

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"
)

// Tally counts tests. A test with subtests is not counted itself unless it
// failed on its own; a package that failed without any test failing (it did not
// build, or ended early) counts as one failure.
type Tally struct {
	Passed, Failed, Skipped int
	Skips                   []string // each skipped test and its reason, in order
}

// Line gives the closing line: "12 passed, 0 failed, 1 skipped".
func (t Tally) Line() string {
	line := fmt.Sprintf("%d passed, %d failed", t.Passed, t.Failed)
	if t.Skipped > 0 {
		line += fmt.Sprintf(", %d skipped", t.Skipped)
	}
	return line
}

// event is a line of go test -json, as "go doc test2json" describes it.
type event struct {
	Action  string
	Package string
	Test    string
	Output  string
}

// Read reads to the end of r and writes to w as packages finish, what belongs to
// one package together. A line that is
// no event (a note of the go command) is written as it is.
func Read(r io.Reader, w io.Writer) (Tally, error) {
	c := counter{w: w, packages: map[string]*pack{}}
	lines := bufio.NewReader(r)
	for {
		line, err := lines.ReadString('\n')
		if line != "" {
			c.line(line)
		}
		if err == io.EOF {
			c.cutShort()
			return c.tally, c.err
		}
		if err != nil {
			return c.tally, err
		}
	}
}

// pack is what is known of one package while its tests run.
type pack struct {
	output   map[string]*strings.Builder // by test; "" is the package's own
	parents  map[string]bool             // tests that have subtests
	unended  []string                    // tests that began and have not ended
	failed   strings.Builder             // what failing tests printed
	failures int
	broken   map[string]bool // tests below which one failed
}

type counter struct {
	w        io.Writer
	tally    Tally
	packages map[string]*pack
	err      error // the first error of writing
}

func (c *counter) line(line string) {
	var e event
	if json.Unmarshal([]byte(line), &e) != nil || e.Action == "" {
		c.print(line)
		return
	}
	if e.Package == "" { // what the compiler says
		c.print(e.Output)
		return
	}
	p := c.packages[e.Package]
	if p == nil {
		p = &pack{output: map[string]*strings.Builder{}, parents: map[string]bool{}, broken: map[string]bool{}}
		c.packages[e.Package] = p
	}
	switch {
	case e.Action == "output":
		p.keep(e)
	case e.Test == "":
		c.packageEnd(e, p)
	case e.Action == "run":
		p.unended = append(p.unended, e.Test)
		if at := strings.LastIndexByte(e.Test, '/'); at > 0 {
			p.parents[e.Test[:at]] = true
		}
	default:
		c.testEnd(e, p)
	}
}

// keep holds a line of output back until it is known whether it matters.
func (p *pack) keep(e event) {
	if strings.HasPrefix(e.Output, "=== ") || e.Test == "" && e.Output == "PASS\n" {
		return
	}
	if p.output[e.Test] == nil {
		p.output[e.Test] = &strings.Builder{}
	}
	p.output[e.Test].WriteString(e.Output)
}

// take gives what a test printed, once.
func (p *pack) take(test string) string {
	b := p.output[test]
	delete(p.output, test)
	if b == nil {
		return ""
	}
	return b.String()
}

func (c *counter) testEnd(e event, p *pack) {
	if e.Action != "pass" && e.Action != "fail" && e.Action != "skip" {
		return // pause, cont, bench, attr
	}
	for i, name := range p.unended {
		if name == e.Test {
			p.unended = append(p.unended[:i], p.unended[i+1:]...)
			break
		}
	}
	said := p.take(e.Test)
	switch {
	case e.Action == "fail":
		p.failed.WriteString(said)
		p.failures++
		if !p.broken[e.Test] {
			c.tally.Failed++
		}
		if at := strings.LastIndexByte(e.Test, '/'); at > 0 {
			p.broken[e.Test[:at]] = true
		}
	case e.Action == "skip":
		c.tally.Skipped++
		c.tally.Skips = append(c.tally.Skips, e.Package+" "+e.Test+": "+reason(said))
	case !p.parents[e.Test]:
		c.tally.Passed++
	}
}

// reason takes the words out of what a skipped test printed: the file and line
// before them, and the line that says SKIP, go.
func reason(said string) string {
	var words []string
	for line := range strings.SplitSeq(said, "\n") {
		line = strings.TrimSpace(line)
		if line == "" || strings.HasPrefix(line, "--- SKIP") {
			continue
		}
		if _, after, ok := strings.Cut(line, ".go:"); ok {
			if _, text, ok := strings.Cut(after, ": "); ok {
				line = text
			}
		}
		words = append(words, line)
	}
	return strings.Join(words, " ")
}

func (c *counter) packageEnd(e event, p *pack) {
	switch e.Action {
	case "fail":
		c.print(p.failed.String())
		for _, name := range p.unended {
			c.print(p.take(name))
		}
		if p.failures == 0 {
			c.tally.Failed++
		}
		c.print(p.take(""))
	case "pass":
		c.print(p.take(""))
	case "skip": // no test files: nothing to say
	default:
		return
	}
	delete(c.packages, e.Package)
}

// cutShort shows what is known of packages that were still under way when the
// events ended: the go command was stopped.
func (c *counter) cutShort() {
	for _, name := range slices.Sorted(maps.Keys(c.packages)) {
		c.print(c.packages[name].failed.String() + name + " did not end\n")
	}
}

func (c *counter) print(s string) {
	if _, err := io.WriteString(c.w, s); err != nil && c.err == nil {
		c.err = err
	}
}
