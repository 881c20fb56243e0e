@NullMarked
package org.vanewright.engineering.wing;

import org.jspecify.annotations.NullMarked;
