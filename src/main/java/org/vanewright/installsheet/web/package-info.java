/** The install sheet as a file. */
@NullMarked
package org.vanewright.installsheet.web;

import org.jspecify.annotations.NullMarked;
