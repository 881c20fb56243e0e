/** The photographs that a document names. */
@NullMarked
package org.vanewright.record.photograph;

import org.jspecify.annotations.NullMarked;
