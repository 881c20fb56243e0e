/**
 * Adhesives: classes of tape and glue by measured or data-sheet properties, never by brand. Owns the table
 * {@code adhesive_revision}.
 */
@NullMarked
package org.vanewright.adhesive;

import org.jspecify.annotations.NullMarked;
