package main

import (
	"context"
	"errors"
	"fmt"
	"net"
	"os"
	"path/filepath"
	"syscall"
	"time"

	"benchproof/seed"
	"benchproof/store"
	"benchproof/web"
)

// demoCommand serves the demo show from a folder that is gone afterwards.
type demoCommand struct {
	Addr string `help:"Address to listen on; it must be this machine's own." default:"127.0.0.1:8080"`
}

// Run fills a temporary data folder with the demo show and serves it until the
// context ends.
func (c *demoCommand) Run(ctx context.Context, std streams) error {
	listener, err := listenNear(c.Addr)
	if err != nil {
		return err
	}
	address := "http://" + listener.Addr().String()
	st, remove, err := openDemo(ctx, address)
	if err != nil {
		listener.Close()
		return err
	}
	defer remove()
	fmt.Fprintf(std.out, "The demo show is at %s/\nIt is yours to change: everything is gone when you stop it with Ctrl-C.\n", address)
	return serve(ctx, listener, st, web.Config{PublicURL: address, OpenDoor: true})
}

// openDemo makes a store in a temporary folder and fills it with the demo
// show, whose viewers come to address. remove closes and deletes it.
func openDemo(ctx context.Context, address string) (st *store.Store, remove func(), err error) {
	folder, err := os.MkdirTemp("", "benchproof-demo-")
	if err != nil {
		return nil, nil, err
	}
	remove = func() {
		if st != nil {
			st.Close()
		}
		os.RemoveAll(folder)
	}
	if st, err = store.Open(ctx, filepath.Join(folder, dataFile), store.Options{Now: time.Now}); err == nil {
		err = fillDemo(ctx, st, time.Now(), address)
	}
	if err != nil {
		remove()
		return nil, nil, err
	}
	return st, remove, nil
}

// listenNear listens on addr, or on a free port of the same host if that one
// is taken. Only this machine's own addresses will do: nobody signs in.
func listenNear(addr string) (net.Listener, error) {
	host, _, err := net.SplitHostPort(addr)
	if err != nil {
		return nil, usageError{fmt.Errorf("--addr: %q is not HOST:PORT, such as 127.0.0.1:8080", addr)}
	}
	if ip := net.ParseIP(host); host != "localhost" && (ip == nil || !ip.IsLoopback()) {
		return nil, usageError{fmt.Errorf("--addr: the demo has no sign-in, so it listens on 127.0.0.1 only, not on %q", host)}
	}
	listener, err := net.Listen("tcp", addr)
	if errors.Is(err, syscall.EADDRINUSE) {
		return net.Listen("tcp", net.JoinHostPort(host, "0"))
	}
	return listener, err
}

// fillDemo writes the demo show as it stands on the day now into an empty
// store. Viewers come to address.
func fillDemo(ctx context.Context, st *store.Store, now time.Time, address string) error {
	show, err := seed.Demo(now)
	if err != nil {
		return err
	}
	larder, err := seed.Larder()
	if err != nil {
		return err
	}
	return (&filler{st: st, larder: larder, show: show, address: address}).fill(ctx)
}
