/** How long devices stay on, across the club: published installations and inspections, brought together. */
@NullMarked
package org.vanewright.retention;

import org.jspecify.annotations.NullMarked;
