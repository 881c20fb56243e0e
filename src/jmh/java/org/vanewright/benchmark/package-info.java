/** How long the service's own work takes, beside what the libraries under it take alone. */
@NullMarked
package org.vanewright.benchmark;

import org.jspecify.annotations.NullMarked;
