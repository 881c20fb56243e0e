/** The service as real processes, whose database, disk and siblings fail. */
@NullMarked
package org.vanewright.fault;

import org.jspecify.annotations.NullMarked;
