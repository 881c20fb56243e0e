/** Long work that outlives a request and the process that began it; all instances share its queue in the database. */
@NullMarked
package org.vanewright.platform.job;

import org.jspecify.annotations.NullMarked;
