/** An invented catalogue of any size, made from a seed, for measuring and for tests of what must not grow with it. */
@NullMarked
package org.vanewright.load;

import org.jspecify.annotations.NullMarked;
