/** Demonstration data: documents under {@code db/demo}, published through the features' own services. */
@NullMarked
package org.vanewright.record.demo;

import org.jspecify.annotations.NullMarked;
