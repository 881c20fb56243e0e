/** What tests of several packages share: databases, contracts, a clock, a server, a browser, outside programs. */
@NullMarked
package org.vanewright.testing;

import org.jspecify.annotations.NullMarked;
