/** Plane points shared by unrolling, drawings and placement. */
@NullMarked
package org.vanewright.engineering.geometry;

import org.jspecify.annotations.NullMarked;
