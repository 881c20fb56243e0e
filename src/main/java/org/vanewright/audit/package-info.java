/** The append-only log of what people did: sign-ins, changes of state, changes of accounts. */
@NullMarked
package org.vanewright.audit;

import org.jspecify.annotations.NullMarked;
