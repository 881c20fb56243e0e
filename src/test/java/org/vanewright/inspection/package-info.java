/** Tests of inspections. */
@NullMarked
package org.vanewright.inspection;

import org.jspecify.annotations.NullMarked;
