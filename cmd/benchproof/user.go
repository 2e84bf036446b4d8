package main

import (
	"bufio"
	"context"
	"fmt"
	"strings"

	"github.com/alexedwards/argon2id"

	"benchproof/kitchen/fault"
)

// userCommand manages who may sign in.
type userCommand struct {
	List     userListCommand     `cmd:"" help:"List the people who may sign in."`
	Add      userAddCommand      `cmd:"" help:"Add a person; the password is read from standard input."`
	Password userPasswordCommand `cmd:"" help:"Replace a password; it is read from standard input."`
}

type userListCommand struct {
	Data string `help:"The data folder." default:"data" type:"path"`
}

// Run prints a name a line.
func (c *userListCommand) Run(ctx context.Context, std streams) error {
	st, err := openData(ctx, c.Data)
	if err != nil {
		return err
	}
	defer st.Close()
	users, err := st.Users(ctx)
	if err != nil {
		return err
	}
	for _, u := range users {
		fmt.Fprintln(std.out, u.Name)
	}
	return nil
}

type userAddCommand struct {
	Name string `arg:"" help:"The name to sign in with."`
	Data string `help:"The data folder." default:"data" type:"path"`
}

// Run adds the person.
func (c *userAddCommand) Run(ctx context.Context, std streams) error {
	st, err := openData(ctx, c.Data)
	if err != nil {
		return err
	}
	defer st.Close()
	hash, err := askPassword(std, c.Name)
	if err != nil {
		return err
	}
	_, err = st.AddUser(ctx, c.Name, hash)
	return err
}

type userPasswordCommand struct {
	Name string `arg:"" help:"Whose password."`
	Data string `help:"The data folder." default:"data" type:"path"`
}

// Run replaces the password.
func (c *userPasswordCommand) Run(ctx context.Context, std streams) error {
	st, err := openData(ctx, c.Data)
	if err != nil {
		return err
	}
	defer st.Close()
	hash, err := askPassword(std, c.Name)
	if err != nil {
		return err
	}
	if err := st.SetPassword(ctx, c.Name, hash); err != nil {
		return err
	}
	return st.Sessions().DeleteAll(ctx) // whoever knew the old one is signed out
}

// askPassword reads one line and gives its argon2id hash.
func askPassword(std streams, name string) (string, error) {
	fmt.Fprintf(std.err, "Password for %s, then Enter: ", name)
	line, err := bufio.NewReader(std.in).ReadString('\n')
	password := strings.TrimRight(line, "\r\n")
	if len([]rune(password)) < 8 {
		if err != nil && password == "" {
			return "", fault.Invalidf("password", "No password came in on standard input.")
		}
		return "", fault.Invalidf("password", "Take at least 8 characters; a short sentence is good.")
	}
	return argon2id.CreateHash(password, argon2id.DefaultParams)
}
