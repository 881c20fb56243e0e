/** The files by which the service runs in containers. */
@NullMarked
package org.vanewright.container;

import org.jspecify.annotations.NullMarked;
