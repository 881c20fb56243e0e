@NullMarked
package org.vanewright.engineering.tape;

import org.jspecify.annotations.NullMarked;
