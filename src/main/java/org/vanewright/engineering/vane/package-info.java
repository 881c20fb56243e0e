/** What a vane does to the air over a wing: circulation, proportions, side load, drag; and what others recommend. */
@NullMarked
package org.vanewright.engineering.vane;

import org.jspecify.annotations.NullMarked;
