/**
 * Aerofoil sections: NACA series, coordinate files, splines, arc length. Lengths in chords.
 *
 * <p>{@link org.vanewright.engineering.section.Sections} makes them, {@link
 * org.vanewright.engineering.section.CoordinateFile} reads uploads, {@link
 * org.vanewright.engineering.section.SectionOutline} gives straight pieces for drawings. Arc lengths hold to 1e-10 chord
 * of the curve they belong to; how well the spline through coordinates follows the true skin depends on the points: for
 * 100 spaced closely at the nose about 1e-5 chord.
 *
 * <p>Not for: NACA 1-, 6- and 7-series numbers, modified four-digit numbers (upload their coordinates), sections with
 * slots or open flaps. Sources: E. N. Jacobs, K. E. Ward, R. M. Pinkerton, NACA TR-460 (1933); E. N. Jacobs, R. M.
 * Pinkerton, NACA TR-537 (1935); C. L. Ladson, C. W. Brooks, A. S. Hill, D. W. Sproles, NASA TM 4741 (1996).
 */
@NullMarked
package org.vanewright.engineering.section;

import org.jspecify.annotations.NullMarked;
