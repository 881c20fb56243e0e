/** Tests of what published comparisons come to together. */
@NullMarked
package org.vanewright.evidence;

import org.jspecify.annotations.NullMarked;
