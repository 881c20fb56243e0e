/** Aerofoil sections: NACA series, coordinate files, splines, arc length. Lengths in chords. */
@NullMarked
package org.vanewright.engineering.section;

import org.jspecify.annotations.NullMarked;
