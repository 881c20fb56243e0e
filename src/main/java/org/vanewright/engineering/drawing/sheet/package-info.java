/**
 * Paper: a drawing at true scale spread over sheets that are laid together, or on one length of a roll, with what it
 * takes to check the print before use.
 */
@NullMarked
package org.vanewright.engineering.drawing.sheet;

import org.jspecify.annotations.NullMarked;
