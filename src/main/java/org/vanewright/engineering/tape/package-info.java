/** Pieces of tape on a roll: where each is cut, and how much of the roll that takes. */
@NullMarked
package org.vanewright.engineering.tape;

import org.jspecify.annotations.NullMarked;
