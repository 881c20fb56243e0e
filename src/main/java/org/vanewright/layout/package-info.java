/**
 * Layouts: which device goes where on which surface, in rows. Owns the table {@code layout_revision}; names exact
 * revisions of airframes and devices, so that a template can be made again bit for bit.
 */
@NullMarked
package org.vanewright.layout;

import org.jspecify.annotations.NullMarked;
