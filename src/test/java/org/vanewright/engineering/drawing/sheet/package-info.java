/** Tests of printed sheets, measured on their rendering. */
@NullMarked
package org.vanewright.engineering.drawing.sheet;

import org.jspecify.annotations.NullMarked;
