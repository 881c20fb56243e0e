/** Checks of the export. */
@NullMarked
package org.vanewright.export;

import org.jspecify.annotations.NullMarked;
