@NullMarked
package org.vanewright.engineering.bond;

import org.jspecify.annotations.NullMarked;
