package page

import (
	"strings"
	"unicode"

	"benchproof/kitchen/recipe/lexicon"
	"benchproof/kitchen/recipe/method"
)

// place decides about row i, knowing what went before and looking ahead.
func (s *sorter) place(i int) {
	r := &s.rows[i]
	switch {
	case !hasWords(r.Text), isStepLabel(r.Words) && s.at >= inIngredients, isMeasureSwitch(r.Words):
		r.Role = Heading
	case s.continues(i):
	case s.isSure(r):
		s.placeBySection(i)
	case s.isTitle(i):
		r.Role, s.titled, s.at = Title, true, inIntro
		r.Words = untitle(r.Words)
	case IsCredit(r.Words) || s.at <= inIntro && isByline(r.Words, i > 0 && s.rows[i-1].Role == Title):
		r.Role = Credit
	case s.opens(i):
	case s.isYield(i):
		r.Role, s.yielded = Yield, true
	case isAside(r.Words) && s.at != inIntro && s.at != atStart:
		r.Role = Note
	default:
		s.placeBySection(i)
	}
}

// isSure tells a row that its own mark puts in its place: a bullet under the
// heading of the ingredients, a number under that of the method. Its words are
// not looked at for headings, yields or credits.
func (s *sorter) isSure(r *Row) bool {
	return s.said && !strings.HasSuffix(r.Words, ":") && (s.at == inIngredients && r.bulleted && !r.marked || s.at == inMethod && r.Numbered)
}

func (s *sorter) placeBySection(i int) {
	switch s.at {
	case atStart, inIntro:
		s.placeEarly(i)
	case inIngredients:
		s.placeIngredient(i)
	case inMethod:
		s.placeStep(i)
	default:
		s.placeAside(i)
	}
}

// placeAside sorts a row among equipment, credits or notes.
func (s *sorter) placeAside(i int) {
	switch {
	case s.at != inCredits && s.startsList(i):
		s.placeIngredient(i)
	case s.startsMethod(i):
		s.rows[i].Role = Heading
		s.at, s.said, s.entered = inMethod, true, false
	case s.at == inEquipment:
		s.rows[i].Role = Equipment
	case s.at == inCredits:
		s.rows[i].Role = Credit
	default:
		s.rows[i].Role = Note
	}
}

// startsMethod tells, inside notes or equipment, that a heading is followed by
// numbered instructions: the method goes on under a heading nobody foresaw.
func (s *sorter) startsMethod(i int) bool {
	next := s.next(i)
	return next != nil && next.Numbered && method.Begins(next.Words) && shapeOf(s.rows[i], s.shouting) == certain
}

// placeEarly sorts a row before any ingredient.
func (s *sorter) placeEarly(i int) {
	r := &s.rows[i]
	s.at = inIntro
	switch {
	case s.heads(i):
	case isIngredient(r):
		s.placeIngredient(i)
	case !s.listed && (r.Numbered || method.Begins(r.Words)), isOrder(r.Words):
		s.placeStep(i)
	default:
		r.Role = Intro
	}
}

func (s *sorter) placeIngredient(i int) {
	r := &s.rows[i]
	if s.at != inIngredients {
		s.at, s.said = inIngredients, false
	}
	switch {
	case s.heads(i):
		return
	case !s.isSure(r) && (isInstruction(r) || s.isRemark(i)):
		s.at, s.said, s.entered = inMethod, false, false
		s.placeStep(i)
		return
	}
	if s.part < 0 {
		s.part = s.add("", 0)
	}
	r.Role, r.Part = Ingredient, s.part
	s.parts[s.part].lines++
}

func (s *sorter) placeStep(i int) {
	r := &s.rows[i]
	if s.at == inMethod && s.heads(i) {
		return
	}
	if s.at != inMethod {
		s.at, s.said, s.entered = inMethod, false, false
	}
	if !s.said && !r.Numbered && isIngredient(r) && !isInstruction(r) && !strings.HasSuffix(r.Words, ".") && s.part >= 0 {
		r.Role, r.Part = Ingredient, s.part
		s.parts[s.part].lines++
		return
	}
	if rest, ok := bareNumber(r.Words); ok {
		r.Words, r.Numbered = rest, true
	}
	r.Role, r.Part = Step, s.stepPart()
	s.parts[r.Part].steps++
}

