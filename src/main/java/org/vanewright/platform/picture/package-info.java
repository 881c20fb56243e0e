/** Drawings as pixels, for what cannot show them otherwise. */
@NullMarked
package org.vanewright.platform.picture;

import org.jspecify.annotations.NullMarked;
