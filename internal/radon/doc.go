// Package radon works on radon measurements and on what they mean for people:
// reductions and their uncertainty, duplicates, spikes and blanks, the timing of
// a test, decay and ingrowth, the exposure of workers and the day of the next
// test.
//
// Everything is SI: concentrations in Bq/m3, times in seconds. An instant is
// seconds since 1970-01-01T00:00:00Z and a date is the instant at which that day
// starts in UTC, as package quantity holds them, so that neither clocks being
// put forward nor time zones enter. Two bases are not SI, again as in package
// quantity: exposure is in working level months and ventilation in air changes
// per hour. Uncertainties are standard ones (one sigma).
//
// Functions are pure and return plain floats. A figure that is exact on paper,
// such as 4.0 pCi/L held as 148 Bq/m3, may come back a few units in the last
// place off; whoever compares it with a limit rounds both to 12 significant
// digits first. Where a function here compares by itself, it does so too.
package radon
