/** Computed figures beside published ones, for readers who want to see the errors. */
@NullMarked
package org.vanewright.method;

import org.jspecify.annotations.NullMarked;
