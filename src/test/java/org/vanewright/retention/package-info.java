/** Tests of what follows from inspections. */
@NullMarked
package org.vanewright.retention;

import org.jspecify.annotations.NullMarked;
