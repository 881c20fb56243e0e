/**
 * What printing a set of pieces takes: how many, how much material, how long; and whether a material stands the heat of
 * the sun on a skin. Estimates, each with its method; none is an approval of a material.
 */
@NullMarked
package org.vanewright.engineering.printing;

import org.jspecify.annotations.NullMarked;
