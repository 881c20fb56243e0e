/** Plots as SVG inside pages, each with a table of what it shows. */
@NullMarked
package org.vanewright.platform.plot;

import org.jspecify.annotations.NullMarked;
