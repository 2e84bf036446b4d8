package exact

// Range is one or two exact numbers: From ≤ To, equal for a single value.
type Range struct {
	From Number `json:"from"`
	To   Number `json:"to"`
}

// One makes the range of the single value n.
func One(n Number) Range { return Range{n, n} }

// Between makes the range of a and b, put in order.
func Between(a, b Number) Range {
	if a.Cmp(b) > 0 {
		a, b = b, a
	}
	return Range{a, b}
}

// IsSingle tells whether the two ends are the same.
func (r Range) IsSingle() bool { return r.From.Equal(r.To) }

// IsZero tells whether both ends are 0: nothing stated.
func (r Range) IsZero() bool { return r.From.IsZero() && r.To.IsZero() }

// Scale gives both ends times by, in order.
func (r Range) Scale(by Number) Range {
	from := r.From.Mul(by)
	if r.IsSingle() {
		return One(from)
	}
	return Between(from, r.To.Mul(by))
}

// Add gives the sum, end by end.
func (r Range) Add(s Range) Range {
	if r.IsSingle() && s.IsSingle() {
		return One(r.From.Add(s.From))
	}
	return Range{r.From.Add(s.From), r.To.Add(s.To)}
}

// Map gives the range of f of both ends; f must keep their order.
func (r Range) Map(f func(Number) Number) Range {
	if r.IsSingle() {
		return One(f(r.From))
	}
	return Range{f(r.From), f(r.To)}
}

// IsMultiple tells whether both ends are whole multiples of step, above 0.
func (r Range) IsMultiple(step Number) bool {
	return r.From.Quo(step).IsWhole() && (r.IsSingle() || r.To.Quo(step).IsWhole())
}

// NoBreak stands between number and unit. Source: SI Brochure § 5.4.3, NIST
// SP 811 § 7.2.
const NoBreak = "\u00a0"
