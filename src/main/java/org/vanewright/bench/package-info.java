/** Calculations that need no account and keep nothing: what they take, what they answer. */
@NullMarked
package org.vanewright.bench;

import org.jspecify.annotations.NullMarked;
