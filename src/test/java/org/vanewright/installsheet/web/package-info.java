/** The install sheet as a club meets it. */
@NullMarked
package org.vanewright.installsheet.web;

import org.jspecify.annotations.NullMarked;
