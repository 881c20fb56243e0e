/** Reviews of every kind of record: the queue, claims, remarks, automatic checks, differences and lineage. */
@NullMarked
package org.vanewright.review;

import org.jspecify.annotations.NullMarked;
