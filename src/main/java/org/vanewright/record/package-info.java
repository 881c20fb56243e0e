/** Identity, revision, state and hash of everything that is published; shared by the features. */
@NullMarked
package org.vanewright.record;

import org.jspecify.annotations.NullMarked;
