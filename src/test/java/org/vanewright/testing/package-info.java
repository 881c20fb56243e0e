/** What tests of several packages share: databases, contracts, a clock. */
@NullMarked
package org.vanewright.testing;

import org.jspecify.annotations.NullMarked;
