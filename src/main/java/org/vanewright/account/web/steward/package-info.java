/** The steward's console: people, invitations, settings of the instance, audit log. */
@NullMarked
package org.vanewright.account.web.steward;

import org.jspecify.annotations.NullMarked;
