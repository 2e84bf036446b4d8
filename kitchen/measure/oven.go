package measure

// OvenSetting is one row of the published table of oven settings. There is no
// governing standard.
type OvenSetting struct {
	Gas         Number   // gas mark
	Fahrenheit  Number   // conventional
	Celsius     []Number // conventional, as tables print it; some print two
	Fan         Number   // °C, 0 where tables print none
	NearestFive Number   // the exact °C to the nearest 5, as other tables print it
	Word        string   // the UK word: "moderate"
}

// Question is something about given heats that is likely a slip.
type Question struct {
	Text   string   // what is odd and what may be meant, a sentence or two
	About  Heat     // the heat it is about
	Likely []string // what was likely meant, the likelier first: "160 °C fan"
}

// OvenSettings gives the table, coolest first.
func OvenSettings() []OvenSetting { return nil }

// CheckOvens questions heats given together that do not agree.
func CheckOvens(heats []Heat) []Question { return nil }
