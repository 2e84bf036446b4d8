// Package shop turns batches of recipes into what to buy: summed per food,
// grouped by aisle in walking order.
package shop
