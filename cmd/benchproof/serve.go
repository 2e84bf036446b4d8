package main

import (
	"context"
	"crypto/rand"
	"errors"
	"fmt"
	"log/slog"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"sync"
	"time"

	"github.com/klauspost/compress/gzhttp"

	"benchproof/kitchen/fault"
	"benchproof/seed"
	"benchproof/store"
	"benchproof/web"
)

// serveCommand runs the real thing.
type serveCommand struct {
	Data      string `help:"Folder that holds everything; made if missing." default:"data" type:"path"`
	Addr      string `help:"Address to listen on." default:"127.0.0.1:8080"`
	PublicURL string `help:"Address viewers use, such as https://kitchen.example.org. Taken from --addr if not given."`
}

// Run serves until the context ends.
func (c *serveCommand) Run(ctx context.Context, std streams) error {
	st, err := openData(ctx, c.Data)
	if err != nil {
		return err
	}
	defer st.Close()
	listener, err := net.Listen("tcp", c.Addr)
	if err != nil {
		return fault.Invalidf("addr", "Cannot listen on %s: %v. Choose another with --addr.", c.Addr, err)
	}
	config := web.Config{PublicURL: c.PublicURL}
	if config.PublicURL == "" {
		config.PublicURL = nearURL(listener.Addr())
	}
	users, err := st.CountUsers(ctx)
	if err != nil {
		return err
	}
	fmt.Fprintf(std.out, "Benchproof is at %s\n", config.PublicURL)
	if users == 0 {
		config.SetupCode = rand.Text()[:10]
		fmt.Fprintf(std.out, "Nobody has signed up yet. Open the address and give this one-time code: %s\n", config.SetupCode)
	}
	return serve(ctx, listener, st, config)
}

// nearURL is the address by which this machine reaches a listener: one that
// listens everywhere is at localhost.
func nearURL(addr net.Addr) string {
	host, port, err := net.SplitHostPort(addr.String())
	if ip := net.ParseIP(host); err != nil || ip == nil || ip.IsUnspecified() {
		host = "localhost"
	}
	return "http://" + net.JoinHostPort(host, port)
}

// openData opens the store in folder, which is made if missing.
func openData(ctx context.Context, folder string) (*store.Store, error) {
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return nil, fault.Invalidf("data", "Cannot use the data folder %s: %v. Choose another with --data.", folder, err)
	}
	return store.Open(ctx, filepath.Join(folder, dataFile), store.Options{Now: time.Now})
}

// dataFile is the database's name in the data folder.
const dataFile = "benchproof.db"

// serve answers on listener until ctx ends, then lets running answers finish.
func serve(ctx context.Context, listener net.Listener, st *store.Store, config web.Config) error {
	larder, err := seed.Larder()
	if err != nil {
		return err
	}
	config.Larder, config.Now = larder, time.Now
	site, err := web.New(st, config)
	if err != nil {
		return err
	}
	server := &http.Server{
		Handler:           gzhttp.GzipHandler(site.Handler()),
		ReadHeaderTimeout: 10 * time.Second,
		ReadTimeout:       time.Minute,
		WriteTimeout:      2 * time.Minute,
		IdleTimeout:       2 * time.Minute,
		MaxHeaderBytes:    64 << 10,
		ErrorLog:          slog.NewLogLogger(slog.Default().Handler(), slog.LevelDebug),
	}
	ctx, stop := context.WithCancel(ctx)
	var house sync.WaitGroup
	house.Go(func() { keepHouse(ctx, st) })
	defer func() { stop(); house.Wait() }() // the store is closed after us
	failed := make(chan error, 1)
	go func() { failed <- server.Serve(listener) }()
	select {
	case err := <-failed:
		return err
	case <-ctx.Done():
	}
	grace, cancel := context.WithTimeout(context.Background(), 10*time.Second)
	defer cancel()
	if err := server.Shutdown(grace); err != nil && !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return nil
}
