package speech

import "strings"

// Stem takes a plural's ending off a word.
func Stem(w string) string {
	stem := singular(w)
	if n := len(stem); n > 4 && stem[n-1] == 'i' {
		return stem[:n-1] + "y" // chillies are cut to chilly
	}
	return stem
}

func singular(w string) string {
	switch n := len(w); {
	case n < 4 && w != "egg":
		return w
	case w == "leaves":
		return "leaf"
	case w == "loaves":
		return "loaf"
	case w == "halves":
		return "half"
	case strings.HasSuffix(w, "ies") && n > 4:
		return w[:n-3] + "y"
	case strings.HasSuffix(w, "oes"), strings.HasSuffix(w, "ches"), strings.HasSuffix(w, "shes"), strings.HasSuffix(w, "sses"), strings.HasSuffix(w, "xes"):
		return w[:n-2]
	case strings.HasSuffix(w, "ss"), strings.HasSuffix(w, "us"), strings.HasSuffix(w, "is"):
		return w
	case strings.HasSuffix(w, "s"):
		return w[:n-1]
	}
	return w
}
