/** A lifting surface as built: straight-tapered panels between span stations, and the places kept free. */
@NullMarked
package org.vanewright.engineering.wing;

import org.jspecify.annotations.NullMarked;
