package web

import (
	"benchproof/kitchen/shoot"
)

// benchPlaces is how many things a bench holds: as many as come. It is a
// station only so that it can be cleaned down.
const benchPlaces = 100

// helper is the station of the one who helps: steps can be given to it.
const helper = "helper"

// stations are the day's hands and what its kitchen holds. Fridges and freezers
// hold what comes; moments take some of a station away.
func (p *shootPlan) stations() []shoot.Station {
	k := p.settings.Kitchen
	stations := []shoot.Station{
		{Name: shoot.Hands, Units: p.settings.Hands}, {Name: shoot.Camera, Units: 1},
		{Name: "mixer", Units: k.Mixers, Clean: k.CleanMixer}, {Name: "hob", Units: k.Rings, Clean: k.CleanHob}, {Name: "oven", Units: k.Ovens * k.OvenHolds},
	}
	if until := p.settings.HelperUntil; until > 0 {
		gone := shoot.Busy{From: max(0, until-p.zero), Units: 1}
		stations[0].Units++
		stations[0].Busy = append(stations[0].Busy, gone)
		stations = append(stations, shoot.Station{Name: helper, Units: 1, Busy: []shoot.Busy{gone}, Within: shoot.Hands})
	}
	if until := p.settings.LightUntil; until > 0 || p.takes(shoot.Light) {
		light := shoot.Station{Name: shoot.Light, Units: 1}
		if until > 0 {
			light.Busy = []shoot.Busy{{From: max(0, until-p.zero), Units: 1}}
		}
		stations = append(stations, light)
	}
	if k.CleanBench > 0 {
		stations = append(stations, shoot.Station{Name: "bench", Units: benchPlaces, Clean: k.CleanBench})
	}
	for i := range stations {
		stations[i].Busy = append(stations[i].Busy, p.takenOf(stations[i].Name)...)
	}
	return stations
}

// takes tells whether a moment takes some of a station away.
func (p *shootPlan) takes(station string) bool { return len(p.takenOf(station)) > 0 }

// takenOf lists when moments take some of a station away: one pair of hands, one
// ring, or one whole oven.
func (p *shootPlan) takenOf(station string) []shoot.Busy {
	units := 1
	if station == "oven" {
		units = p.settings.Kitchen.OvenHolds
	}
	var all []shoot.Busy
	for _, m := range p.moments {
		if m.Takes == station && m.Until > m.At {
			all = append(all, shoot.Busy{From: max(0, m.At-p.zero), To: m.Until - p.zero, Units: units})
		}
	}
	return all
}
