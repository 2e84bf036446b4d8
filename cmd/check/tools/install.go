package tools

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strings"
)

// Install brings every tool that is missing: Debian's packages where the
// system has apt-get and we are root, then npm's. It says to out what it
// installs, and what the installing program wrote if that failed. The error
// names each tool that is still missing and how to get it.
func Install(ctx context.Context, out io.Writer) error {
	missing := Missing()
	if len(missing) == 0 {
		return nil
	}
	var failed error
	if debs := packagesOf(missing); len(debs) > 0 && debian() && os.Geteuid() == 0 {
		failed = aptInstall(ctx, out, debs)
	}
	if lacksNPM(missing) {
		if _, err := npm(); err == nil {
			failed = errors.Join(failed, installNPM(ctx, out))
		}
	}
	if still := Missing(); len(still) > 0 {
		return errors.Join(failed, errors.New(Advice(still)))
	}
	return nil
}

// Advice says of each missing tool how to get it, a line each.
func Advice(missing []Tool) string {
	var b strings.Builder
	for _, t := range missing {
		_, err := t.Where()
		fmt.Fprintf(&b, "%s is missing (%v)\n", t.Name, err)
	}
	if debs := packagesOf(missing); len(debs) > 0 {
		b.WriteString("on Debian, as root: apt-get install -y --no-install-recommends " + strings.Join(debs, " ") + "\n")
		for _, t := range missing {
			if t.Hint != "" {
				fmt.Fprintf(&b, "elsewhere, for %s: %s\n", t.Name, t.Hint)
			}
		}
	}
	if lacksNPM(missing) {
		b.WriteString("the npm packages come by themselves once npm is there: go run ./cmd/check tools\n")
	}
	return strings.TrimSuffix(b.String(), "\n")
}

func packagesOf(missing []Tool) []string {
	var debs []string
	for _, t := range missing {
		debs = append(debs, t.Debs...)
	}
	return debs
}

// lacksNPM tells whether a file of an npm package is missing.
func lacksNPM(missing []Tool) bool {
	for _, t := range missing {
		if len(t.Debs) == 0 {
			return true
		}
	}
	return false
}

// debian tells whether this is a system with Debian's packages.
func debian() bool {
	if _, err := os.Stat("/etc/debian_version"); err != nil {
		return false
	}
	_, err := exec.LookPath("apt-get")
	return err == nil
}

// aptInstall waits up to five minutes for another apt to finish.
func aptInstall(ctx context.Context, out io.Writer, debs []string) error {
	wait := []string{"-q", "-o", "DPkg::Lock::Timeout=300"}
	update := append(append([]string{}, wait...), "update")
	install := append(append([]string{}, wait...), "install", "-y", "--no-install-recommends")
	fmt.Fprintf(out, "installing with apt-get: %s\n", strings.Join(debs, " "))
	for _, args := range [][]string{update, append(install, debs...)} {
		cmd := exec.CommandContext(ctx, "apt-get", args...)
		cmd.Env = append(os.Environ(), "DEBIAN_FRONTEND=noninteractive")
		if said, err := cmd.CombinedOutput(); err != nil {
			fmt.Fprintf(out, "%s", said)
			return fmt.Errorf("apt-get %s: %w", args[len(wait)], err)
		}
	}
	return nil
}
