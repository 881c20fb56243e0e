/** Everything public as one file: tables with their schema, documents, photographs. Features say what their tables are. */
@NullMarked
package org.vanewright.export;

import org.jspecify.annotations.NullMarked;
