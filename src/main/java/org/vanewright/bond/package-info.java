/**
 * Whether the bases of a layout hold on an adhesive, and how much tape they take. Keeps nothing: everything follows from
 * exact revisions and from what was asked.
 */
@NullMarked
package org.vanewright.bond;

import org.jspecify.annotations.NullMarked;
