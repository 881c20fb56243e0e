/** Keeps what people send from reading as lines of the log that nobody wrote. */
@NullMarked
package org.vanewright.platform.log;

import org.jspecify.annotations.NullMarked;
