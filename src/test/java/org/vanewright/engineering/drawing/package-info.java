/** Tests of the drawing files, measured by outside programs. */
@NullMarked
package org.vanewright.engineering.drawing;

import org.jspecify.annotations.NullMarked;
