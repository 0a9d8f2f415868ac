// Package drawing makes the SVG figures of a job from its derived values: the
// outlet and the openings round it, the fan against the pipe, the slab, and the
// radon before and after. Figures are to scale, carry dimensions in the
// record's own units, tell nothing by colour alone and have a text alternative.
package drawing
