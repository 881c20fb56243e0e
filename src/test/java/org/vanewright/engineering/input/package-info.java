@NullMarked
package org.vanewright.engineering.input;

import org.jspecify.annotations.NullMarked;
