package web

import (
	"fmt"
	"net/url"
	"strconv"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"
)

// count words a number of things: "1 line", "3 lines".
func count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}

// paragraphs parts a text at its blank lines.
func paragraphs(text string) []string {
	var list []string
	for _, p := range strings.Split(text, "\n\n") {
		if p = strings.TrimSpace(p); p != "" {
			list = append(list, p)
		}
	}
	return list
}

// day writes a date as the gutter shows it, "14 Mar", with the year where it
// is not this one.
func (s *Server) day(t time.Time) string {
	if t.Year() == s.config.Now().Year() {
		return t.Format("2 Jan")
	}
	return t.Format("2 Jan 2006")
}

// anchor is the id of a part's row on its sheet.
func anchor(word string, id int64) string { return fmt.Sprintf("%s-%d", word, id) }

// moveActions are the addresses that move a part among its siblings.
func moveActions(path string, first, last bool) (up, down string) {
	if !first {
		up = path + "/move?way=up"
	}
	if !last {
		down = path + "/move?way=down"
	}
	return up, down
}

// normal makes two typed texts comparable: line ends and edges do not count.
func normal(text string) string {
	return strings.TrimSpace(strings.ReplaceAll(text, "\r\n", "\n"))
}

// shortened cuts a text at a word's end within limit characters.
func shortened(text string, limit int) string {
	runes := []rune(text)
	if len(runes) <= limit {
		return text
	}
	cut := string(runes[:limit])
	if space := strings.LastIndexByte(cut, ' '); space > limit/2 {
		cut = cut[:space]
	}
	return strings.TrimRight(cut, " ,.;:") + "…"
}

// urlText escapes a text for a query.
func urlText(text string) string { return url.QueryEscape(text) }

// asWords turns named words into plain ones.
func asWords[T ~string](named []T) []string {
	var list []string
	for _, n := range named {
		list = append(list, string(n))
	}
	return list
}

// joined joins the texts that are not empty.
func joined(by string, texts ...string) string {
	var kept []string
	for _, t := range texts {
		if t != "" {
			kept = append(kept, t)
		}
	}
	return strings.Join(kept, by)
}

// dateWord is day, or "not dated".
func (s *Server) dateWord(t time.Time) string {
	if t.IsZero() {
		return "not dated"
	}
	return s.day(t)
}

// thousands writes a whole number from 0 up with commas: "5,000".
func thousands(n int) string {
	text := strconv.Itoa(n)
	for i := len(text) - 3; i > 0; i -= 3 {
		text = text[:i] + "," + text[i:]
	}
	return text
}

// readOn makes a text's first letter small, so that it reads on in a sentence.
func readOn(text string) string {
	first, size := utf8.DecodeRuneInString(text)
	if size == 0 {
		return text
	}
	return string(unicode.ToLower(first)) + text[size:]
}
