package shoot

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
)

// strict reads one JSON value and refuses names that mean nothing.
func strict(data []byte, into any) error {
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(into); err != nil {
		return err
	}
	if _, err := decoder.Token(); !errors.Is(err, io.EOF) {
		return errors.New("something follows the object")
	}
	return nil
}

// jsonCause words what the JSON reader found, with the line where it knows it.
func jsonCause(data []byte, err error) string {
	var syntax *json.SyntaxError
	var kind *json.UnmarshalTypeError
	switch {
	case errors.As(err, &syntax):
		line := 1 + bytes.Count(data[:min(int(syntax.Offset), len(data))], []byte("\n"))
		return fmt.Sprintf("line %d is no JSON (%s)", line, syntax)
	case errors.As(err, &kind) && kind.Field == "":
		return fmt.Sprintf("it is a JSON %s and must be an object, with \"tasks\"", kind.Value)
	case errors.As(err, &kind):
		return fmt.Sprintf("“%s” must not be a %s; minutes, waits and units are whole numbers, names are text in quotes", kind.Field, kind.Value)
	case errors.Is(err, io.EOF), errors.Is(err, io.ErrUnexpectedEOF):
		return "the text ends too early"
	}
	return strings.TrimPrefix(err.Error(), "json: ")
}

// doubled gives a name that sound JSON has twice in one object; "" if there is
// none. Reading would keep the last and say nothing.
func doubled(data []byte) string {
	decoder := json.NewDecoder(bytes.NewReader(data))
	var open []map[string]bool // the names so far of each object; nil for a list
	isName := false            // whether a name comes next, if anything does
	for {
		token, err := decoder.Token()
		if err != nil {
			return ""
		}
		name, isText := token.(string)
		switch {
		case isText && isName && open[len(open)-1][name]:
			return name
		case isText && isName:
			open[len(open)-1][name], isName = true, false
			continue
		case token == json.Delim('{'):
			open = append(open, map[string]bool{})
		case token == json.Delim('['):
			open = append(open, nil)
		case token == json.Delim('}') || token == json.Delim(']'):
			open = open[:len(open)-1]
		}
		isName = len(open) > 0 && open[len(open)-1] != nil
	}
}
