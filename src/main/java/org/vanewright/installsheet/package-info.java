/** The sheet by which a layout is stuck on: what to have, steps, measurements with tolerances, masses for the weight record. */
@NullMarked
package org.vanewright.installsheet;

import org.jspecify.annotations.NullMarked;
