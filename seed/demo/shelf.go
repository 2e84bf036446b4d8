package demo

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/shop"
)

// packs are what the host buys for the coming episodes and what it costs in the
// shop by the jetty. Shop and prices are invented; some foods have none yet.
func packs() []shop.Pack {
	grams, kilos, millilitres, litres, pieces := measure.Gram, measure.Kilogram, measure.Millilitre, measure.Litre, measure.Each
	return []shop.Pack{
		pack("egg", 6, pieces, 540), pack("egg", 12, pieces, 980),
		pack("whole-milk", 1, litres, 310), pack("whole-milk", 2, litres, 480),
		pack("double-cream", 300, millilitres, 420), pack("soured-cream", 250, grams, 345),
		pack("caster-sugar", 500, grams, 290), pack("plain-flour", 1500, grams, 330), pack("plain-flour", 500, grams, 190),
		pack("cornflour", 300, grams, 265), pack("pearl-barley", 500, grams, 310),
		pack("sunflower-oil", 1, litres, 620), pack("sunflower-oil", 2, litres, 1090),
		pack("onion", 1, kilos, 275), pack("carrot", 1, kilos, 240), pack("potato", 2, kilos, 520),
		pack("celery", 1, measure.Bunch, 390), pack("garlic", 12, measure.Clove, 150), pack("lemon", 1, pieces, 95),
		pack("lamb-shoulder", 1, kilos, 2350), pack("cod", 400, grams, 1690), pack("cod", 1, kilos, 3890),
		pack("beer", 330, millilitres, 420), pack("gherkins", 340, grams, 495), pack("vegetable-stock", 1, litres, 0),
	}
}

func pack(food string, n int64, unit measure.Unit, cents int64) shop.Pack {
	return shop.Pack{FoodID: food, Amount: measure.Of(whole(n), unit), Price: cents}
}

// stock is what stands in the host's larder on the day.
func (m *maker) stock() []shop.Stock {
	held := func(food string, n int64, unit measure.Unit, days int) shop.Stock {
		s := shop.Stock{FoodID: food, Amount: measure.Of(whole(n), unit)}
		if days != 0 {
			s.UseBy = m.today.AddDate(0, 0, days)
		}
		return s
	}
	return []shop.Stock{
		held("egg", 4, measure.Each, 9), held("whole-milk", 600, measure.Millilitre, -1), held("caster-sugar", 350, measure.Gram, 0),
		held("plain-flour", 800, measure.Gram, 120), held("salt", 700, measure.Gram, 0), held("black-pepper", 60, measure.Gram, 0),
		held("baking-powder", 90, measure.Gram, 200), held("sunflower-oil", 500, measure.Millilitre, 150),
	}
}
