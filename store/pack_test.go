package store_test

import (
	"testing"
	"time"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/shop"
	"benchproof/store"
)

// packOf is a pack of a food, so many grams at a price.
func packOf(food string, grams, price int64) shop.Pack {
	return shop.Pack{FoodID: food, Amount: measure.Of(measure.Whole(grams), measure.Gram), Price: price}
}

func TestPacksAreListedByFood(t *testing.T) {
	st := open(t)
	same(t, "packs of a new store", must(st.Packs(t.Context(), ""))(t), []shop.Pack(nil))
	var ids []int64
	for _, p := range []shop.Pack{packOf("rye-flour", 500, 220), packOf("butter", 250, 480), packOf("rye-flour", 1000, 390)} {
		ids = append(ids, must(st.AddPack(t.Context(), p))(t))
	}
	listed := func(food string) (prices []int64) {
		for _, p := range must(st.Packs(t.Context(), food))(t) {
			prices = append(prices, p.Price)
		}
		return prices
	}
	same(t, "every pack", listed(""), []int64{220, 480, 390})
	same(t, "packs of rye flour", listed("rye-flour"), []int64{220, 390})
	same(t, "packs of honey", listed("honey"), []int64(nil))
	ok(t, st.DeletePack(t.Context(), ids[0]))
	same(t, "packs of rye flour, one deleted", listed("rye-flour"), []int64{390})
	same(t, "every pack, one deleted", listed(""), []int64{480, 390})
}

func TestAPriceIsNeverBelowNothing(t *testing.T) {
	st := open(t)
	_, err := st.AddPack(t.Context(), packOf("butter", 250, -1))
	wantFault(t, err, fault.Invalid)
	id := must(st.AddPack(t.Context(), packOf("butter", 250, 0)))(t)
	p := must(st.Pack(t.Context(), id))(t)
	p.Price = -1
	wantFault(t, st.SavePack(t.Context(), p), fault.Invalid)
}

// Amounts are exact, however odd: a third of a kilogram, the pound in grams.
func TestPackAmountsAreExact(t *testing.T) {
	st := open(t)
	for _, n := range []string{"1/3", "453.59237", "3/2", "123456789123456789/7"} {
		value := shop.Pack{FoodID: "butter", Amount: measure.Of(measure.MustNumber(n), measure.Kilogram)}
		id := must(st.AddPack(t.Context(), value))(t)
		same(t, "amount "+n, must(st.Pack(t.Context(), id))(t).Amount, value.Amount)
	}
}

func TestStockIsListedByItsUseBy(t *testing.T) {
	st := open(t)
	same(t, "stock of a new store", must(st.Stock(t.Context(), ""))(t), []shop.Stock(nil))
	day := func(n int) time.Time { return time.Date(2027, 3, n, 0, 0, 0, 0, time.UTC) }
	for _, s := range []shop.Stock{
		{FoodID: "milk"}, {FoodID: "milk", UseBy: day(20)}, {FoodID: "egg", UseBy: day(12)}, {FoodID: "milk", UseBy: day(9)},
	} {
		s.Amount = measure.Of(measure.Whole(1), measure.Litre)
		must(st.AddStock(t.Context(), s))(t)
	}
	listed := func(food string) (dates []string) {
		for _, s := range must(st.Stock(t.Context(), food))(t) {
			if s.UseBy.IsZero() {
				dates = append(dates, "none")
				continue
			}
			dates = append(dates, s.UseBy.Format("2 Jan"))
		}
		return dates
	}
	same(t, "all stock", listed(""), []string{"9 Mar", "12 Mar", "20 Mar", "none"})
	same(t, "stock of milk", listed("milk"), []string{"9 Mar", "20 Mar", "none"})
	same(t, "stock of honey", listed("honey"), []string(nil))
}

// An entry that was deleted comes back as it was, though others were saved in
// between.
func TestDeletedStockComesBack(t *testing.T) {
	st := open(t)
	first := must(st.AddStock(t.Context(), shop.Stock{FoodID: "milk", Amount: measure.Of(measure.Whole(1), measure.Litre)}))(t)
	before := must(st.StockEntry(t.Context(), first))(t)
	ok(t, st.DeleteStock(t.Context(), first))
	must(st.AddStock(t.Context(), shop.Stock{FoodID: "milk", Amount: measure.Of(measure.Whole(2), measure.Litre)}))(t)
	ok(t, st.Restore(t.Context(), "stock", first))
	same(t, "what came back", must(st.StockEntry(t.Context(), first))(t), before)
	if n := len(must(st.Stock(t.Context(), "milk"))(t)); n != 2 {
		t.Errorf("%d entries of milk, want 2", n)
	}
}

// What is not there, or of no food, is refused or simply not listed.
func TestPacksAndStockOfNoFood(t *testing.T) {
	st := open(t)
	for _, food := range []string{"zorb", "'; DROP TABLE pack; --", "%", "egg "} {
		same(t, "packs of "+food, must(st.Packs(t.Context(), food))(t), []shop.Pack(nil))
		same(t, "stock of "+food, must(st.Stock(t.Context(), food))(t), []shop.Stock(nil))
	}
	for _, id := range []int64{-1, 0, 77} {
		_, err := st.Pack(t.Context(), id)
		wantFault(t, err, fault.NotFound)
		_, err = st.StockEntry(t.Context(), id)
		wantFault(t, err, fault.NotFound)
		wantFault(t, st.DeletePack(t.Context(), id), fault.NotFound)
		wantFault(t, st.DeleteStock(t.Context(), id), fault.NotFound)
	}
}

// A use-by that is no date cannot get into the database, whoever writes it.
func TestAUseByIsADate(t *testing.T) {
	st := open(t)
	id := must(st.AddStock(t.Context(), shop.Stock{FoodID: "milk", Amount: measure.Of(measure.Whole(1), measure.Litre)}))(t)
	for _, bad := range []string{"soon", "2027-02-30", "2027-3-1", "2027-03-01T00:00:00Z", ""} {
		if _, err := st.Raw().ExecContext(t.Context(), "UPDATE stock SET use_by = ?2 WHERE stock_id = ?1", id, bad); err == nil {
			t.Errorf("the use-by %q was taken", bad)
		}
	}
	if got := must(st.StockEntry(t.Context(), id))(t); !got.UseBy.IsZero() {
		t.Errorf("the use-by is %s", got.UseBy)
	}
}

// A pack and some stock of one id are two things: deleting one leaves the other.
func TestPackAndStockAreApart(t *testing.T) {
	st := open(t)
	pack := must(st.AddPack(t.Context(), packOf("butter", 250, 480)))(t)
	held := must(st.AddStock(t.Context(), shop.Stock{FoodID: "butter", Amount: measure.Of(measure.Whole(250), measure.Gram)}))(t)
	if pack != held {
		t.Fatalf("ids %d and %d: the test tries nothing", pack, held)
	}
	ok(t, st.DeletePack(t.Context(), pack))
	must(st.StockEntry(t.Context(), held))(t)
	wantFault(t, st.Restore(t.Context(), store.StockKind, held), fault.NotFound)
	ok(t, st.Restore(t.Context(), store.PackKind, pack))
	must(st.Pack(t.Context(), pack))(t)
}
