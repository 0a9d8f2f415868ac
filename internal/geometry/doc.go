// Package geometry measures what a job record places in space: how far a
// discharge is from the openings round it, how well test holes and suction
// points cover a slab, how a pressure field dies away under it, and where water
// would stand in a pipe run.
//
// Everything is SI: lengths in metres, areas in square metres, pressures in
// pascals, temperatures in kelvins. Angles are in degrees, as package quantity
// keeps them, so that 45 degrees stay 45. Coordinates are
// right-handed with Z up. A pressure under a slab is that below the slab minus
// that in the room, so that suction is negative.
//
// Functions are pure and return plain floats. A figure that is exact on paper,
// such as 10 ft held as 3.048 m, may come back a few units in the last place
// off; whoever compares it with a limit rounds both to 12 significant digits
// first. Nothing here knows a limit of a standard.
package geometry
