package source

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"strings"
)

// The limits of a file and of a function, in lines. The aim lies lower: 100 and
// 10.
const (
	MaxFile     = 400
	MaxFunction = 60
)

// Allowance lets one file or one function be longer, and says why.
type Allowance struct {
	File     string // path within the module, with slashes
	Function string // "" for the file itself; "Table.Find" for a method
	Reason   string // why it is better long
}

// Size gives every file over MaxFile lines and every function over MaxFunction
// among the Go files in paths, tests and generated files left out. An allowance
// that lacks a reason, or that nothing needs any more, is a problem too.
func Size(fsys fs.FS, paths []string, allowed []Allowance) ([]string, error) {
	var problems []string
	reasons := map[[2]string]string{}
	for _, a := range allowed {
		reasons[[2]string{a.File, a.Function}] = a.Reason
	}
	for _, p := range Ending(paths, ".go") {
		if strings.HasSuffix(p, "_test.go") || strings.Contains("/"+p, "/testdata/") {
			continue
		}
		long, err := longIn(fsys, p)
		if err != nil {
			return nil, err
		}
		for _, l := range long {
			key := [2]string{p, l.function}
			if reasons[key] == "" {
				problems = append(problems, l.say)
			}
			delete(reasons, key)
		}
	}
	for _, a := range allowed {
		if _, unused := reasons[[2]string{a.File, a.Function}]; unused {
			problems = append(problems, fmt.Sprintf("%s %s: is allowed to be long and is not: take the allowance out", a.File, a.Function))
		}
	}
	return problems, nil
}

type long struct{ function, say string }

// longIn gives what is too long in one Go file.
func longIn(fsys fs.FS, path string) ([]long, error) {
	text, err := fs.ReadFile(fsys, path)
	if err != nil {
		return nil, err
	}
	set := token.NewFileSet()
	file, err := parser.ParseFile(set, path, text, parser.ParseComments|parser.SkipObjectResolution)
	if err != nil {
		return nil, err
	}
	if ast.IsGenerated(file) {
		return nil, nil
	}
	var found []long
	if n := strings.Count(string(text), "\n"); n > MaxFile {
		found = append(found, long{"", fmt.Sprintf("%s: %d lines, over %d: look for the part that is a file of its own", path, n, MaxFile)})
	}
	for _, d := range file.Decls {
		f, ok := d.(*ast.FuncDecl)
		if !ok {
			continue
		}
		first, last := set.Position(f.Pos()).Line, set.Position(f.End()).Line
		if n := last - first + 1; n > MaxFunction {
			name := functionName(f)
			found = append(found, long{name, fmt.Sprintf("%s:%d: %s has %d lines, over %d", path, first, name, n, MaxFunction)})
		}
	}
	return found, nil
}

// functionName gives "Find" for a function, "Table.Find" for a method.
func functionName(f *ast.FuncDecl) string {
	if f.Recv == nil || len(f.Recv.List) == 0 {
		return f.Name.Name
	}
	t := f.Recv.List[0].Type
	for {
		switch x := t.(type) {
		case *ast.StarExpr:
			t = x.X
		case *ast.IndexExpr:
			t = x.X
		case *ast.IndexListExpr:
			t = x.X
		case *ast.Ident:
			return x.Name + "." + f.Name.Name
		default:
			return f.Name.Name
		}
	}
}
