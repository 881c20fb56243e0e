/** Tests of random-effects summaries. */
@NullMarked
package org.vanewright.engineering.inference.meta;

import org.jspecify.annotations.NullMarked;
