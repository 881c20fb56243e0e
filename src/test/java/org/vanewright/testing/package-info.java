<<<<<<< HEAD
/** Helpers for tests: outside programs and what they measure. */
=======
/** What tests of several packages share: databases, contracts, a clock. */
>>>>>>> platform
@NullMarked
package org.vanewright.testing;

import org.jspecify.annotations.NullMarked;
