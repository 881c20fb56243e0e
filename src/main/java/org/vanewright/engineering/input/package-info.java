/** How the core says that an input is unusable: which field, which value, what is allowed. */
@NullMarked
package org.vanewright.engineering.input;

import org.jspecify.annotations.NullMarked;
