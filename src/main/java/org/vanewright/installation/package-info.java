/** Installations: which layout was put on, with what, under which conditions, and how well it came out. */
@NullMarked
package org.vanewright.installation;

import org.jspecify.annotations.NullMarked;
