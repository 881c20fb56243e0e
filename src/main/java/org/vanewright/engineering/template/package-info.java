/** The full-size placement template: rows of bases on the unrolled skin, with register, marks and lettering. Millimetres. */
@NullMarked
package org.vanewright.engineering.template;

import org.jspecify.annotations.NullMarked;
