// Package shop turns batches of recipes into what to buy: summed per food, less
// what is in the larder, in the cheapest packs, grouped by aisle in walking
// order.
//
// Sums are exact; only what is written is rounded, and always upwards, for a
// list that buys too little spoils a shoot. Of a range the larger end is bought;
// stock that is past its use-by when it is needed is not counted. Nothing a
// recipe names is left out but tap water: a line that was not read, or whose
// food the larder does not know, stands on the list as written or among its
// questions. An item without packs or prices stands there without them.
package shop
