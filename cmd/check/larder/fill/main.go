// Command fill writes the figures of the USDA National Nutrient Database,
// Release 26, into the larder's tables:
//
//	go run ./cmd/check/larder/fill --reference DIR
package main

import (
	"flag"
	"fmt"
	"os"

	"benchproof/cmd/check/larder"
)

func main() {
	seedDir := flag.String("seed", "seed", "the folder that holds larder/*.txt")
	reference := flag.String("reference", "", "the folder with FOOD_DES.txt, WEIGHT.txt and ABBREV.txt")
	flag.Parse()
	if err := larder.Fill(*seedDir, *reference); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}
