/**
 * Developing wing skin into flat sheets: exact where the skin is a cylinder or a cone, with the strain reported where
 * it is neither. Millimetres; angles in radians unless a name ends in {@code Deg}.
 *
 * <p>Inside a panel, x counts rearward and z up from the inner leading edge, y outboard along the span; sections stand
 * in planes of constant y (dihedral does not change a panel's own shape). For the frame of the flat sheet see
 * {@link org.vanewright.engineering.unroll.FlatSkin}.
 *
 * <p>Sources: D. J. Struik, Lectures on Classical Differential Geometry, 2nd ed. 1961, section 2-4 (a ruled
 * surface is developable exactly where the tangents along each ruling are parallel; cylinders and cones roll out
 * isometrically); M. P. do Carmo, Differential Geometry of Curves and Surfaces, 1976, sections 3-5 and 4-2. From
 * memory.
 */
@NullMarked
package org.vanewright.engineering.unroll;

import org.jspecify.annotations.NullMarked;
