/** Placing gauges against the wing they are cut for. */
@NullMarked
package org.vanewright.engineering.gauge;

import org.jspecify.annotations.NullMarked;
