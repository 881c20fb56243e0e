/** Photographs that people add to their records: checked, made anew without what cameras add, kept by their hash. */
@NullMarked
package org.vanewright.photograph;

import org.jspecify.annotations.NullMarked;
