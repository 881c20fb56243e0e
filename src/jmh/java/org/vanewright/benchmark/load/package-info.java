/** The service as a process of its own under load, on a large invented catalogue. */
@NullMarked
package org.vanewright.benchmark.load;

import org.jspecify.annotations.NullMarked;
