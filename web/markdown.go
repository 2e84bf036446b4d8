package web

import (
	"bytes"

	"github.com/microcosm-cc/bluemonday"
	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"
)

// notesMarkdown reads the creator's Markdown; notesPolicy lets through what
// notes need and no address that runs something.
var (
	notesMarkdown = goldmark.New(goldmark.WithExtensions(extension.GFM, extension.Typographer))
	notesPolicy   = bluemonday.UGCPolicy()
)

// markdown gives text as sanitised HTML, "" for an empty text.
func markdown(text string) (string, error) {
	if text == "" {
		return "", nil
	}
	var html bytes.Buffer
	if err := notesMarkdown.Convert([]byte(text), &html); err != nil {
		return "", err
	}
	return notesPolicy.Sanitize(html.String()), nil
}
