package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"

	"benchproof/kitchen/fault"
	"benchproof/store"
)

// backupCommand copies the data while the program may be running.
type backupCommand struct {
	File string `arg:"" help:"The file to write; it must not exist." type:"path"`
	Data string `help:"The data folder." default:"data" type:"path"`
}

// Run writes the backup and checks it.
func (c *backupCommand) Run(ctx context.Context, std streams) error {
	st, err := openData(ctx, c.Data)
	if err != nil {
		return err
	}
	defer st.Close()
	if err := st.Backup(ctx, c.File); err != nil {
		return err
	}
	if err := store.CheckBackup(ctx, c.File); err != nil {
		return err
	}
	fmt.Fprintf(std.out, "The data of %s is in %s.\n", c.Data, c.File)
	return nil
}

// restoreCommand puts a backup where no data is yet.
type restoreCommand struct {
	File string `arg:"" help:"The backup." type:"existingfile"`
	Data string `help:"The data folder; it must hold no data yet." default:"data" type:"path"`
}

// Run checks the backup and puts a copy of it into the folder.
func (c *restoreCommand) Run(ctx context.Context, std streams) error {
	if err := os.MkdirAll(c.Data, 0o700); err != nil {
		return fault.Invalidf("data", "Cannot use the data folder %s: %v.", c.Data, pathCause(err))
	}
	if err := store.RestoreBackup(ctx, c.File, filepath.Join(c.Data, dataFile)); err != nil {
		return err
	}
	fmt.Fprintf(std.out, "%s holds what was in %s. Start it with “benchproof serve --data %s”.\n", c.Data, c.File, c.Data)
	return nil
}
