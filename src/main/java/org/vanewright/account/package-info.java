/** People: accounts, roles, sign-in, invitations, tokens. */
@NullMarked
package org.vanewright.account;

import org.jspecify.annotations.NullMarked;
