package main

import (
	"io"
	"net"
	"strings"
	"sync"
	"testing"
)

// airwave is the way from a phone to the program. While it is gone nothing comes
// through, from pages and from workers.
type airwave struct {
	address  string // "http://127.0.0.1:43125", in place of the program's own
	to       string
	listener net.Listener
	running  sync.WaitGroup

	mu     sync.Mutex
	isGone bool
	open   map[net.Conn]bool
}

// newAirwave leads to the program at an address until the test ends.
func newAirwave(t testing.TB, address string) *airwave {
	t.Helper()
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	s := &airwave{
		address: "http://" + listener.Addr().String(), to: strings.TrimPrefix(address, "http://"),
		listener: listener, open: map[net.Conn]bool{},
	}
	s.running.Go(s.listen)
	t.Cleanup(func() {
		listener.Close()
		s.gone(true)
		s.running.Wait()
	})
	return s
}

func (s *airwave) listen() {
	for {
		near, err := s.listener.Accept()
		if err != nil {
			return
		}
		s.running.Go(func() { s.carry(near) })
	}
}

// carry takes bytes to and fro until one side ends or the signal is gone.
func (s *airwave) carry(near net.Conn) {
	defer near.Close()
	if !s.holds(near) {
		return
	}
	defer s.drops(near)
	far, err := net.Dial("tcp", s.to)
	if err != nil {
		return
	}
	defer far.Close()
	if !s.holds(far) {
		return
	}
	defer s.drops(far)
	var back sync.WaitGroup
	back.Go(func() {
		io.Copy(near, far)
		near.Close()
	})
	io.Copy(far, near)
	far.Close()
	back.Wait()
}

// holds notes a connection, unless the signal is gone.
func (s *airwave) holds(c net.Conn) bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	if !s.isGone {
		s.open[c] = true
	}
	return !s.isGone
}

func (s *airwave) drops(c net.Conn) {
	s.mu.Lock()
	defer s.mu.Unlock()
	delete(s.open, c)
}

// gone cuts what is on its way, or lets it through again.
func (s *airwave) gone(yes bool) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.isGone = yes
	if yes {
		for c := range s.open {
			c.Close()
		}
	}
}
