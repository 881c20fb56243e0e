@NullMarked
package org.vanewright.airframe;

import org.jspecify.annotations.NullMarked;
