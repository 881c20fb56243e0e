/** Tests of accounts, and people for tests of everything else. */
@NullMarked
package org.vanewright.account;

import org.jspecify.annotations.NullMarked;