// stepPart is the component that a step without a heading of its own belongs
// to: the one in hand, unless ingredients of several stood together first.
func (s *sorter) stepPart() int {
	if s.part >= 0 && (s.entered || s.parts[s.part].steps > 0 || s.parts[s.part].lines == 0) {
		return s.part
	}
	groups, nameless := 0, -1
	for i, p := range s.parts {
		if p.steps > 0 && p.lines > 0 && i != s.part {
			return s.part
		}
		if p.lines > 0 {
			groups++
		}
		if p.Name == "" {
			nameless = i
		}
	}
	switch {
	case groups == 1 && s.part >= 0:
		return s.part
	case nameless < 0:
		nameless = s.add("", 0)
	}
	s.part = nameless
	return nameless
}

func (s *sorter) add(name string, number int) int {
	s.parts = append(s.parts, Part{Name: name, Number: number})
	return len(s.parts) - 1
}

// opens takes a section heading: "Ingredients", "Method: Mix everything."
func (s *sorter) opens(i int) bool {
	r := &s.rows[i]
	sec, about, rest, ok := sectionOf(r.Words)
	if !ok || rest != "" && sec != inIngredients && sec != inMethod || sec == inCredits && rest == "" && r.Number == 0 {
		return false
	}
	if sec == inMethod && rest == "" && !strings.HasSuffix(r.Words, ":") && unicode.IsLower(lexicon.First(r.Words)) && s.at == inIngredients && !s.listed {
		return false
	}
	s.at, s.said, s.entered = sec, true, false
	switch {
	case about != "":
		s.enter(i, about)
	case rest != "":
		r.Words = rest
		if sec == inIngredients {
			s.placeIngredient(i)
		} else {
			s.placeStep(i)
		}
	case sec == inIngredients && !s.yielded && isYieldInBrackets(r.Words):
		r.Role, s.yielded = Yield, true
	default:
		r.Role = Heading
	}
	return true
}

// enter makes row i the heading of a component.
func (s *sorter) enter(i int, name string) {
	r := &s.rows[i]
	s.part = -1
	if s.at == inMethod {
		s.part = s.named(name)
	} else {
		for k, p := range s.parts {
			if partKey(p.Name) == partKey(name) && p.lines == 0 {
				s.part = k
			}
		}
	}
	if s.part < 0 {
		s.part = s.add(name, r.Number)
	}
	r.Role, r.Part = Component, s.part
	s.entered = s.at == inMethod
}

// heads tells whether row i is a component's heading, and enters it.
func (s *sorter) heads(i int) bool {
	r := &s.rows[i]
	shape := shapeOf(*r, s.shouting)
	if shape == plain {
		return false
	}
	next := s.next(i)
	if next == nil {
		return false
	}
	lists := isIngredient(next) && !isInstruction(next) || next.bulleted && s.at != inMethod
	tells := isInstruction(next) || next.Numbered && !lists
	switch {
	case s.at == inMethod && !lists:
		if shape == certain || tells && (shape == likely || shape == maybe && r.blankBefore) {
			s.enter(i, nameOf(r.Words))
			return true
		}
		return false
	case !lists && !tells && shape != certain:
		return false
	case shape == maybe && !r.blankBefore,
		shape == likely && !lists && !tells:
		return false
	}
	if shape == certain && s.at == inIngredients || lists || s.at == inIngredients && tells {
		if tells && !lists && s.at == inIngredients {
			s.at, s.said = inMethod, false
		} else {
			s.at = inIngredients
		}
		s.enter(i, nameOf(r.Words))
		return true
	}
	return false
}

// next is the next row that has words, nil at the end.
func (s *sorter) next(i int) *Row {
	for k := i + 1; k < len(s.rows); k++ {
		if hasWords(s.rows[k].Text) {
			return &s.rows[k]
		}
	}
	return nil
}

// startsList tells, inside notes or equipment, that ingredients begin again.
func (s *sorter) startsList(i int) bool {
	r := s.rows[i]
	if s.at == inEquipment && r.blankBefore && startsMeasured(r.Words) && isUnitWord(firstFields(r.Words, 3)) {
		return true
	}
	next := s.next(i)
	return r.blankBefore && next != nil && shapeOf(r, s.shouting) == certain && isIngredient(next) && !isInstruction(next)
}

func hasWords(text string) bool {
	return strings.ContainsFunc(text, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsNumber(r) })
}

func isIngredient(r *Row) bool {
	return startsMeasured(r.Words) && !isLongSentence(r.Words) || endsMeasured(r.Words)
}

