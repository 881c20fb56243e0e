/** Developing wing skin into flat sheets: exact where the skin is a cylinder or a cone, with the strain reported where it is neither. Millimetres. */
@NullMarked
package org.vanewright.engineering.unroll;

import org.jspecify.annotations.NullMarked;
