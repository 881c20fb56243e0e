/**
 * Printable placing gauges: a shell that hooks over the leading edge of one wing, holds a base at its place and bears
 * against the base that was stuck on before it.
 *
 * <p>Around the nose a place is told by s, the distance along the skin from the leading edge, in mm: positive on the row's
 * side, negative on the other; and by v, the distance along the span from the middle of the unit, outboard positive.
 */
@NullMarked
package org.vanewright.engineering.gauge;

import org.jspecify.annotations.NullMarked;
