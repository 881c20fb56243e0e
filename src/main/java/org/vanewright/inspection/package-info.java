/** Inspections: how many hours an installation has flown, and which of its devices were missing or loose, and why. */
@NullMarked
package org.vanewright.inspection;

import org.jspecify.annotations.NullMarked;
