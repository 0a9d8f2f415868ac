//go:build !race

package main

// raceDetector tells whether the tests run under the race detector.
const raceDetector = false
