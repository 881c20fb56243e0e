/** Helpers for tests: outside programs and what they measure. */
@NullMarked
package org.vanewright.testing;

import org.jspecify.annotations.NullMarked;
