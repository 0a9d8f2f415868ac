// Package arch holds no code, only the tests that keep the repository in the
// shape that DEVELOPERS.md describes: which package may import which, and what
// every tracked file keeps to.
package arch
