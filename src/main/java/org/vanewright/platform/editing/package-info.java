/** What the editors and reviews of every kind of record share. */
@NullMarked
package org.vanewright.platform.editing;

import org.jspecify.annotations.NullMarked;
