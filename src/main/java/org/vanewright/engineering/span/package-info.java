/** How the lift of a wing is spread along its span. */
@NullMarked
package org.vanewright.engineering.span;

import org.jspecify.annotations.NullMarked;
