/** Print runs: what was printed, how, how long it took and how good it came out. Owns the table {@code print_run_revision}. */
@NullMarked
package org.vanewright.printrun;

import org.jspecify.annotations.NullMarked;
