/** Tests of survival curves. */
@NullMarked
package org.vanewright.engineering.inference.survival;

import org.jspecify.annotations.NullMarked;
