/** Whether a bonded base holds: loads on it, stresses under it, and what they are beside the strength of an adhesive. */
@NullMarked
package org.vanewright.engineering.bond;

import org.jspecify.annotations.NullMarked;
