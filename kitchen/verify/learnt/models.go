package learnt

import (
	_ "embed"
	"sync"

	"benchproof/kitchen/logistic"
)

// Models are all that was learnt. A nil one is taken from what comes with the program.
type Models struct {
	Topic   *logistic.Model // how likely a number is about something else than the dish
	Doubt   *logistic.Model // how likely a finding about a number is false
	Silence *logistic.Model // how likely what nobody seems to say is really not said
}

//go:embed topic.txt
var topic string

//go:embed doubt.txt
var doubt string

//go:embed silence.txt
var silence string

var own = sync.OnceValue(func() Models {
	return Models{Topic: logistic.MustRead(topic), Doubt: logistic.MustRead(doubt), Silence: logistic.MustRead(silence)}
})

// Own gives the models that come with the program.
func Own() Models { return own() }

// OrOwn fills in those that are missing.
func (m Models) OrOwn() Models {
	all := own()
	if m.Topic != nil {
		all.Topic = m.Topic
	}
	if m.Doubt != nil {
		all.Doubt = m.Doubt
	}
	if m.Silence != nil {
		all.Silence = m.Silence
	}
	return all
}