func isLongSentence(words string) bool {
	return strings.HasSuffix(words, ".") && len(strings.Fields(words)) > 14
}

// isInstruction tells a step without knowing the section: it starts as an
// instruction does and is numbered, or long, or ends in a full stop, or goes on
// with "the" or "a".
func isInstruction(r *Row) bool {
	words := r.Words
	if rest, ok := bareNumber(words); ok {
		return method.Begins(rest)
	}
	fields := strings.Fields(words)
	if startsMeasured(words) || !method.Begins(words) && !isNumberedSentence(r, len(fields)) {
		return false
	}
	return r.Numbered || len(words) > 60 || strings.HasSuffix(words, ".") || strings.HasSuffix(words, "!") ||
		len(fields) >= 5 || len(fields) >= 3 && (fields[1] == "the" || fields[1] == "a" || fields[1] == "on" || fields[0] == "oven")
}

// isNumberedSentence tells "1. Blind bake the shell for 15 minutes." behind a gap: a
// list of ingredients has neither the number nor the stop.
func isNumberedSentence(r *Row, fields int) bool {
	return r.Numbered && r.blankBefore && fields >= 4 && strings.HasSuffix(r.Words, ".")
}

// bareNumber takes a step's number that has no sign after it: "1 Preheat the
// oven". The rest must begin as an instruction.
func bareNumber(words string) (rest string, ok bool) {
	n := 0
	for n < len(words) && n < 2 && words[n] >= '0' && words[n] <= '9' {
		n++
	}
	if n == 0 || n >= len(words) || !unicode.IsSpace(lexicon.First(words[n:])) {
		return "", false
	}
	rest = trim(words[n:])
	return rest, unicode.IsUpper(lexicon.First(rest)) && method.Begins(rest)
}

// isRemark tells a sentence after the ingredients that is no ingredient and no
// instruction we know: the method has begun, unless more ingredients follow.
func (s *sorter) isRemark(i int) bool {
	r := s.rows[i]
	if s.said || startsMeasured(r.Words) || endsMeasured(r.Words) {
		return r.Numbered && method.Begins(r.Words)
	}
	if len(strings.Fields(r.Words)) <= 10 || !strings.HasSuffix(r.Words, ".") || !r.blankBefore {
		return false
	}
	next := s.next(i)
	return next == nil || !isIngredient(next)
}

// isOrder tells an instruction before the ingredients: it orders something to
// be done, and is a sentence. "Use good flour" and "Make it a day ahead" are
// words of introduction.
func isOrder(words string) bool {
	first := firstFields(words, 1)
	switch strings.Trim(first[0], ".,") {
	case "use", "make", "serve", "take", "start", "begin", "check", "taste", "repeat", "love", "share", "continue", "allow", "let", "leave":
		return false
	}
	return strings.HasSuffix(words, ".") && method.Begins(words) && method.IsVerb(first[0])
}

// isStepLabel tells "Step 3" or "Day 2" alone on its line.
func isStepLabel(words string) bool {
	fields := firstFields(strings.TrimRight(words, ":.-–"), 3)
	if len(fields) != 2 || !lexicon.IsNumeral(lexicon.First(fields[1])) && !numberWords[fields[1]] {
		return false
	}
	switch fields[0] {
	case "step", "day", "stage", "part", "phase":
		return true
	}
	return false
}

// isMeasureSwitch tells the words of a web page's switch between measures,
// which come along when a page is copied.
func isMeasureSwitch(words string) bool {
	fields := firstFields(words, 8)
	metric, other := false, false
	for _, f := range fields {
		switch f {
		case "metric":
			metric = true
		case "us", "imperial", "customary", "cups":
			other = true
		case "–", "-", "|", "/", "·", "us/metric", "measures", "units":
		default:
			return false
		}
	}
	return metric && other
}

// isYield allows one yield; in the method only as a short line of its own.
func (s *sorter) isYield(i int) bool {
	r := s.rows[i]
	if s.yielded || r.Numbered || !isYield(r.Words) {
		return false
	}
	return s.at != inMethod || len(strings.Fields(r.Words)) <= 6
}

func isYieldInBrackets(words string) bool {
	_, rest, ok := strings.Cut(words, "(")
	if !ok {
		_, rest, ok = strings.Cut(words, " for ")
		return ok && people(rest)
	}
	return isYield(strings.TrimSuffix(trim(rest), ")")) || strings.HasPrefix(rest, "for ") && people(rest[4:])
}
