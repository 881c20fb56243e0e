/** Pages of people: signing in, joining, one's own account. */
@NullMarked
package org.vanewright.account.web;

import org.jspecify.annotations.NullMarked;
