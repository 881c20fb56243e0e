/** Standard atmosphere and airspeeds. */
@NullMarked
package org.vanewright.engineering.air;

import org.jspecify.annotations.NullMarked;
