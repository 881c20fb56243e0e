/**
 * Flow over aerofoil sections and plates: potential flow by a panel method, boundary layers by integral methods, both
 * coupled, and what follows from them: transition, separation, profile drag. Lengths in the section's unit, speeds in units
 * of the free stream.
 *
 * <p>{@link org.vanewright.engineering.flow.Flow} answers one question, {@link
 * org.vanewright.engineering.flow.SectionFlow} many about one section, {@link org.vanewright.engineering.flow.Polar} sweeps
 * the angle of attack, {@link org.vanewright.engineering.flow.FlatPlate} knows plates, and {@link
 * org.vanewright.engineering.flow.PublishedChecks} sets all of it beside published values.
 *
 * <p>Steady, incompressible, two-dimensional. Not for: compressible flow, sweep, laminar separation bubbles (a layer that
 * separates while laminar is taken to become turbulent at once), anything behind turbulent separation, several elements.
 */
@NullMarked
package org.vanewright.engineering.flow;

import org.jspecify.annotations.NullMarked;
