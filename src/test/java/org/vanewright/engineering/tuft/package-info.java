@NullMarked
package org.vanewright.engineering.tuft;

import org.jspecify.annotations.NullMarked;
