package naming

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// token is one word of a written name: as folded ("tomatoes") and as its stem
// ("tomato"), which is the same for singular and plural and for US and UK
// spelling. The stem is for comparing only; it need not be a word.
type token struct {
	plain string
	stem  string
}

// tokens cuts a written name into words: case, accents, hyphens and
// apostrophes are folded away, "&" becomes "and", figures stay.
func tokens(written string) []token {
	folded := fold(written)
	list := make([]token, 0, 8)
	start := -1
	for i := 0; i <= len(folded); i++ {
		if i < len(folded) && isWordByte(folded[i]) {
			if start < 0 {
				start = i
			}
			continue
		}
		if start >= 0 {
			plain := folded[start:i]
			list = append(list, token{plain: plain, stem: stem(plain)})
			start = -1
		}
	}
	return list
}

// isWordByte takes every byte of a letter outside ASCII as part of a word.
func isWordByte(c byte) bool {
	return c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c >= utf8.RuneSelf
}

// fold gives s in lower case without accents and apostrophes, "&" as " and ".
func fold(s string) string {
	var b strings.Builder
	b.Grow(len(s) + 8)
	for i := 0; i < len(s); i++ {
		if s[i] >= utf8.RuneSelf {
			foldWide(&b, s[i:])
			break
		}
		foldByte(&b, s[i])
	}
	return b.String()
}

func foldByte(b *strings.Builder, c byte) {
	switch {
	case c >= 'A' && c <= 'Z':
		b.WriteByte(c + 'a' - 'A')
	case c == '\'':
	case c == '&':
		b.WriteString(" and ")
	default:
		b.WriteByte(c)
	}
}

// foldWide folds text that has letters outside ASCII: it takes them apart and
// drops the marks.
func foldWide(b *strings.Builder, s string) {
	for _, r := range norm.NFKD.String(s) {
		switch {
		case r < utf8.RuneSelf:
			foldByte(b, byte(r))
		case unicode.Is(unicode.Mn, r), r == '’', r == '‘', r == 'ʼ', r == '\u00ad':
		case ligatures[r] != "":
			b.WriteString(ligatures[r])
		case unicode.IsLetter(r), unicode.IsDigit(r):
			b.WriteRune(unicode.ToLower(r))
		default:
			b.WriteByte(' ')
		}
	}
}

// ligatures are the letters that Unicode does not take apart.
var ligatures = map[rune]string{
	'œ': "oe", 'Œ': "oe", 'æ': "ae", 'Æ': "ae", 'ß': "ss", 'ø': "o", 'Ø': "o", 'ł': "l", 'Ł': "l", 'đ': "d", 'ı': "i",
}

// stem gives the stem of one folded word.
func stem(word string) string {
	if s, ok := spellings[word]; ok {
		return s
	}
	s := singular(word)
	if t, ok := spellings[s]; ok {
		return t
	}
	return s
}

// singular takes the plural ending off an English word. Words in -ie and -y
// get the same stem, as do those in -o and -oe, so that "cookie", "cookies"
// and "tomatoe" compare as they should.
func singular(w string) string {
	n := len(w)
	switch {
	case n > 2 && strings.HasSuffix(w, "ie"):
		return w[:n-2] + "y"
	case n < 4:
		return w
	case strings.HasSuffix(w, "ies"):
		return w[:n-3] + "y"
	case strings.HasSuffix(w, "oes"):
		return w[:n-2]
	case strings.HasSuffix(w, "oe") && n > 4:
		return w[:n-1]
	case hasAnySuffix(w, "ches", "shes", "sses", "xes", "zes"):
		return w[:n-2]
	case hasAnySuffix(w, "ss", "us", "is", "ous"):
		return w
	case strings.HasSuffix(w, "s"):
		return w[:n-1]
	}
	return w
}

func hasAnySuffix(w string, endings ...string) bool {
	for _, e := range endings {
		if strings.HasSuffix(w, e) {
			return true
		}
	}
	return false
}

// spellings maps other spellings, irregular plurals and the commonest slips
// that are too far off to be met half-way, to one stem.
var spellings = map[string]string{
	"leaves": "leaf", "loaves": "loaf", "halves": "half", "knives": "knife", "calves": "calf", "geese": "goose",
	"molasses": "molasses", "swiss": "swiss", "schnapps": "schnapps", "gas": "gas",
	"yoghurt": "yogurt", "yoghourt": "yogurt", "chilli": "chili", "chile": "chili", "chily": "chili", "chilly": "chili",
	"catsup": "ketchup", "whiskey": "whisky", "tumeric": "turmeric", "flavour": "flavor", "flavoured": "flavored",
	"flavouring": "flavoring", "colour": "color", "colouring": "coloring", "coloured": "colored", "fibre": "fiber",
	"lasagne": "lasagna", "linguini": "linguine", "fettucine": "fettuccine", "fettuccini": "fettuccine",
	"humus": "hummus", "hommus": "hummus", "houmous": "hummus", "houmus": "hummus", "hoummos": "hummus",
	"castor": "caster", "sirup": "syrup", "savoury": "savory", "licorice": "liquorice", "pimento": "pimiento",
	"filet": "fillet", "center": "centre", "grey": "gray", "mould": "mold", "sulphur": "sulfur", "sulphured": "sulfured",
	"doughnut": "donut", "choi": "choy", "omelet": "omelette", "yoke": "yolk", "crystallized": "crystallised",
	"caramelized": "caramelised", "pasteurized": "pasteurised", "skim": "skimmed", "raising": "rising", "mince": "minced",
	"parmigiana": "parmigiano", "shitake": "shiitake", "dessicated": "desiccated", "dessiccated": "desiccated",
	"worcester": "worcestershire", "worchester": "worcestershire", "worchestershire": "worcestershire",
	"brocolli": "broccoli", "brocoli": "broccoli", "brocollini": "broccolini", "cinammon": "cinnamon", "cinnammon": "cinnamon",
	"basalmic": "balsamic", "zuccini": "zucchini", "zuchini": "zucchini", "tumric": "turmeric", "cauliflour": "cauliflower",
}

// stemKey joins the stems; two names with one key are the same name.
func stemKey(list []token) string { return join(list, func(t token) string { return t.stem }) }

// plainKey joins the folded words, for names that differ only in number:
// "peppers" are not "pepper".
func plainKey(list []token) string { return join(list, func(t token) string { return t.plain }) }

func join(list []token, part func(token) string) string {
	if len(list) == 1 {
		return part(list[0])
	}
	var b strings.Builder
	b.Grow(8 * len(list))
	for i, t := range list {
		if i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(part(t))
	}
	return b.String()
}
