/** Which device goes where: rows set out along a surface, keep-outs respected, stations measured on the skin. Millimetres. */
@NullMarked
package org.vanewright.engineering.placement;

import org.jspecify.annotations.NullMarked;
